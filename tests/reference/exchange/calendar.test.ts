// Calendar files against RFC 5545 (2009), read back by node-ical and expanded by rrule: two libraries that share no
// code with the writer.
import ical from "node-ical";
import rruleModule from "rrule";
import { describe, expect, it } from "vitest";
import { type CalendarEvent, rhythm, writeCalendar } from "../../../packages/core/src/index.ts";

const { rrulestr } = rruleModule;
const STAMP = "2027-01-01T09:30:00Z";

function daysOf(rule: string, from: string, most = 20): string[] {
  const all = rrulestr(`DTSTART:${from.replaceAll("-", "")}T090000Z\nRRULE:${rule}`).all(
    (_, count) => count < most,
  );
  return all.map((date) => date.toISOString().slice(0, 10));
}
function ruleOf(event: CalendarEvent): string {
  return /^RRULE:(.*)\r$/m.exec(writeCalendar([event], { name: "x", stamp: STAMP }))?.[1] ?? "";
}
interface ReadEvent {
  type: string;
  uid: string;
  start: Date;
  end: Date;
  summary: string;
  description?: string;
  datetype: string;
}
function readBack(text: string): ReadEvent[] {
  const all = Object.values(ical.sync.parseICS(text)) as unknown as ReadEvent[];
  return all.filter(({ type }) => type === "VEVENT");
}
/** A whole day is read as midnight where the test runs. */
function localDay(date: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

describe("the library that expands rules in these tests", () => {
  // RFC 5545, 3.8.5.3, the examples with these names; dates as quoted in public test files (read).
  it.each([
    [
      "Monday of week number 20",
      "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
      "1997-05-12",
      ["1997-05-12", "1998-05-11", "1999-05-17"],
    ],
    [
      "every 20th Monday of the year",
      "FREQ=YEARLY;BYDAY=20MO",
      "1997-05-19",
      ["1997-05-19", "1998-05-18", "1999-05-17"],
    ],
    [
      "every Thursday in March",
      "FREQ=YEARLY;BYMONTH=3;BYDAY=TH",
      "1997-03-13",
      ["1997-03-13", "1997-03-20", "1997-03-27", "1998-03-05", "1998-03-12", "1998-03-19", "1998-03-26"],
    ],
    [
      "week start Monday",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
      "1997-08-05",
      ["1997-08-05", "1997-08-10", "1997-08-19", "1997-08-24"],
    ],
    [
      "week start Sunday",
      "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
      "1997-08-05",
      ["1997-08-05", "1997-08-17", "1997-08-19", "1997-08-31"],
    ],
  ])("has the dates of the RFC: %s", (_name, rule, from, dates) => {
    expect(daysOf(rule, from, dates.length)).toEqual(dates);
  });
});

describe("a rhythm", () => {
  // RFC 5545, 3.8.5.3 "Weekly for 10 occurrences" and "Every other week - forever", dates recalled.
  it("has the dates of the RFC's weekly examples", () => {
    const weekly = ["09-02", "09-09", "09-16", "09-23", "09-30", "10-07", "10-14", "10-21", "10-28", "11-04"];
    expect(rhythm("week", "1997-09-02", "1997-11-10")).toEqual(weekly.map((day) => `1997-${day}`));
    const other = ["09-02", "09-16", "09-30", "10-14", "10-28", "11-11", "11-25", "12-09", "12-23"];
    expect(rhythm("two-weeks", "1997-09-02", "1997-12-31")).toEqual(other.map((day) => `1997-${day}`));
  });

  it.each([
    ["week", "2027-02-03", "week", 1],
    ["two-weeks", "2027-12-28", "week", 2],
    ["month", "2027-01-28", "month", 1],
    ["quarter", "2027-11-05", "month", 3],
  ] as const)("every %s from %s is what its rule says in another library", (every, from, unit, interval) => {
    const days = rhythm(every, from, "2029-06-30");
    const rule = ruleOf({
      uid: "a",
      date: from,
      summary: "S",
      every: { unit, interval, count: days.length },
    });
    expect(daysOf(rule, from, 1000)).toEqual(days);
    expect(days.length).toBeGreaterThan(6);
  });

  // What no rule of the RFC says: a month too short for the day has its last day (common practice, no source).
  it("takes the last day of a month that is too short", () => {
    expect(rhythm("month", "2027-10-31", "2028-03-31")).toEqual([
      "2027-10-31",
      "2027-11-30",
      "2027-12-31",
      "2028-01-31",
      "2028-02-29",
      "2028-03-31",
    ]);
  });
});

describe("writeCalendar", () => {
  const nasty = `${"Commas, semicolons; a \\ backslash,\na line break and \u{1F9F0}".repeat(4)}Überprüfung — 測試`;
  const events: CalendarEvent[] = [
    { uid: "one@leeway", date: "2027-12-31", summary: nasty, description: `${nasty}\u0007` },
    { uid: "two@leeway", date: "2028-02-29", summary: "Leap day", category: "Milestone" },
  ];
  const text = writeCalendar(events, { name: "Plan, the first", stamp: STAMP });

  it("is read back by another library as it was meant", () => {
    const [one, two] = readBack(text);
    expect(one).toMatchObject({ uid: "one@leeway", summary: nasty, description: nasty, datetype: "date" });
    // 3.6.1: the end of an all-day event is the day after, and not part of it.
    expect([localDay(one?.start ?? new Date(0)), localDay(one?.end ?? new Date(0))]).toEqual([
      "2027-12-31",
      "2028-01-01",
    ]);
    expect([localDay(two?.start ?? new Date(0)), localDay(two?.end ?? new Date(0))]).toEqual([
      "2028-02-29",
      "2028-03-01",
    ]);
  });

  it("keeps to the lines of the RFC: CRLF, 75 octets, no character cut in two", () => {
    const bytes = new TextEncoder();
    const lines = text.split("\r\n");
    expect(lines.pop()).toBe("");
    for (const line of lines) {
      expect(bytes.encode(line).length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n]|[\uD800-\uDBFF]$|^ ?[\uDC00-\uDFFF]/);
    }
    expect(lines.some((line) => line.startsWith(" "))).toBe(true);
    expect(text).toContain("DTSTAMP:20270101T093000Z\r\n");
    for (const needed of ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:", "END:VCALENDAR"]) {
      expect(lines.some((line) => line.startsWith(needed))).toBe(true);
    }
  });
});
