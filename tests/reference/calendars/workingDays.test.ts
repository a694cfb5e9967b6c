/** Working days with real public holidays, read through the dates of a forecast. */
import { describe, expect, it } from "vitest";
import { forecastOf } from "../integrated/runPlan.ts";

// UK government table of bank and public holidays 2011-2015 (archived copy), read: England and Wales, with
// the substitute days already in place.
const holidays: Record<string, string[]> = {
  "2013": [
    "2013-01-01",
    "2013-03-29",
    "2013-04-01",
    "2013-05-06",
    "2013-05-27",
    "2013-08-26",
    "2013-12-25",
    "2013-12-26",
  ],
  "2014": [
    "2014-01-01",
    "2014-04-18",
    "2014-04-21",
    "2014-05-05",
    "2014-05-26",
    "2014-08-25",
    "2014-12-25",
    "2014-12-26",
  ],
};

const datesOf = (start: string, year: string, durations: number[], notBefore?: string) => {
  const id = (k: number) => `step-${String(k + 1).padStart(2, "0")}`;
  const { tasks } = forecastOf(
    {
      format: 1,
      title: "Year",
      start,
      calendars: { england: { like: "weekdays", holidays: holidays[year] ?? [] } },
      calendar: "england",
      tasks: durations.map((duration, k) => ({
        id: id(k),
        name: `Step ${k + 1}`,
        duration,
        ...(k > 0 ? { after: id(k - 1) } : {}),
        ...(k === 0 && notBefore !== undefined ? { notBefore } : {}),
      })),
    },
    { iterations: 1 },
  );
  return tasks.map((task) => [task.asWritten.startDate, task.asWritten.finishDate]);
};

// Working days by month, counted by another program (NumPy busday_count). Twelve tasks in a row, each as long
// as its month has working days: were one count wrong, a task would leave its month.
describe("forecast(a year of twelve tasks, each as long as its month has working days)", () => {
  it.each([
    ["2013", [22, 20, 20, 21, 21, 20, 23, 21, 21, 23, 21, 20], 253],
    ["2014", [22, 20, 21, 20, 20, 21, 23, 20, 22, 23, 20, 21], 253],
  ] as const)("%s: %j, %s in all", (year, months, total) => {
    const rows = datesOf(`${year}-01-01`, year, [...months]);
    rows.forEach(([start, finish], k) => {
      const month = `${year}-${String(k + 1).padStart(2, "0")}`;
      expect([start?.slice(0, 7), finish?.slice(0, 7)]).toEqual([month, month]);
    });
    expect(months.reduce((sum: number, days) => sum + days, 0)).toBe(total);
    const [[first, last] = []] = datesOf(`${year}-01-01`, year, [total]);
    expect([first, last]).toEqual([`${year}-01-02`, `${year}-12-31`]);
  });
});

// GAO-16-89G, appendix IV, digest read: early finish = early start + duration - 1 working days; what follows
// starts the next working day. Dates by another program (NumPy busday_offset).
describe("forecast(chains across holidays), first and last day counted", () => {
  it.each([
    [
      "2014-04-14",
      [3, 5, 2],
      [
        ["2014-04-14", "2014-04-16"],
        ["2014-04-17", "2014-04-25"],
        ["2014-04-28", "2014-04-29"],
      ],
    ],
    [
      "2014-05-01",
      [10, 1],
      [
        ["2014-05-01", "2014-05-15"],
        ["2014-05-16", "2014-05-16"],
      ],
    ],
    // A start on a Saturday waits for Monday.
    ["2014-12-20", [5], [["2014-12-22", "2014-12-30"]]],
  ])("from %s, %j days", (start, durations, expected) => {
    expect(datesOf(start, "2014", durations)).toEqual(expected);
    // The same where the plan began earlier and the chain may not.
    expect(datesOf("2014-01-06", "2014", durations, start)).toEqual(expected);
  });
});

// Easter Mondays 2013 and 2014 by the table above; Gregorian Easter by the Meeus/Jones/Butcher method,
// recalled. It checks the holidays this file relies on, not the product, which has no movable feasts of its
// own.
describe("holidays of the table", () => {
  it.each([2013, 2014])("hold Good Friday and Easter Monday of %s", (year) => {
    const a = year % 19;
    const b = Math.floor(year / 100);
    const c = year % 100;
    const g = Math.floor((b - Math.floor((b + 8) / 25) + 1) / 3);
    const h = (19 * a + b - Math.floor(b / 4) - g + 15) % 30;
    const l = (32 + 2 * (b % 4) + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
    const m = Math.floor((a + 11 * h + 22 * l) / 451);
    const n = h + l - 7 * m + 114;
    const easter = Date.UTC(year, Math.floor(n / 31) - 1, (n % 31) + 1);
    const day = (offset: number) => new Date(easter + offset * 86_400_000).toISOString().slice(0, 10);
    expect(holidays[year]).toContain(day(-2));
    expect(holidays[year]).toContain(day(1));
  });
});
