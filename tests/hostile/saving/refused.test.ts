// What a disk refuses: nothing half-written, what stood there stands, and the words say what to do. Own expectation of the
// house, no outside source; that /dev/full answers "no space left" is in the manual of Linux, full(4), from memory.
import {
  chmodSync,
  existsSync,
  lstatSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describeProblem } from "@leeway/core";
import { expect, it } from "vitest";
import { whyNotWritten } from "../../../apps/command/src/files/whyNotWritten.ts";
import { writeWhole } from "../../../apps/command/src/files/writeWhole.ts";
import { writePlan } from "../../../apps/command/src/history/writePlan.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";

const root = temporaryFolder();
let folders = 0;
function folder(): string {
  const made = join(root, String(folders++));
  writeWhole(join(made, "f.yaml"), "old", false);
  return made;
}
/** What is said when it is not written. */
function refusal(path: string, text = "new", overwrite = true): string {
  try {
    writeWhole(path, text, overwrite);
  } catch (error) {
    return describeProblem(whyNotWritten(path, error));
  }
  return "written";
}

it("refuses a write-protected file, and leaves it as it is", () => {
  const at = join(folder(), "f.yaml");
  chmodSync(at, 0o444);
  expect(refusal(at)).toMatch(/write-protected.*chmod/);
  expect([readFileSync(at, "utf8"), statSync(at).mode & 0o777]).toEqual(["old", 0o444]);
});

it("leaves no folder behind that was made for a file that could not be written", () => {
  const made = folder();
  // POSIX, NAME_MAX: 255 bytes on the file systems of Linux, macOS and Windows; from memory.
  expect(refusal(join(made, "new", "deep", `${"x".repeat(300)}.yaml`))).not.toBe("written");
  expect(readdirSync(made)).toEqual(["f.yaml"]);
  writeWhole(join(made, "held", "g.yaml"), "other", false);
  expect(refusal(join(made, "held", `${"x".repeat(300)}.yaml`))).not.toBe("written");
  expect(readdirSync(join(made, "held"))).toEqual(["g.yaml"]);
});

it("keeps the rights of a file, and leaves nothing beside it", () => {
  const made = folder();
  const at = join(made, "f.yaml");
  chmodSync(at, 0o600);
  expect(refusal(at)).toBe("written");
  expect([readFileSync(at, "utf8"), statSync(at).mode & 0o777]).toEqual(["new", 0o600]);
  expect(readdirSync(made)).toEqual(["f.yaml"]);
});

it("writes where a link leads, and the link stays one", () => {
  const made = folder();
  symlinkSync("f.yaml", join(made, "link.yaml"));
  expect(refusal(join(made, "link.yaml"))).toBe("written");
  expect(lstatSync(join(made, "link.yaml")).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(made, "f.yaml"), "utf8")).toBe("new");
});

it("says what is the matter with a folder, a file for a folder, a name too long, a file that is there", () => {
  const made = folder();
  expect(refusal(made)).toMatch(/folder/);
  expect(refusal(join(made, "f.yaml", "g.yaml"))).not.toBe("written");
  expect(refusal(join(made, "x".repeat(300)))).toMatch(/too long/);
  expect(refusal(join(made, "f.yaml"), "new", false)).toMatch(/already.*--force/);
  expect(readdirSync(made)).toEqual(["f.yaml"]);
  expect(readFileSync(join(made, "f.yaml"), "utf8")).toBe("old");
});

it.skipIf(!existsSync("/dev/full"))("writes to a device as it stands and never in its place", () => {
  expect(refusal("/dev/full")).toMatch(/disk is full.*room/);
  expect(statSync("/dev/full").isCharacterDevice()).toBe(true);
  expect(refusal("/dev/null")).toBe("written");
  expect(statSync("/dev/null").isCharacterDevice()).toBe(true);
});

it("sweeps up what a killed process left a while ago, and nothing newer", () => {
  const made = folder();
  const old = join(made, ".f.yaml.99999998.part");
  for (const left of [old, join(made, ".f.yaml.99999999.part")]) writeFileSync(left, "half");
  const before = new Date(Date.now() - 120_000);
  utimesSync(old, before, before);
  expect(refusal(join(made, "f.yaml"))).toBe("written");
  expect(readdirSync(made).sort()).toEqual([".f.yaml.99999999.part", "f.yaml"]);
});

it("does not overwrite a plan that somebody changed meanwhile, and says so when its folder is gone", async () => {
  const made = folder();
  const at = join(made, "f.yaml");
  expect(await writePlan(at, "something else", "new")).toBe(false);
  expect(readFileSync(at, "utf8")).toBe("old");
  rmSync(made, { recursive: true });
  await expect(writePlan(at, "old", "new")).rejects.toMatchObject({ code: "ENOENT" });
  expect(existsSync(made)).toBe(false);
});
