// Optimism-bias uplifts against the published tables and worked examples.
import {
  planFromData,
  STAGE_UPLIFTS,
  stageUplift,
  UPLIFT_BOUNDS,
  upliftedPlan,
  upliftFor,
} from "@leeway/core";
import { describe, expect, it } from "vitest";

describe("UPLIFT_BOUNDS", () => {
  // Mott MacDonald (2002), "Review of Large Public Procurement in the UK", Table 2; the same in HM Treasury,
  // Supplementary Green Book Guidance: Optimism Bias, Table 1. Read (a published copy of the guidance).
  it.each([
    ["non-standard-buildings", 39, 2, 51, 4],
    ["standard-buildings", 4, 1, 24, 2],
    ["non-standard-civil-engineering", 25, 3, 66, 6],
    ["standard-civil-engineering", 20, 1, 44, 3],
    ["equipment-or-development", 54, 10, 200, 10],
  ] as const)("of %s are as published", (kind, longer, atLeastLonger, dearer, atLeastDearer) => {
    const bounds = UPLIFT_BOUNDS[kind];
    expect([...bounds.duration, ...bounds.capital]).toEqual([longer, atLeastLonger, dearer, atLeastDearer]);
    const { duration, capital } = upliftFor([{ kind, part: 1 }]);
    expect([duration?.result, capital?.result]).toEqual([longer, dearer]);
  });

  it("of outsourcing are of the running cost only", () => {
    expect(upliftFor([{ kind: "outsourcing", part: 1 }])).toEqual({
      running: { upper: 41, lower: 0, result: 41, belowLower: false },
    });
  });
});

describe("upliftFor(mix, mitigated)", () => {
  // The guidance's worked example of a combined project, read: 30 % non-standard, 70 % standard building give
  // 32.1 % of the capital cost and 14.5 % of the duration.
  it("weights a combined project", () => {
    const { duration, capital } = upliftFor([
      { kind: "non-standard-buildings", part: 0.3 },
      { kind: "standard-buildings", part: 0.7 },
    ]);
    expect(capital?.upper).toBeCloseTo(32.1, 9);
    expect(duration?.upper).toBeCloseTo(14.5, 9);
  });

  // The guidance's worked example of mitigation, read: 92 % of 51 % managed leaves 4.08, printed as 4 %; 100 million
  // become 104, and 111 with 7 million for managing the risks.
  it("reduces by what is managed", () => {
    const { capital } = upliftFor([{ kind: "non-standard-buildings", part: 1 }], 0.92);
    expect(capital?.result).toBeCloseTo(4.08, 9);
    expect(Math.round(capital?.result ?? 0)).toBe(4);
    expect(capital?.belowLower).toBe(false); // 4.08 against 4
    const { plan } = planFromData({
      format: 1,
      title: "T",
      start: "2027-01-04",
      tasks: [{ id: "build", name: "Build", duration: 100, cost: 100e6 }],
    });
    if (plan === undefined) throw new Error("no plan");
    const exact = upliftedPlan(plan, { cost: capital?.result ?? 0 }, 7e6);
    expect(exact?.cost).toBeCloseTo(111.08e6, 3);
    expect(upliftedPlan(plan, { cost: 4 }, 7e6)?.cost).toBeCloseTo(111e6, 3);
  });

  it("says when the result is below what the best managed needed", () => {
    expect(upliftFor([{ kind: "standard-buildings", part: 1 }], 0.95).capital?.belowLower).toBe(true);
  });
});

// Transport Scotland, Scottish Transport Appraisal Guidance, Technical Database, Table 13.4 (from Flyvbjerg 2004 and
// Mott MacDonald 2002), read: per cent by stage 1, 2, 3.
it.each([
  ["roads", [44, 15, 3]],
  ["fixed-links", [66, 23, 6]],
  ["building-projects", [51, undefined, 4]],
  ["it-projects", [200, undefined, 10]],
] as const)("stage uplifts of %s are as published", (kind, capital) => {
  expect([1, 2, 3].map((stage) => stageUplift(kind, stage as 1 | 2 | 3))).toEqual(capital);
  expect(STAGE_UPLIFTS[kind].name).not.toBe("");
});

it("upliftedPlan(plan) lengthens the working days and reads the date off the plan's calendar", () => {
  // By hand: 10 working days from Monday 4 January 2027 end on Friday 15; 50 % more are 15, Friday 22.
  const { plan } = planFromData({
    format: 1,
    title: "T",
    start: "2027-01-04",
    tasks: [{ id: "build", name: "Build", duration: [8, 10, 20], cost: 1000 }],
  });
  if (plan === undefined) throw new Error("no plan");
  expect(upliftedPlan(plan, { duration: 50 })).toEqual({
    asWritten: { date: "2027-01-15", workingDays: 10, cost: 1000 },
    finish: { date: "2027-01-22", workingDays: 15 },
  });
});
