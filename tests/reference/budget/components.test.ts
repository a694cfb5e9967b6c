import { describe, expect, it } from "vitest";
import { type Budget, type BudgetOptions, budget } from "../../../packages/core/src/index.ts";
import { planOfDocument } from "../../property/laws/runPlan.ts";

const base = { format: 1, title: "Check", start: "2027-01-04", iterations: 10000 };

function budgetOf(document: object, options: BudgetOptions = {}): Budget {
  const { budget: found, problems } = budget(planOfDocument({ ...base, ...document }), options);
  if (found === undefined) throw new Error(JSON.stringify(problems));
  return found;
}

// NASA Cost Estimating Handbook v4.0 (2015), appendix J: cost that runs with time and cost that does not (method read in
// a digest), on the Design-Build-Test path of Hulett: triangular 20/30/60, 30/40/65, 18/25/50 days. 250,000 once and
// 4,000 a day; exact quantiles of the sum of three triangulars by piecewise polynomials.
describe("time-dependent cost of a simulated duration", () => {
  const task = (id: string, duration: number[], after?: string) => ({
    id,
    name: id,
    duration: { low: duration[0], likely: duration[1], high: duration[2], shape: "triangular" },
    ...(after === undefined ? {} : { after }),
  });
  const found = budgetOf({
    commitment: { confidence: 0.8 },
    tasks: [
      { id: "contract", name: "Contract", milestone: true, cost: 250000 },
      task("design", [20, 30, 60]),
      task("build", [30, 40, 65], "design"),
      task("test", [18, 25, 50], "build"),
    ],
    overheads: [{ id: "army", name: "Standing army", perDay: 4000 }],
  });

  it("has the exact percentiles, to 4 standard errors at 10,000 iterations (0.6 %)", () => {
    const { total } = found;
    expect(total.asWritten).toBe(630000);
    expect(Math.abs(total.mean / 700666.6667 - 1)).toBeLessThan(0.002);
    expect(Math.abs(total.p50 / 698287.6228 - 1)).toBeLessThan(0.006);
    expect(Math.abs(total.p80 / 745606.4939 - 1)).toBeLessThan(0.006);
  });

  it("splits the committed sum into the part that does not run with time, exactly, and the rest", () => {
    const split = Object.fromEntries(found.components.map((one) => [one.kind, one.split]));
    expect(split["task-cost"]).toBeCloseTo(250000, 6);
    expect(split.overheads).toBeCloseTo(found.total.committed - 250000, 6);
  });
});

// GAO-20-195G, ch. 12: percentiles do not add up (read in a digest). Seven independent triangulars of table 12, one air
// vehicle, thousands of dollars; exact sums by rational arithmetic: P80s together 88,354.8, P80 of the sum 86,446.4.
describe("percentiles of components", () => {
  const elements = {
    airframe: [17955, 19645, 21785],
    propulsion: [8500, 10553, 13000],
    communications: [4000, 4306, 5100],
    navigation: [4100, 4305, 4650],
    computer: [550, 600, 650],
    software: [32300, 35547, 52500],
    integration: [1950, 2136, 2600],
  };
  const found = budgetOf({
    commitment: { confidence: 0.8 },
    phases: Object.keys(elements).map((name) => ({ name })),
    tasks: Object.entries(elements).map(([id, [low, likely, high]]) => ({
      id,
      name: id,
      phase: id,
      milestone: true,
      cost: { low, likely, high, shape: "triangular" },
    })),
  });

  it("add up to more than the percentile of the sum; the split adds up to it", () => {
    const p80s = found.phases.reduce((sum, { p80 }) => sum + p80, 0);
    expect(Math.abs(p80s / 88354.8023 - 1)).toBeLessThan(0.003);
    expect(Math.abs(found.total.committed / 86446.3713 - 1)).toBeLessThan(0.003);
    const split = found.phases.reduce((sum, one) => sum + one.split, 0);
    expect(Math.abs(split / found.total.committed - 1)).toBeLessThan(1e-12);
  });
});

// The mean of one of two independent normals given their sum s is its own mean plus its share of the variance times
// (s - mean of the sum): textbook (any text on the bivariate normal). sds 3 and 4 of the P10-P90 ranges below.
describe("the split at a level", () => {
  const z90 = 1.2815515655446004;
  const normal = (mean: number, sd: number) => ({
    low: mean - z90 * sd,
    high: mean + z90 * sd,
    shape: "normal",
    bounds: "p10-p90",
  });
  it.each([0.2, 0.5, 0.8, 0.95])("is the mean given the sum, at %s", (confidence) => {
    const { phases, total } = budgetOf({
      commitment: { confidence },
      tasks: [
        { id: "a", name: "A", phase: "One", milestone: true, cost: normal(100, 3) },
        { id: "b", name: "B", phase: "Two", milestone: true, cost: normal(200, 4) },
      ],
    });
    const expected = 100 + (9 / 25) * (total.committed - 300);
    const { split, error } = phases.find(({ phase }) => phase === "One") ?? { split: 0, error: 0 };
    // sd of A given the sum: 3 * 4 / 5 = 2.4; about a thousand iterations in the neighbourhood.
    expect(error).toBeGreaterThan(2.4 / Math.sqrt(1300));
    expect(error).toBeLessThan(2.4 / Math.sqrt(700));
    expect(Math.abs(split - expected)).toBeLessThan(4 * error);
  });
});

// Definitions of the plan format, arithmetic, no published source.
describe("components by kind, phase and month", () => {
  const found = budgetOf({
    iterations: 64,
    people: [{ id: "ana", name: "Ana", rate: 300 }],
    phases: [{ name: "Dig" }, { name: "Fill" }],
    tasks: [
      {
        id: "dig",
        name: "Dig",
        phase: "Dig",
        duration: 10,
        cost: 1000,
        costPerDay: 20,
        people: { id: "ana", share: 0.5 },
      },
      { id: "fill", name: "Fill", phase: "Fill", duration: 15, after: "dig", costPerDay: 40 },
    ],
    risks: [
      {
        id: "rock",
        name: "Rock",
        status: "occurred",
        probability: 0.5,
        impacts: [
          { tasks: ["dig", "fill"], cost: 600 },
          { tasks: "dig", delay: 5 },
        ],
        responses: [{ id: "drill", action: "Drill", cost: 70, adopted: true }],
      },
    ],
    overheads: [{ id: "hut", name: "Hut", perDay: 5 }],
    commitment: {
      funds: [
        { from: "2027-01-04", amount: 3000 },
        { from: "2027-02-20", amount: 6000 },
      ],
    },
  });

  it("puts money where it belongs: days that a risk adds are paid as days", () => {
    expect(Object.fromEntries(found.components.map(({ kind, mean }) => [kind, mean]))).toEqual({
      "task-cost": 1000,
      "task-per-day": 15 * 20 + 15 * 40,
      people: 15 * 150,
      risks: 600,
      responses: 70,
      overheads: 30 * 5,
    });
    expect(found.components.map(({ mean, asWritten }) => mean - asWritten)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(found.phases.map(({ phase, mean }) => [phase, mean])).toEqual([
      ["Dig", 1000 + 300 + 2250 + 300],
      ["Fill", 600 + 300],
      [undefined, 70 + 150],
    ]);
  });

  it("says which month runs short first and what would cure it: more, or the same earlier", () => {
    // Dig takes 4 to 22 January, fill the 15 working days to 12 February, five of them in January. By the end of
    // January 3,850 + 1/3 of 900 + 70 + 20 days of the hut = 4,320 are spent, 3,000 released: 1,320 short.
    expect(found.months.map(({ month, byEnd }) => [month, Math.round(byEnd.p50)])).toEqual([
      ["2027-01", 4320],
      ["2027-02", 4970],
    ]);
    expect(found.funds).toMatchObject({
      covered: false,
      firstShort: { month: "2027-01", chanceCovered: 0 },
      more: { by: "2027-01-31" },
      earlier: [{ from: "2027-02-20", amount: 6000, neededBy: "2027-01-31", days: 20 }],
      lacking: 0,
    });
    expect(found.funds?.more?.amount).toBeCloseTo(1320, 6);
  });
});
