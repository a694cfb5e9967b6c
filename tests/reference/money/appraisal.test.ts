import { describe, expect, it } from "vitest";
import { dayNumber, isoDate } from "../../../packages/core/src/calendar/dates.ts";
import { compile, forecast, planFromData, simulate } from "../../../packages/core/src/index.ts";

const start = "2027-01-01";

/** A chain of years of 365.25 days on an every-day calendar; `year-3` finishes exactly three years after the start. */
function years(count: number) {
  return Array.from({ length: count }, (_, y) => ({
    id: `year-${y + 1}`,
    name: `Year ${y + 1}`,
    duration: 365.25,
    ...(y === 0 ? {} : { after: [`year-${y}`] }),
  }));
}

function forecastOf(document: Record<string, unknown>) {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Check",
    start,
    calendar: "every-day",
    ...document,
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  const result = forecast(plan, { iterations: 200 });
  if (result.forecast === undefined) throw new Error(JSON.stringify(result.problems));
  return { plan, forecast: result.forecast };
}

function netOf(flows: number[], rate: number) {
  const cost = -(flows[0] as number);
  return forecastOf({
    tasks: [...years(flows.length - 1), { id: "spend", name: "Spend", milestone: true, cost }],
    benefits: flows.slice(1).map((amount, y) => ({
      id: `b-${y + 1}`,
      name: `Benefit ${y + 1}`,
      amount,
      per: "once",
      starts: `year-${y + 1}`,
    })),
    appraisal: { years: 20, discountRate: rate },
  }).forecast.appraisal;
}

// HM Treasury, The Green Book, Annex A6: social time preference rate of 3.5 % for years 0 to 30 (rate read on the
// web page; factors computed as 1.035^-y; 0.9662, 0.9335 and 0.9019 recalled, and they agree).
describe("discount factors at 3.5 %", () => {
  it.each([
    [1, 0.9661835749],
    [2, 0.9335107004],
    [3, 0.9019427057],
    [4, 0.8714422277],
    [5, 0.8419731669],
    [10, 0.7089188137],
  ])("year %i", (year, factor) => {
    const { forecast } = forecastOf({
      tasks: years(year),
      benefits: [{ id: "b", name: "One", amount: 1, per: "once", starts: `year-${year}` }],
      appraisal: { years: 30, discountRate: 0.035 },
    });
    expect(forecast.appraisal?.benefits[0]?.mean).toBeCloseTo(factor, 9);
  });
});

// HM Treasury, The Green Book (2003), ch. 5, discounting box: published net present values -0.82 and +0.51
// (recalled; recomputed to -0.8173019785 and 0.5096188129).
describe("net value of the two options of the discounting box", () => {
  it.each([
    ["A", [-10, 2.5, 2.5, 2.5, 2.5], -0.8173019785],
    ["B", [-5, 1.5, 1.5, 1.5, 1.5], 0.5096188129],
  ])("option %s", (_, flows, expected) => {
    expect(netOf(flows, 0.035)?.net.mean).toBeCloseTo(expected, 6);
  });
});

// Brigham & Ehrhardt, Financial Management: Theory and Practice, capital budgeting, project S: net present value
// 78.82 at 10 % (recalled; recomputed 78.8197527491). Its discounted payback of 2.95 years lies within the third
// year; money here arrives at the end of it, so payback is read at that payment.
describe("project S", () => {
  const appraisal = netOf([-1000, 500, 400, 300, 100], 0.1);
  it("has the published net present value", () => {
    expect(appraisal?.net.mean).toBeCloseTo(78.8197527491, 6);
    expect(appraisal?.chancePositive).toBe(1);
  });
  it("is paid back by the third payment, in every iteration", () => {
    const third = isoDate(dayNumber(start) + Math.ceil(3 * 365.25) - 1);
    expect(appraisal?.payback).toEqual({ chance: 1, p50: third, p80: third });
  });
});

// Plan format, "Benefits": the sum written out month by month, common arithmetic, no published source.
describe("a monthly benefit that ramps up and ends", () => {
  it.each([
    ["month", 1],
    ["year", 1 / 12],
    ["week", 365.25 / 84],
    ["day", 365.25 / 12],
  ] as const)("per %s, ramp 6, lasts 30, within 3 years", (per, monthly) => {
    const amount = 700;
    const { forecast } = forecastOf({
      tasks: [{ id: "build", name: "Build", duration: 200, cost: 1000 }],
      benefits: [{ id: "b", name: "Gain", amount, per, ramp: 6, lasts: 30, starts: "build" }],
      appraisal: { years: 3, discountRate: 0.05 },
    });
    let expected = 0;
    for (let k = 1; k <= 30; k++) {
      const t = 200 + (k * 365.25) / 12;
      if (t > 3 * 365.25) break;
      expected += amount * monthly * Math.min(1, k / 6) * 1.05 ** (-t / 365.25);
    }
    expect(forecast.appraisal?.benefits[0]?.mean).toBeCloseTo(expected, 5);
    expect(forecast.appraisal?.net.mean).toBeCloseTo(expected - 1000, 5);
  });
});

// Plan format, "Money": weeks late = (finish - end of day `after`) / 7, fractions counted; no published source.
describe("lateness", () => {
  it("charges weeks and once, and nothing when in time", () => {
    const document = {
      tasks: [
        {
          id: "a",
          name: "A",
          duration: {
            outcomes: [
              { value: 10, chance: 0.5 },
              { value: 24, chance: 0.5 },
            ],
          },
        },
      ],
      lateness: { after: "2027-01-10", perWeek: 700, once: 50 },
    };
    const { forecast } = forecastOf(document);
    // 10 days end with 10 January: in time. 24 days end two weeks later: 2 * 700 + 50.
    expect(forecast.lateness?.chance).toBeCloseTo(0.5, 1);
    expect(forecast.lateness?.meanWhenLate).toBeCloseTo(1450, 9);
    expect(forecast.lateness?.mean).toBeCloseTo(1450 * (forecast.lateness?.chance ?? 0), 9);
  });
});

describe("cost by month", () => {
  it("books work to the days it is done on, and adds up to the total in every iteration", () => {
    const { plan, forecast } = forecastOf({
      tasks: [
        { id: "a", name: "A", duration: 62, cost: 620, costPerDay: 10 },
        { id: "b", name: "B", duration: [5, 20, 90], after: ["a"], cost: 300, due: "finish" },
      ],
      overheads: [{ id: "site", name: "Site", perDay: 7 }],
      risks: [
        {
          id: "r",
          name: "R",
          probability: 0.4,
          impacts: [{ tasks: ["b"], delay: [1, 5, 40], cost: [10, 50, 900] }],
        },
      ],
      commitment: {
        funds: [
          { from: "2027-01-15", amount: 500 },
          { from: "2027-03-31", amount: 5000 },
        ],
      },
    });
    // January and February: 31 and 28 days of A at 10 + 10, the site at 7 a day.
    expect(forecast.months?.[0]?.cumulative.p50).toBeCloseTo(31 * 27, 9);
    expect(forecast.months?.[1]?.cumulative.p80).toBeCloseTo(59 * 27, 9);
    expect(forecast.months?.map((month) => month.released).slice(0, 3)).toEqual([500, 500, 5500]);
    expect(forecast.firstShortfall?.month).toBe("2027-01");
    const { trials } = simulate(compile(plan), { iterations: 2000 });
    const last = trials?.months?.rows.at(-1);
    trials?.cost.forEach((total, k) => {
      expect(last?.[k]).toBeCloseTo(total, 6);
    });
  });
});

// The same arithmetic by hand: 1 a month, 12 of them, the first a month after it begins, which is `lag` months after
// the finish it hangs on. At no discount the months that fit are all that counts.
describe("a benefit that begins some months after the finish it hangs on", () => {
  const meanOf = (more: Record<string, unknown>, rate = 0) =>
    forecastOf({
      tasks: years(1),
      benefits: [{ id: "b", name: "Gain", amount: 1, per: "month", starts: "year-1", ...more }],
      appraisal: { years: 3, discountRate: rate },
    }).forecast.appraisal?.benefits[0]?.mean;

  it("counts the months that are left after it", () => {
    expect(meanOf({})).toBeCloseTo(24, 9);
    expect(meanOf({ lag: 6 })).toBeCloseTo(18, 9);
    expect(meanOf({ lag: 24 })).toBeCloseTo(0, 9);
  });
  it("still lasts as long as it lasts, and is discounted for the wait", () => {
    const discounted = Array.from({ length: 12 }, (_, k) => 1.035 ** -(1 + (6 + k + 1) / 12));
    expect(meanOf({ lag: 6, lasts: 12 }, 0.035)).toBeCloseTo(
      discounted.reduce((sum, part) => sum + part, 0),
      6,
    );
  });
  it("is paid once after it, and not at all beyond the years that count", () => {
    expect(meanOf({ per: "once", lag: 12 }, 0.1)).toBeCloseTo(1.1 ** -2, 9);
    expect(meanOf({ per: "once", lag: 25 })).toBe(0);
  });
});
