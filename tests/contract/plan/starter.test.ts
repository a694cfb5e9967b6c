// The plan a newcomer begins with reads without a problem, whatever the title.

import { readPlan, starterPlan } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

describe("starterPlan({ title, start, currency })", () => {
  it("reads without a problem and holds six tasks", () => {
    const { plan, problems } = readPlan(
      starterPlan({ title: "Garden", start: "2027-03-01", currency: "CHF" }),
    );
    expect(problems).toEqual([]);
    expect(plan).toMatchObject({ title: "Garden", start: "2027-03-01", currency: "CHF" });
    expect(plan?.tasks).toHaveLength(6);
  });

  it("takes any title", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (title) => {
        fc.pre(title.trim() !== "");
        expect(readPlan(starterPlan({ title, start: "2027-03-01", currency: "EUR" })).plan?.title).toBe(
          title,
        );
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});
