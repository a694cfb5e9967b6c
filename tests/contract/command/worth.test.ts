import { expect, it } from "vitest";
import { worthLines } from "../../../apps/command/src/text/worth.ts";
import { forecast, planFromData } from "../../../packages/core/src/index.ts";

function lines(document: Record<string, unknown>): string {
  const { plan, problems } = planFromData({
    format: 1,
    title: "T",
    start: "2027-01-01",
    calendar: "every-day",
    ...document,
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const result = forecast(plan, { iterations: 200 }).forecast;
  if (result === undefined) throw new Error("no forecast");
  return worthLines(result, 1000).join("\n");
}

// Brigham & Ehrhardt, project S at 10 %: net present value 78.82 (recalled); see tests/reference/money.
it("tells the worth of the benefits, with the rate as it is written", () => {
  const flows = [500, 400, 300, 100];
  const text = lines({
    tasks: [
      ...flows.map((_, y) => ({
        id: `y${y}`,
        name: `Y${y}`,
        duration: 365.25,
        ...(y > 0 ? { after: `y${y - 1}` } : {}),
      })),
      { id: "spend", name: "Spend", milestone: true, cost: 1000 },
    ],
    benefits: flows.map((amount, y) => ({
      id: `b${y}`,
      name: `B${y}`,
      amount,
      per: "once",
      starts: `y${y}`,
    })),
    appraisal: { years: 20, discountRate: 0.1 },
  });
  expect(text).toContain("Worth over 20 years at 10 %");
  expect(text).toContain("EUR 79 on average");
  expect(text).toContain("paid back by");
});

// Worked by hand: 24 days end two weeks after 10 January, 2 * 700 + 50; 500 released in January against 24 * 30.
it("tells what lateness costs and when money runs short", () => {
  const text = lines({
    tasks: [{ id: "a", name: "A", duration: 24, costPerDay: 30 }],
    lateness: { after: "2027-01-10", perWeek: 700, once: 50 },
    commitment: { funds: [{ from: "2027-01-01", amount: 500 }] },
  });
  expect(text).toContain("being late costs EUR 1,500 on average, EUR 1,500 when it is late");
  expect(text).toMatch(/falls short of 80 % in January 2027: it covers/);
});

// Common practice, no source: nought to two places is no finding about what is over.
it("says that nothing moves together any more where every pair is settled", () => {
  const done = { started: "2027-01-01", finished: "2027-01-03" };
  const correlations = [
    { between: ["a", "b"], coefficient: 0.6 },
    { between: ["b", "c"], coefficient: 0.6 },
  ];
  const task = (id: string, more: object = {}) => ({ id, name: id, duration: [1, 2, 4], ...more });
  const open = lines({ tasks: [task("a"), task("b"), task("c")], correlations });
  expect(open).toMatch(/move together \(correlation\): .*a and b 0\.\d\d/);
  const half = lines({
    statusDate: "2027-01-03",
    tasks: [task("a", done), task("b"), task("c")],
    correlations,
  });
  expect(half).toMatch(/move together \(correlation\): b and c 0\.\d\d\./);
  const over = lines({
    statusDate: "2027-01-03",
    tasks: [task("a", done), task("b", done), task("c", done)],
    correlations,
  });
  expect(over).toBe("No durations move together any more: of each pair in `correlations` one is settled.");
});

it("says nothing of what the plan does not speak of", () => {
  expect(lines({ tasks: [{ id: "a", name: "A", duration: [1, 2, 4] }] })).toBe("");
});
