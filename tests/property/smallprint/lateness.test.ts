import { describe, expect, it } from "vitest";
import { forecastOf } from "../laws/runPlan.ts";
import { documentOf } from "./page.ts";

// Every title is a sentence of plan format 1, "Money", on lateness; expected values by hand. Tuesday 2027-02-02 ends
// at moment 2. Under Latin hypercube half of 1,024 iterations take the likelier half exactly.

const price = { perWeek: 700, once: 1000 };
const late = (duration: unknown, lateness: object, commitment: object = { finishBy: "2027-02-02" }) => {
  const forecast = forecastOf(documentOf({ a: { duration } }, { lateness, commitment }), {
    iterations: 1024,
  });
  expect([forecast.asWritten.cost, forecast.cost.mean]).toEqual([0, 0]);
  return forecast.lateness;
};
const half = (a: number, b: number) => ({
  outcomes: [
    { value: a, chance: 0.5 },
    { value: b, chance: 0.5 },
  ],
});

describe("lateness", () => {
  it("= weeks late * `perWeek`, plus `once`; weeks late = (finish - end of day `after`) / 7, fractions counted", () => {
    // Friday evening is three days after Tuesday's: 3/7 of 700, and 1000. Never inside the total (see `late`).
    expect(late(5, price)).toEqual({
      after: "2027-02-02",
      chance: 1,
      mean: 1300,
      meanWhenLate: 1300,
      p80: 1300,
    });
    expect(late(5, { perWeek: 700 })?.mean).toBeCloseTo(300, 9);
    expect(late(2.5, { perWeek: 700 })?.mean).toBeCloseTo(50, 9);
    expect(late(5, { once: 1000 })?.mean).toBe(1000);
  });

  it("`once` when late at all: not by Tuesday's end, nor within 1e-9 of it", () => {
    expect([2, 2 + 5e-10, 1].map((days) => late(days, price)?.mean)).toEqual([0, 0, 0]);
    expect(late(2.001, price)).toMatchObject({ chance: 1 });
    expect(late(2.001, price)?.mean).toBeGreaterThan(1000);
  });

  it("calendar days count: a weekend between makes it later", () => {
    // Six working days end on Monday evening (8), six days after Tuesday's.
    expect(late(6, price)?.mean).toBeCloseTo(1600, 9);
  });

  it("`after` comes before `finishBy`, its default", () => {
    expect(late(5, { ...price, after: "2027-02-04" })).toMatchObject({ after: "2027-02-04", mean: 1100 });
    expect(late(5, { ...price, after: "2027-02-04" }, {})).toMatchObject({ after: "2027-02-04", mean: 1100 });
  });

  it("is a mean over all iterations, and over the late ones", () => {
    // Two days are in time; seven end on the second Tuesday evening (9): a week late.
    const found = late(half(2, 7), price);
    expect(found).toMatchObject({ chance: 0.5, mean: 850, meanWhenLate: 1700, p80: 1700 });
  });

  it("`perWeek` is an estimate, drawn", () => {
    const found = late(7, { perWeek: { low: 600, high: 800, shape: "uniform" } });
    // One week late: the mean of the uniform law, stratified in 1,024; its 80th percentile 760.
    expect(Math.abs((found?.mean ?? 0) - 700)).toBeLessThan(0.2);
    expect(Math.abs((found?.p80 ?? 0) - 760)).toBeLessThan(0.2);
  });
});
