// explain. Source: the project's own published command line (keys of the JSON, sums to 1e-9 relative, exit codes);
// figures of the text are those of the JSON.
import { beforeAll, describe, expect, it } from "vitest";
import { build, type Ended, examplePlan, leeway, smallPlan } from "./leeway.ts";

interface Effect {
  workingDays: number;
  money: number;
}
interface Printed {
  confidence: number;
  asWritten: { date: string; workingDays: number; cost: number };
  committed: { date: string; day: number; workingDays: number; cost: number };
  contingency: Effect;
  shares: (Effect & { id: string; name: string; kind: string; error: Effect; ifRemoved: Effect })[];
  walk: (Effect & { kind: string; step: string })[];
  tornado: { id: string; low: Effect; high: Effect }[];
  orders: { all: boolean; causes: number };
}

const units = ["workingDays", "money"] as const;

function sumOf(parts: readonly Effect[], unit: keyof Effect): number {
  return parts.reduce((sum, part) => sum + part[unit], 0);
}

function read({ code, out, err }: Ended): Printed {
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out);
}

beforeAll(build);

describe("explain --json", () => {
  it("splits the contingency of the forecast, its shares and its steps each adding up to it", async () => {
    const printed = read(await leeway(["explain", examplePlan, "--json"]));
    const forecast = JSON.parse((await leeway(["forecast", examplePlan, "--json"])).out);
    expect(printed.confidence).toBe(forecast.committed.confidence);
    expect(printed.asWritten).toMatchObject({
      date: forecast.asWritten.finish,
      workingDays: forecast.asWritten.workingDays,
      cost: forecast.asWritten.cost,
    });
    const { date, day, workingDays, cost } = forecast.committed;
    expect(printed.committed).toMatchObject({ date, day, workingDays, cost });
    for (const unit of units) {
      const whole =
        printed.committed[unit === "money" ? "cost" : unit] -
        printed.asWritten[unit === "money" ? "cost" : unit];
      expect(printed.contingency[unit]).toBe(whole);
      expect(Math.abs(sumOf(printed.shares, unit) - whole)).toBeLessThanOrEqual(1e-9 * whole);
      expect(Math.abs(sumOf(printed.walk, unit) - whole)).toBeLessThanOrEqual(1e-9 * whole);
      // Every share is known to 2 % of the contingency.
      for (const { error } of printed.shares) expect(error[unit]).toBeLessThan(0.02 * whole);
    }
    expect(printed.shares.length).toBeLessThanOrEqual(12);
    expect(new Set(printed.shares.map(({ kind }) => kind))).toEqual(
      new Set(["spread", "risk", "assumption", "cause", "people"]),
    );
    expect(printed.tornado.map(({ id }) => id)).toContain("permit-decided");
    // The clinic has estimates, limited people and a register: no step is missing, the one to the level is last.
    expect(printed.walk.map(({ kind }) => kind)).toEqual([
      "spread",
      "merging",
      "people",
      "register",
      "percentile",
    ]);
  });

  it("explains two causes in every order, and removing one as the forecast without it does", async () => {
    const printed = read(await leeway(["explain", "-", "--json"], { input: smallPlan }));
    expect(printed.orders).toMatchObject({ all: true, causes: 3 });
    const rain = printed.shares.find(({ id }) => id === "rain");
    const without = await leeway(["forecast", "-", "--json", "--without", "rain"], { input: smallPlan });
    const { committed } = JSON.parse(without.out);
    expect(rain?.kind).toBe("risk");
    expect(rain?.ifRemoved.workingDays).toBe(committed.workingDays - printed.committed.workingDays);
  });

  it("prints the same bytes for any number of workers", async () => {
    const [one, two, three] = await Promise.all(
      ["1", "2", "3"].map((workers) =>
        leeway(["explain", examplePlan, "--json", "--iterations", "2500", "--workers", workers]),
      ),
    );
    expect(one?.code).toBe(0);
    expect(two?.out).toBe(one?.out);
    expect(three?.out).toBe(one?.out);
  });
});

describe("explain, as text", () => {
  it("says what is held for what, and that a share is not what would vanish with its cause", async () => {
    const printed = read(await leeway(["explain", examplePlan, "--json", "--iterations", "300"]));
    const { out } = await leeway(["explain", examplePlan, "--iterations", "300"], {
      env: { COLUMNS: "110" },
    });
    const text = out.replace(/\s+/g, " ");
    expect(text).toContain(`working days and EUR`);
    expect(text).toContain("is another question");
    for (const { name } of printed.shares) expect(text).toContain(name);
    for (const { step } of printed.walk) expect(text).toContain(step);
    const largest = printed.shares.find(
      ({ workingDays }) => workingDays === Math.max(...printed.shares.map((s) => s.workingDays)),
    );
    expect(text).toContain(String(Math.round(largest?.workingDays ?? Number.NaN)));
  });

  it("says what was switched, in the text and in the JSON, and what a switch could not do", async () => {
    const words = ["explain", "-", "--iterations", "300", "--without", "rain"];
    const text = await leeway(words, { input: smallPlan });
    expect(text.out).toContain("What if: without rain.");
    const { scenario } = JSON.parse((await leeway([...words, "--json"], { input: smallPlan })).out);
    expect(scenario).toEqual({ without: ["rain"] });
    const idle = await leeway(["explain", "-", "--iterations", "300", "--without", "tarpaulin"], {
      input: smallPlan,
    });
    expect(idle.code).toBe(0);
    expect(idle.err).toMatch(/^--without\b.*tarpaulin.*not adopted/);
  });

  it.each([60, 80, 110])("keeps to %i columns", async (width) => {
    const { out } = await leeway(["explain", examplePlan, "--iterations", "400"], {
      env: { COLUMNS: String(width) },
    });
    const lines = out.split("\n").filter((line) => !line.startsWith("  leeway "));
    expect(lines.length).toBeGreaterThan(30);
    expect(lines.filter((line) => [...line].length > width)).toEqual([]);
  });

  it("says of a certain plan that there is nothing to explain", async () => {
    const input = "format: 1\ntitle: T\nstart: 2027-02-01\ntasks:\n  - { id: a, name: A, duration: 5 }\n";
    const { code, out } = await leeway(["explain", "-"], { input });
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toContain("Nothing in the plan is uncertain");
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("explain, called wrongly", () => {
  it("lists every wrong option at once and ends with 2", async () => {
    const { code, out, err } = await leeway([
      "explain",
      examplePlan,
      "--confidence",
      "80",
      "--iterations",
      "none",
    ]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain("--confidence 80");
    expect(err).toContain("--iterations none");
  });

  it("names an unknown id, a plan that is none, and a calendar that ends", async () => {
    const unknown = await leeway(["explain", examplePlan, "--without", "moonfall"]);
    expect(unknown).toMatchObject({ code: 2, out: "", err: expect.stringContaining("moonfall") });
    const broken = await leeway(["explain", "-"], { input: smallPlan.replace("[2, 3, 6]", "[9, 3, 6]") });
    expect(broken).toMatchObject({ code: 2, out: "", err: expect.stringContaining("tasks[0].duration") });
    const endless = smallPlan.replace("[4, 5, 9]", "[4, 5, 90000]");
    const beyond = await leeway(["explain", "-", "--iterations", "100"], { input: endless });
    expect(beyond).toMatchObject({ code: 2, out: "", err: expect.stringContaining("felt") });
  });
});
