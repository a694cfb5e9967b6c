// A folder that can only be read, a plan that may not be written, a disk without room: the command says so in words and ends
// with code 2, and every file stands as it was or is new and whole. No outside source for what is asked. The rights are
// those of POSIX; they do not bind the administrator, for whom the command is run as nobody (65534 on Linux). No room is
// had by a limit on the size of files (`ulimit -f`, POSIX: a write beyond it is cut short, the next fails with EFBIG) and
// by /dev/full (full(4) of Linux); both recalled from memory.
import { spawn } from "node:child_process";
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { build, builtCommand, type Ended } from "../../contract/command/leeway.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { FAMILIES, type Family, PLAN } from "./families.ts";

const isRoot = process.getuid?.() === 0;
const nobody = isRoot ? { uid: 65534, gid: 65534 } : {};
const root = temporaryFolder();
const command = join(root, "apps/command/dist", basename(builtCommand));
let folders = 0;

beforeAll(async () => {
  await build();
  // Where everybody may read it, wherever this checkout is.
  chmodSync(root, 0o755);
  cpSync(dirname(builtCommand), dirname(command), { recursive: true });
  const page = join(root, "apps/notebook/dist");
  mkdirSync(page, { recursive: true });
  writeFileSync(join(page, "index.html"), "<!doctype html><html><head><title>Leeway</title></head></html>");
});
afterAll(() => {
  for (const name of readdirSync(root)) chmodSync(join(root, name), 0o755);
});

/** Long enough that a block of 1024 bytes does not hold it. */
const LONG = `${PLAN}${"# what was said about the roof\n".repeat(60)}`;

function folderFor({ files = {} }: { files?: Family["files"] | undefined }): string {
  const folder = join(root, String(folders++));
  mkdirSync(folder);
  for (const [name, text] of Object.entries({ "shed.plan.yaml": LONG, ...files }))
    writeFileSync(join(folder, name), text);
  return folder;
}
/** Everything in a folder, hidden files too. */
function filesOf(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  const isFile = (name: string) => statSync(join(folder, name)).isFile();
  return Object.fromEntries(
    names.filter(isFile).map((name) => [name, readFileSync(join(folder, name), "utf8")]),
  );
}
/** Every file that is neither as it was nor whole: nothing is half-written, nothing is left lying about. */
function broken(folder: string, old: Record<string, string>, whole: Record<string, string>): string[] {
  const now = filesOf(folder);
  const gone = Object.keys(old).filter((name) => now[name] === undefined);
  const odd = Object.entries(now).filter(([name, text]) => text !== old[name] && text !== whole[name]);
  return [...gone.map((name) => `${name} is gone`), ...odd.map(([name, text]) => `${name}: ${text}`)];
}

/** @param limit  Blocks of 1024 bytes that a file may have. */
function run(
  words: string[],
  cwd: string,
  as: { uid?: number; gid?: number },
  limit?: number,
): Promise<Ended> {
  const call = [process.execPath, command, ...words];
  const [program = "", ...rest] =
    limit === undefined ? call : ["bash", "-c", `ulimit -f ${limit}; exec "$@"`, "bash", ...call];
  return new Promise((resolve, reject) => {
    const child = spawn(program, rest, { cwd, ...as });
    const ended = { out: "", err: "" };
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      ended.out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      ended.err += text;
    });
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, ...ended }));
    child.stdin.end();
  });
}

/** What a verb makes of its files where nothing is in its way. */
async function madeBy({ words, files }: Family): Promise<Record<string, string>> {
  const folder = folderFor({ files });
  const { code, err } = await run(words, folder, {});
  expect({ code, err: code === 0 ? "" : err }).toEqual({ code: 0, err: "" });
  return filesOf(folder);
}

it.each(FAMILIES)("$name: a folder that can only be read", async ({ words, files }) => {
  const folder = folderFor({ files });
  const old = filesOf(folder);
  chmodSync(folder, 0o555);
  const { code, err } = await run(words, folder, nobody);
  expect(err.replace(/\s+/g, " ")).toMatch(/You may not write there\. Ask for permission|write-protected/);
  expect(err).not.toMatch(/EACCES|at \S+ \(|went wrong/);
  expect(code).toBe(2);
  expect(filesOf(folder)).toEqual(old);
});

it.each(FAMILIES.filter(({ words }) => /^(?:record|sign|import)$/.test(words[0] ?? "")))(
  "$name: a plan that may not be written",
  async (family) => {
    const whole = await madeBy(family);
    for (const mode of isRoot ? [0o444, 0o644] : [0o444]) {
      const folder = folderFor(family);
      const old = filesOf(folder);
      chmodSync(folder, 0o777);
      chmodSync(join(folder, "shed.plan.yaml"), mode);
      const { code, err } = await run(family.words, folder, nobody);
      const words = mode === 0o444 ? /write-protected/ : /You may not write there/;
      expect(err.replace(/\s+/g, " ")).toMatch(words);
      expect(code).toBe(2);
      expect(readFileSync(join(folder, "shed.plan.yaml"), "utf8")).toBe(LONG);
      expect(broken(folder, old, whole)).toEqual([]);
    }
  },
);

it.each(FAMILIES.filter(({ words }) => words[0] !== "new"))("$name: no room for a file", async (family) => {
  const whole = await madeBy(family);
  for (const limit of [0, 1, 2]) {
    const folder = folderFor(family);
    const old = filesOf(folder);
    const { code, err } = await run(family.words, folder, {}, limit);
    expect(err).not.toMatch(/EFBIG|at \S+ \(|went wrong/);
    expect([0, 2]).toContain(code);
    if (code === 2) expect(err.replace(/\s+/g, " ")).toMatch(/The system allows no file of that size/);
    // No file that is written has less than a byte; the plan has more than two blocks.
    if (limit === 0 || !family.words.includes("--out")) expect(code).toBe(2);
    expect(broken(folder, old, whole)).toEqual([]);
    expect(readFileSync(join(folder, "shed.plan.yaml"), "utf8")).toBe(LONG);
  }
});

it.skipIf(!existsSync("/dev/full"))("export: onto a full device, the plan whole", async () => {
  const folder = folderFor({});
  const words = ["export", "shed.plan.yaml", "--what", "tasks", "--out", "/dev/full", "--force"];
  const { code, err } = await run(words, folder, {});
  expect(err.replace(/\s+/g, " ")).toMatch(/The disk is full.*Make room/);
  expect(code).toBe(2);
  expect(filesOf(folder)).toEqual({ "shed.plan.yaml": LONG });
});

/** What the page is told when it saves into this folder, and what stands there then. */
async function saved(folder: string, as: { uid?: number; gid?: number }, limit?: number): Promise<string> {
  const call = [process.execPath, command, "open", "shed.plan.yaml"];
  const child = spawn("bash", ["-c", `ulimit -f ${limit ?? "unlimited"}; exec "$@"`, "bash", ...call], {
    cwd: folder,
    ...as,
  });
  try {
    const address = await new Promise<string>((resolve, reject) => {
      let said = "";
      const hear = (part: unknown): void => {
        said += String(part);
        const found = /http:\S+/.exec(said)?.[0];
        if (found !== undefined) resolve(found);
      };
      child.stdout.on("data", hear);
      child.stderr.on("data", hear);
      child.on("error", reject);
      child.on("close", () => reject(new Error(said)));
    });
    const plan = new URL("plan", address);
    const etag = (await fetch(plan)).headers.get("ETag") ?? "";
    const headers = { "If-Match": etag, "Content-Type": "text/plain", Origin: plan.origin };
    const answer = await fetch(plan, { method: "PUT", headers, body: LONG.replace("400", "450") });
    return `${answer.status} ${await answer.text()}`;
  } finally {
    child.kill();
  }
}

it.each([
  { name: "a folder that can only be read", folderMode: 0o555, fileMode: 0o644, words: /You may not write/ },
  { name: "a plan that is write-protected", folderMode: 0o777, fileMode: 0o444, words: /write-protected/ },
  { name: "no room", folderMode: 0o777, fileMode: 0o666, limit: 1, words: /no file of that size/ },
])("open: what the page saves is refused in words: $name", async ({ folderMode, fileMode, limit, words }) => {
  const folder = folderFor({});
  chmodSync(join(folder, "shed.plan.yaml"), fileMode);
  chmodSync(folder, folderMode);
  const told = await saved(folder, nobody, limit);
  expect(told).toMatch(/^500 /);
  expect(told).toMatch(words);
  expect(filesOf(folder)).toEqual({ "shed.plan.yaml": LONG });
});
