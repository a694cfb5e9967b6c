import { expect, it } from "vitest";
import { forecast, planFromData } from "../../../packages/core/src/index.ts";

// Plan format, "The register": every part of an impact is optional, and `cost` is added once. Two-point cost,
// worked by hand: 1000 - 300 in a fifth of the iterations. Latin hypercube sampling of 5,120 iterations (five whole
// blocks) hits the share of 0.2 to within one iteration a block.
it("an impact of money alone names no task and moves no date", () => {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Money alone",
    start: "2027-03-01",
    tasks: [{ id: "a", name: "A", duration: 10, cost: 1000 }],
    risks: [{ id: "sale", name: "A second-hand offer", probability: 0.2, impacts: { cost: -300 } }],
  });
  expect(problems).toEqual([]);
  if (plan === undefined) throw new Error("the plan does not read");
  const result = forecast(plan, { iterations: 5120 }).forecast;
  expect(result?.cost.mean).toBeCloseTo(1000 - 0.2 * 300, 0);
  expect(result?.cost.percentiles.find((row) => row.p === 0.1)?.value).toBe(700);
  expect(result?.cost.percentiles.find((row) => row.p === 0.5)?.value).toBe(1000);
  expect(result?.finish.sd).toBe(0);
});
