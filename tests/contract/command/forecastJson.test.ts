// What `forecast --json` prints, against the table of the JSON in docs for the command line: the project's own
// published contract, written before the command.
import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { beforeAll, describe, expect, it } from "vitest";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { build, examplePlan, leeway, smallPlan } from "./leeway.ts";

const number = { type: "number" };
const text = { type: "string", minLength: 1 };
const chance = { type: "number", minimum: 0, maximum: 1 };
const date = { type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$" };

/** An object that has at least these. */
function having(properties: Record<string, object>, optional: string[] = []): object {
  const required = Object.keys(properties).filter((key) => !optional.includes(key));
  return { type: "object", properties, required };
}
const tenFiftyNinety = (of: object) => having({ p10: of, p50: of, p90: of });
const list = (items: object, minItems = 0) => ({ type: "array", items, minItems });

const forecastSchema = having({
  plan: having({ title: text, sha256: { type: "string", pattern: "^[0-9a-f]{64}$" } }),
  seed: text,
  iterations: { type: "integer", minimum: 1 },
  version: text,
  asWritten: having({ finish: date, day: number, workingDays: number, cost: number }),
  finish: having({
    mean: number,
    sd: number,
    percentiles: list(
      having({ p: chance, date, day: number, workingDays: number, low: number, high: number }),
      7,
    ),
  }),
  cost: having({
    mean: number,
    sd: number,
    percentiles: list(having({ p: chance, value: number, low: number, high: number }), 7),
  }),
  chance: {
    type: "object",
    properties: { finishBy: chance, budget: chance, both: chance },
    additionalProperties: false,
  },
  tasks: list(
    having(
      {
        id: text,
        critical: chance,
        asWritten: having({ start: number, finish: number }),
        start: tenFiftyNinety(number),
        finish: tenFiftyNinety(number),
        finishDates: having({ p10: date, p50: date, p90: date, committed: date }),
        target: having({ date, chance }),
      },
      ["target"],
    ),
    1,
  ),
  intervals: list(having({ id: text, p10: number, p50: number, p90: number, chance }, ["chance"])),
  drivers: list(having({ id: text, kind: text, days: number, money: number })),
  warnings: list({ type: "string" }),
});
const isForecast = new Ajv({ allErrors: true }).compile(forecastSchema);

beforeAll(build);

async function jsonOf(words: string[], plan = smallPlan) {
  const { code, out, err } = await leeway(["forecast", "-", "--json", ...words], { input: plan });
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return { out, forecast: JSON.parse(out) };
}

describe("forecast --json", () => {
  it("prints one document of the promised shape and nothing else", async () => {
    const { out, forecast } = await jsonOf([]);
    isForecast(forecast);
    expect(isForecast.errors ?? []).toEqual([]);
    expect(out).toBe(`${JSON.stringify(forecast, undefined, 2)}\n`);
  });

  it("keeps that shape for a whole example plan", async () => {
    const { forecast } = await jsonOf([], readFileSync(examplePlan, "utf8"));
    isForecast(forecast);
    expect(isForecast.errors ?? []).toEqual([]);
  });

  it("includes the seven levels and the plan's own confidence, in time and in money", async () => {
    const { forecast } = await jsonOf([]);
    const levels = (list: { p: number }[]) => list.map(({ p }) => p);
    for (const p of [0.05, 0.1, 0.2, 0.5, 0.7, 0.8, 0.9, 0.95]) {
      expect(levels(forecast.finish.percentiles)).toContain(p);
      expect(levels(forecast.cost.percentiles)).toContain(p);
    }
  });

  it("gives chances only of what the commitment asks for", async () => {
    const all = await jsonOf([]);
    expect(Object.keys(all.forecast.chance).sort()).toEqual(["both", "budget", "finishBy"]);
    const date = await jsonOf([], smallPlan.replace("  budget: 2600\n", ""));
    expect(Object.keys(date.forecast.chance)).toEqual(["finishBy"]);
    const none = await jsonOf([], smallPlan.replace("  budget: 2600\n", "").replace(/ {2}finishBy.*\n/, ""));
    expect(none.forecast.chance).toEqual({});
  });

  it("is the same to the byte from run to run, from a file and from standard input", async () => {
    const cwd = temporaryFolder({ "roof.plan.yaml": smallPlan });
    const first = await leeway(["forecast", "roof.plan.yaml", "--json"], { cwd });
    const second = await leeway(["forecast", "roof.plan.yaml", "--json"], { cwd });
    const piped = await jsonOf([]);
    expect(first.code).toBe(0);
    expect(second.out).toBe(first.out);
    expect(piped.out).toBe(first.out);
  });

  it("--workers changes no digit, nor does a run large enough for a thread of its own", async () => {
    const alone = await jsonOf(["--iterations", "5000"]);
    const many = await jsonOf(["--iterations", "5000", "--workers", "4"]);
    expect(many.out).toBe(alone.out);
    const padded = smallPlan.replace("title:", `note: ${"duration ".repeat(2000)}\ntitle:`);
    const here = await jsonOf(["--iterations", "500"], padded);
    const there = await jsonOf(["--iterations", "5000"], padded);
    const { plan: _here, ...small } = (await jsonOf(["--iterations", "500"])).forecast;
    const { plan: _there, ...large } = alone.forecast;
    expect(here.forecast).toMatchObject(small);
    expect(there.forecast).toMatchObject(large);
  });

  it("--seed, --iterations and --design are in the run stamp", async () => {
    const { forecast } = await jsonOf(["--seed", "1", "--iterations", "777", "--design", "plain"]);
    expect(forecast).toMatchObject({ seed: "1", iterations: 777, design: "plain" });
    const other = await jsonOf(["--seed", "11", "--iterations", "777", "--design", "plain"]);
    expect(other.forecast.finish.mean).not.toBe(forecast.finish.mean);
  });

  it("--confidence moves the committed level", async () => {
    const { forecast } = await jsonOf(["--confidence", "0.65"]);
    const row = forecast.finish.percentiles.find(({ p }: { p: number }) => p === 0.65);
    expect(row.day).toBe(forecast.committed.day);
  });

  it("--without a risk leaves it out; --with a response takes it in", async () => {
    const plain = await jsonOf([]);
    const without = await jsonOf(["--without", "rain"]);
    expect(without.forecast.finish.mean).toBeLessThan(plain.forecast.finish.mean);
    expect(without.forecast.drivers.map(({ id }: { id: string }) => id)).not.toContain("rain");
    const response = await jsonOf(["--with", "tarpaulin"]);
    // Its cost, certain, is in the plan as written once it is adopted.
    expect(response.forecast.asWritten.cost).toBeCloseTo(plain.forecast.asWritten.cost + 120, 9);
    expect(response.forecast.finish.mean).toBeLessThan(plain.forecast.finish.mean);
  });

  it("--timing adds one JSON line on standard error", async () => {
    const { code, out, err } = await leeway(["forecast", "-", "--json", "--timing"], { input: smallPlan });
    expect(code).toBe(0);
    expect(err.trimEnd().split("\n")).toHaveLength(1);
    const timing = JSON.parse(err);
    expect(Object.keys(timing).sort()).toEqual(["compile", "read", "simulate", "summarise"]);
    for (const seconds of Object.values(timing)) expect(seconds).toBeGreaterThanOrEqual(0);
    expect(out).toBe((await jsonOf([])).out);
  });

  it("--tornado adds the bars", async () => {
    const { forecast } = await jsonOf(["--tornado"]);
    const ids = forecast.tornado.map(({ id }: { id: string }) => id);
    expect(ids).toContain("felt");
  });
});
