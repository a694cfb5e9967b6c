// How the built command starts: with what the engine compiled of it at the build, where that fits; the same without.
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { beside, loadProgram } from "../../../apps/command/src/start/loadProgram.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { builtCommand, examplePlan, leeway } from "./leeway.ts";

const folder = temporaryFolder();

/** A copy of the built command whose compiled files are changed. */
function copyWith(name: string, change: (compiled: Buffer) => Buffer | undefined): string {
  const home = join(folder, name);
  cpSync(dirname(builtCommand), home, { recursive: true });
  const compiled = readdirSync(home).filter((file) => file.endsWith(".compiled"));
  expect(compiled.length).toBeGreaterThan(2);
  for (const file of compiled) {
    const changed = change(readFileSync(join(home, file)));
    if (changed === undefined) rmSync(join(home, file));
    else writeFileSync(join(home, file), changed);
  }
  return join(home, "leeway.mjs");
}

const words = ["forecast", examplePlan, "--iterations", "1000", "--json"];

describe("the built command", () => {
  it.each([
    ["missing", () => undefined],
    ["empty", () => Buffer.alloc(0)],
    ["cut short", (compiled: Buffer) => compiled.subarray(0, compiled.length >> 1)],
    ["of another engine", (compiled: Buffer) => Buffer.from(compiled).fill(7, 4, 64)],
    ["of another build", (compiled: Buffer) => Buffer.from(compiled).fill(7, 0, 4)],
  ])("answers the same where what the engine compiled is %s", async (name, change) => {
    const expected = await leeway(words);
    expect(expected.code).toBe(0);
    expect(await leeway(words, { program: copyWith(name, change) })).toEqual(expected);
  });

  it("ends with the code of its answer, all of it written, whoever reads slowly", async () => {
    const [help, wrong] = await Promise.all([leeway(["help"]), leeway(["no-such-verb"])]);
    expect(help.code).toBe(0);
    expect(help.out.endsWith("\n")).toBe(true);
    expect(wrong.code).toBe(2);
    expect(wrong.err).toContain("no-such-verb");
    // More than a pipe holds at once.
    const long = await leeway(["forecast", examplePlan, "--iterations", "1000", "--tornado", "--json"]);
    expect(long.out.length).toBeGreaterThan(70_000);
    expect(() => JSON.parse(long.out)).not.toThrow();
  });
});

describe("loadProgram", () => {
  it("runs a file and those beside it once each, and throws what they throw", () => {
    const write = (name: string, text: string) => writeFileSync(join(folder, name), text);
    write(
      "first.cjs",
      'exports.other = require("./other.cjs"); exports.again = require("./other.cjs"); exports.at = __filename;',
    );
    write(
      "other.cjs",
      'exports.path = require("node:path").sep; exports.count = (globalThis.timesRun ??= 0) + 1;',
    );
    write("broken.cjs", 'throw new RangeError("as it should");');
    const first = loadProgram(join(folder, "first.cjs")) as Record<string, unknown>;
    expect(first.at).toBe(join(folder, "first.cjs"));
    expect(first.other).toBe(first.again);
    expect(loadProgram(join(folder, "first.cjs"))).toBe(first);
    for (const _ of [1, 2]) {
      expect(() => loadProgram(join(folder, "broken.cjs"))).toThrow(new RangeError("as it should"));
    }
    expect(() => loadProgram(join(folder, "nowhere.cjs"))).toThrow(/ENOENT/);
    expect(beside("file:///here/it/is.mjs", "./other.cjs")).toBe("/here/it/other.cjs");
  });
});
