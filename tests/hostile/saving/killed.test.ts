// The command is killed (signal 9) while it saves: at a call that changes something on the disk, half of what was to be
// written being written, and from outside at any moment. No outside source for what is asked: every file is whole, old or
// new; no forecast that was kept is lost; and the next call finishes what this one began.
//
// LEEWAY_KILLS=3000 kills every family of verbs 500 times.
import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readHistory, readPlan } from "@leeway/core";
import { beforeAll, expect, it } from "vitest";
import { build, builtCommand } from "../../contract/command/leeway.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { SEED } from "../support/effort.ts";
import { FAMILIES, type Family, PLAN } from "./families.ts";

/** Another build than the one of this checkout, so that a long run outlives a new one. */
const command = process.env.LEEWAY_TEST_COMMAND ?? builtCommand;
const KILLS = Number(process.env.LEEWAY_KILLS ?? 40);
const rng = seededRng(SEED);
const preload = fileURLToPath(new URL("./killAt.mjs", import.meta.url));
const root = temporaryFolder();
beforeAll(build);

let folders = 0;
function folderFor({ files = {} }: Family): string {
  const folder = join(root, String(folders++));
  mkdirSync(folder);
  for (const [name, text] of Object.entries({ "shed.plan.yaml": PLAN, ...files }))
    writeFileSync(join(folder, name), text);
  return folder;
}

interface Ended {
  code: number | null;
  signal: NodeJS.Signals | null;
  err: string;
  seconds: number;
}
/** Runs it, killed at a call that writes (`at`), or from outside after so many seconds, or not at all. */
function run(words: string[], folder: string, { at = 0, after = 0, log = "" } = {}): Promise<Ended> {
  const begun = Date.now();
  const env = {
    ...process.env,
    LEEWAY_TEST_FOLDER: folder,
    LEEWAY_TEST_KILL_AT: String(at),
    ...(log && { LEEWAY_TEST_LOG: log }),
  };
  return new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      [
        "--import",
        preload,
        command,
        ...words.map((word) => (/\.(?:yaml|csv)$/.test(word) ? join(folder, word) : word)),
      ],
      { cwd: folder, env },
    );
    let err = "";
    child.stderr.on("data", (text) => {
      err += String(text);
    });
    child.stdout.resume();
    const timer = after > 0 ? setTimeout(() => child.kill("SIGKILL"), 1000 * after) : undefined;
    child.on("error", reject);
    child.on("close", (code, signal) => {
      clearTimeout(timer);
      resolve({ code, signal, err, seconds: (Date.now() - begun) / 1000 });
    });
    child.stdin.end();
  });
}

/** Every file below a folder but hidden ones and locks, by its path. */
function filesOf(folder: string, prefix = ""): Map<string, string> {
  const found = new Map<string, string>();
  for (const name of readdirSync(join(folder, prefix))) {
    if (name.startsWith(".") || name.endsWith(".lock")) continue;
    const path = join(prefix, name);
    if (statSync(join(folder, path)).isDirectory())
      for (const [key, text] of filesOf(folder, path)) found.set(key, text);
    else found.set(path, readFileSync(join(folder, path), "utf8"));
  }
  return found;
}

interface Whole {
  old: Map<string, string>;
  made: Map<string, string>;
  calls: number;
  seconds: number;
}

/** What is wrong with a folder after a kill: each file old or new, a history as far as it got. */
function faultsOf(folder: string, { old, made }: Whole): string[] {
  const faults: string[] = [];
  for (const [path, text] of old)
    if (!filesOf(folder).has(path)) faults.push(`${path} is gone: ${text.length}`);
  for (const [path, text] of filesOf(folder)) {
    if (text === old.get(path) || text === made.get(path)) continue;
    if (path.endsWith(".history.jsonl")) {
      const { entries, breaks, torn } = readHistory(text);
      const full = readHistory(made.get(path) ?? "").entries;
      const known = entries.every(({ hash }, index) => full[index]?.hash === hash);
      if (breaks.length > 0 || !known) faults.push(`${path} is broken: ${JSON.stringify({ breaks, torn })}`);
      continue;
    }
    faults.push(`${path} is neither old nor new: ${JSON.stringify(text.slice(0, 300))}`);
  }
  return faults;
}

it.each(FAMILIES.map((family) => [family.name, family] as const))(
  "%s leaves every file whole when it is killed, and can be called again",
  async (name, family) => {
    const begin = folderFor(family);
    const old = filesOf(begin);
    const log = join(root, `${folders}.log`);
    const whole = await run(family.words, begin, { log });
    expect(whole.err).not.toMatch(/could not|went wrong/);
    expect(whole.code).toBe(0);
    const made = filesOf(begin);
    const calls = readFileSync(log, "utf8").trimEnd().split("\n").length;
    expect(made).not.toEqual(old);
    const known: Whole = { old, made, calls, seconds: whole.seconds };

    const kills = Math.ceil(KILLS / FAMILIES.length);
    let unhurt = 0;
    let oldPlans = 0;
    for (let kill = 0; kill < kills; kill++) {
      const folder = folderFor(family);
      const how =
        kill % 4 === 3
          ? { after: known.seconds * (0.3 + 0.8 * rng()) }
          : { at: kill < calls ? 1 + ((kill * 7) % calls) : 1 + Math.floor(rng() * calls) };
      const { signal, code } = await run(family.words, folder, how);
      if (signal === null) unhurt++;
      expect(faultsOf(folder, known), `${name} ${JSON.stringify(how)} ended ${signal ?? code}`).toEqual([]);
      if (filesOf(folder).get("shed.plan.yaml") === PLAN) oldPlans++;
      // Called again, it does what it was to do, whatever was left lying about. Where it had got to its end, it says so.
      if (kill % 3 === 0) {
        const again = await run(family.words, folder);
        expect(again.err).not.toMatch(/went wrong|is writing it and does not end/);
        expect([0, 2]).toContain(again.code);
        const whole = readPlan(filesOf(folder).get("shed.plan.yaml") ?? "");
        expect([whole.problems, whole.plan?.title]).toEqual([[], "Shed roof"]);
        const { breaks, torn } = readHistory(filesOf(folder).get("shed.history.jsonl") ?? "");
        expect({ breaks, torn }).toEqual({ breaks: [] });
      }
      rmSync(folder, { recursive: true, force: true });
    }
    console.log(`${name}: ${calls} calls, ${kills} kills, ${unhurt} too late, ${oldPlans} left the old plan`);
  },
  Math.max(600_000, KILLS * 5000),
);
