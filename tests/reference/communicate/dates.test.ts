// Days of the week and movable holidays, which decide when somebody is informed.
import { describe, expect, it } from "vitest";
import { dayNumber, isoDate, weekdayOf } from "../../../packages/core/src/calendar/dates.ts";
import { nextWorkday, planFromData, rhythm } from "../../../packages/core/src/index.ts";

// ISO 8601 week dates around New Year, the classic list (recalled; recomputed with Python's datetime.isocalendar).
const WEEK_DATES: Record<string, string> = {
  "2004-12-31": "2004-W53-5",
  "2005-01-01": "2004-W53-6",
  "2005-01-02": "2004-W53-7",
  "2005-12-31": "2005-W52-6",
  "2006-01-01": "2005-W52-7",
  "2007-01-01": "2007-W01-1",
  "2007-12-30": "2007-W52-7",
  "2007-12-31": "2008-W01-1",
  "2008-01-01": "2008-W01-2",
  "2008-12-28": "2008-W52-7",
  "2008-12-29": "2009-W01-1",
  "2009-12-31": "2009-W53-4",
  "2010-01-01": "2009-W53-5",
  "2010-01-03": "2009-W53-7",
};

// Easter Sundays, Meeus/Jones/Butcher; Easter Mondays 2011-2015 also in the list of bank holidays of the United Kingdom.
const EASTER = [
  "2011-04-24",
  "2012-04-08",
  "2013-03-31",
  "2014-04-20",
  "2015-04-05",
  "2016-03-27",
  "2017-04-16",
  "2018-04-01",
  "2019-04-21",
  "2020-04-12",
  "2021-04-04",
  "2022-04-17",
  "2023-04-09",
  "2024-03-31",
  "2025-04-20",
  "2026-04-05",
  "2027-03-28",
  "2028-04-16",
  "2029-04-01",
  "2030-04-21",
];

describe("days of the week", () => {
  it("are those of ISO week dates, over the turn of years", () => {
    for (const [date, week] of Object.entries(WEEK_DATES)) {
      expect(`${date} ${weekdayOf(dayNumber(date)) + 1}`).toBe(`${date} ${week.slice(-1)}`);
    }
  });

  it("are kept by a weekly rhythm: it steps through the weeks one by one", () => {
    // 2009 had a week 53: from Thursday of W53 of 2004 to that of 2009 there are 5 * 52 + 1 weeks.
    const days = rhythm("week", "2004-12-30", "2009-12-31");
    expect(days.at(-1)).toBe("2009-12-31");
    expect(days).toHaveLength(262);
  });
});

describe("a day that holds no work", () => {
  const { plan } = planFromData({
    format: 1,
    title: "T",
    start: "2011-01-03",
    calendar: "office",
    calendars: {
      office: {
        holidays: EASTER.flatMap((sunday) => [
          isoDate(dayNumber(sunday) - 2),
          isoDate(dayNumber(sunday) + 1),
        ]),
      },
    },
    tasks: [{ id: "a", name: "A", duration: 3 }],
  });
  if (plan === undefined) throw new Error("the plan is a plan");

  it("is moved over Easter, every year: Good Friday and Easter Monday to Tuesday", () => {
    for (const sunday of EASTER) {
      const tuesday = isoDate(dayNumber(sunday) + 2);
      for (const before of [-2, -1, 0, 1, 2]) {
        expect(nextWorkday(plan, isoDate(dayNumber(sunday) + before))).toBe(tuesday);
      }
      const thursday = isoDate(dayNumber(sunday) - 3);
      expect(nextWorkday(plan, thursday)).toBe(thursday);
    }
  });
});
