import { expect, it } from "vitest";
import { OptionValues } from "../../../apps/command/src/call/optionValues.ts";
import { forecast, planFromData } from "../../../packages/core/src/index.ts";

const { plan } = planFromData({
  format: 1,
  title: "T",
  start: "2027-03-01",
  tasks: [{ id: "a", name: "A", duration: [20, 40, 90] }],
});

// Own expectation of the option, no outside source: limits as close as asked for, by doubling, and no wider run.
it("doubles the futures until the limits of the committed finish are as close as asked for", () => {
  if (plan === undefined) throw new Error("the plan does not read");
  const first = forecast(plan, { iterations: 1000 }).forecast;
  const close = forecast(plan, { iterations: 1000, withinDays: 1 }).forecast;
  const width = (result: typeof first) => {
    const row = result?.finish.percentiles.find(({ p }) => p === 0.8);
    return (row?.high ?? 0) - (row?.low ?? 0);
  };
  expect(width(first)).toBeGreaterThan(1.5);
  expect(width(close)).toBeLessThanOrEqual(3); // one working day, and at most a weekend between the limits
  const doublings = Math.log2((close?.iterations ?? 0) / 1000);
  expect(doublings).toBe(Math.round(doublings));
  expect(doublings).toBeGreaterThan(0);
});

it.each(["0", "-1", "soon", "1 day"])("`--within %s` is a problem that says what to write", (text) => {
  const values = new OptionValues(new Map([["within", [text]]]));
  expect(values.days("within")).toBeUndefined();
  expect(values.problems).toHaveLength(1);
  expect(values.problems[0]?.remedy).toContain("--within 0.5");
});
