// `forecast --verify`: what was saved is run again. What has to hold is the house's own: the same plan, seed and version
// give the same figures to the last bit, so one changed digit has to be found and named.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { forecast, readPlan, savedForecast, type VerifyAnswer, verifyForecast } from "@leeway/core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { parseCall } from "../../../apps/command/src/call/parseCall.ts";
import { forecastVerb } from "../../../apps/command/src/verbs/forecast.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { smallPlan } from "./leeway.ts";

let out = "";
let err = "";
beforeEach(() => {
  out = "";
  err = "";
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

const folder = temporaryFolder({
  "p.plan.yaml": smallPlan,
  "q.plan.yaml": smallPlan.replace("[2, 3, 6]", "[2, 3, 7]"),
});
const path = (name: string) => join(folder, name);
async function run(...words: string[]): Promise<number> {
  out = "";
  err = "";
  const parsed = parseCall(["forecast", ...words]);
  if (parsed.kind !== "call") throw new Error(JSON.stringify(parsed));
  return forecastVerb(parsed.call);
}
async function saved(name: string, ...options: string[]): Promise<string> {
  expect(await run(path("p.plan.yaml"), "--json", "--iterations", "300", "--workers", "1", ...options)).toBe(
    0,
  );
  writeFileSync(path(name), out);
  return out;
}
const verify = (plan: string, file: string, ...more: string[]) =>
  run(path(plan), "--verify", path(file), "--workers", "1", ...more);

describe("leeway forecast --verify", () => {
  it.each([
    ["as it is", []],
    ["with another seed, level and design", ["--seed", "x", "--confidence", "0.9", "--design", "plain"]],
    ["with a scenario", ["--without", "rain"]],
    ["with a tornado", ["--tornado"]],
    ["drawn until it is narrow enough", ["--within", "2"]],
  ])("confirms a forecast %s: code 0", async (_name, options) => {
    await saved("f.json", ...options);
    expect([await verify("p.plan.yaml", "f.json"), err]).toEqual([0, ""]);
    expect(out).toMatch(/^Confirmed\.\n\nRun again with seed \S+ and [\d,]+ futures, all [\d,]+ values of/);
    expect(await verify("p.plan.yaml", "f.json", "--json")).toBe(0);
    expect(JSON.parse(out) as VerifyAnswer).toMatchObject({ same: true, differing: 0, differences: [] });
  });

  it("names the first figure that differs, were it by its last bit: code 1", async () => {
    const text = await saved("f.json");
    const answer = JSON.parse(text);
    const { sd } = answer.finish;
    // The next double above.
    const bits = new BigUint64Array(Float64Array.of(sd).buffer);
    bits[0] = (bits[0] ?? 0n) + 1n;
    answer.finish.sd = new Float64Array(bits.buffer)[0];
    answer.cost.mean += 1;
    writeFileSync(path("g.json"), JSON.stringify(answer));
    expect(await verify("p.plan.yaml", "g.json", "--json")).toBe(1);
    const told = JSON.parse(out) as VerifyAnswer;
    expect(told).toMatchObject({ same: false, differing: 2 });
    expect(told.first).toEqual({ path: "finish.sd", saved: String(answer.finish.sd), now: String(sd) });
    expect(await verify("p.plan.yaml", "g.json")).toBe(1);
    expect(out).toContain("Not confirmed.");
    expect(out.replace(/\s+/g, " ")).toContain(
      `First finish.sd differs: saved ${answer.finish.sd}, run again ${sd}.`,
    );
  });

  it("tells of a figure taken out, put in, and of another version", async () => {
    const answer = JSON.parse(await saved("f.json"));
    const { contingency: _, ...rest } = answer;
    writeFileSync(path("g.json"), JSON.stringify({ ...rest, version: "0.0.9", __proto__: null, more: 1 }));
    expect(await verify("p.plan.yaml", "g.json")).toBe(1);
    expect(out).toContain("contingency differs: saved not there");
    expect(out).toContain("It was saved by leeway 0.0.9");
  });

  it("does not compare what cannot be compared: code 2", async () => {
    await saved("f.json");
    expect(await verify("q.plan.yaml", "f.json")).toBe(2);
    expect(err).toContain("It is of another plan");
    for (const text of ["", "no JSON", "[]", "{}", '{"plan":{"sha256":1}}', '{"iterations":1e9}', "null"]) {
      writeFileSync(path("g.json"), text);
      expect(await verify("p.plan.yaml", "g.json")).toBe(2);
      expect(err).toContain("g.json");
      expect(out).toBe("");
    }
    expect(await verify("p.plan.yaml", "nothing.json")).toBe(2);
    expect(await verify("p.plan.yaml", "f.json", "--seed", "x")).toBe(2);
    expect(err).toContain("--seed");
  });
});

describe("verifyForecast", () => {
  it("compares every number of a forecast", () => {
    const { plan } = readPlan(smallPlan);
    const now = plan && forecast(plan, { iterations: 64 }).forecast;
    if (plan === undefined || now === undefined) throw new Error("not read");
    const text = JSON.stringify(now);
    let changed = 0;
    // Every number of the text in turn, by 1.
    for (const match of text.matchAll(/(?<=[:[,])-?\d+(?:\.\d+)?(?:e-?\d+)?(?=[,}\]])/g)) {
      const other =
        text.slice(0, match.index) + (Number(match[0]) + 1) + text.slice(match.index + match[0].length);
      const read = savedForecast(other, plan);
      if (read.saved === undefined) continue; // the level, and how many futures: what it is run with
      const { differences } = verifyForecast(read.saved, now);
      // The level is what it is run with too; here it is not run again.
      expect(differences.length, match[0]).toBe(1);
      changed++;
    }
    expect(changed).toBeGreaterThan(200);
  });
});
