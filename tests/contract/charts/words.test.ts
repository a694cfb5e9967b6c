import {
  columnDays,
  finishDate,
  formatChance,
  formatDate,
  formatDays,
  formatMoney,
  formatPercent,
  groupDigits,
  plainName,
  roundSignificant,
  roundToLimits,
  startDate,
} from "@leeway/charts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

/** Day of the week, 0 = Sunday. Source: Zeller (1882), Kalender-Formeln, for the Gregorian calendar; recalled. */
function zeller(year: number, month: number, day: number): number {
  const [m, y] = month < 3 ? [month + 12, year - 1] : [month, year];
  const [k, j] = [y % 100, Math.floor(y / 100)];
  const h = day + Math.floor((13 * (m + 1)) / 5) + k + Math.floor(k / 4) + Math.floor(j / 4) + 5 * j;
  return (h + 6) % 7;
}

// The order "16 November 2027" is that of British English; common practice, no source.
describe("formatDate(iso, style)", () => {
  it.each([
    ["long", "Tuesday 16 November 2027"],
    ["weekday", "Tue 16 Nov 2027"],
    ["weekday-no-year", "Tue 16 Nov"],
    ["short", "16 Nov 2027"],
    ["shortest", "16 Nov"],
  ] as const)("writes %s", (style, text) => expect(formatDate("2027-11-16", style)).toBe(text));

  it("names the weekday of Zeller's congruence", () => {
    const names = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];
    fc.assert(
      fc.property(
        fc.integer({ min: 1583, max: 9999 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 28 }),
        (y, m, d) => {
          const iso = `${String(y).padStart(4, "0")}-${String(m).padStart(2, "0")}-${String(d).padStart(2, "0")}`;
          expect(formatDate(iso, "long").split(" ")[0]).toBe(names[zeller(y, m, d)]);
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  it.each(["2027-02-30", "2027-13-01", "16.11.2027", "", "soon"])("gives %j back as it is", (text) =>
    expect(formatDate(text, "long")).toBe(text),
  );
  it("does not read the years 0 to 99 as 1900 to 1999", () =>
    expect(formatDate("0099-03-01", "short")).toBe("1 Mar 99"));
});

// The rule of the plan document: a start falls on day floor(t), a finish on day ceil(t) - 1.
describe("startDate, finishDate", () => {
  it.each([
    [0, "2027-02-01", "2027-02-01"],
    [0.5, "2027-02-01", "2027-02-01"],
    [1, "2027-02-02", "2027-02-01"],
    [28, "2027-03-01", "2027-02-28"],
    [28.01, "2027-03-01", "2027-03-01"],
  ])("at %s", (at, opens, closes) => {
    expect(startDate("2027-02-01", at)).toBe(opens);
    expect(finishDate("2027-02-01", at)).toBe(closes);
  });
});

describe("formatMoney(value, currency)", () => {
  it.each([
    [655000, "EUR 655,000"],
    [0, "EUR 0"],
    [-12500, "−EUR 12,500"],
    [12.5, "EUR 12.50"],
    [999.999, "EUR 1,000.00"],
    [1234567.8, "EUR 1,234,568"],
    [999_999_999, "EUR 999,999,999"],
    [1_993_000_000, "EUR 1,993,000,000"],
    [2e9, "EUR 2,000,000,000"],
    [2.5e15, "EUR 2,500 trillion"],
    [-0.001, "EUR 0.00"],
    [Number.NaN, "not known"],
    [Number.POSITIVE_INFINITY, "not known"],
  ])("writes %s", (value, text) => expect(formatMoney(value, "EUR")).toBe(text));
  it("signs a gain when asked, and never nought", () => {
    expect(formatMoney(2100, "EUR", true)).toBe("+EUR 2,100");
    expect(formatMoney(-2100, "", true)).toBe("−2,100");
    expect(formatMoney(0, "EUR", true)).toBe("EUR 0");
  });
});

describe("groupDigits(value, decimals)", () => {
  it("keeps every digit: without its commas it reads back", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e15, max: 1e15 }), (n) => {
        expect(Number(groupDigits(n).replaceAll(",", "").replace("−", "-"))).toBe(n);
        expect(groupDigits(n)).toMatch(/^−?\d{1,3}(,\d{3})*$/);
      }),
      { seed: 12, numRuns: 300 },
    );
  });
});

// JCGM 100:2008 (GUM), 7.2.6 (recalled): the last digit of an estimate has the place of its uncertainty.
// At most four digits: a rule of this project.
describe("roundToLimits(value, low, high)", () => {
  it.each([
    [655432, 652000, 659000, 655000],
    [361250.5, 360100.2, 362300.9, 361000],
    [361250.5, 361150, 361351, 361300],
    [598234, 598234, 598234, 598200],
    [-42160, -43000, -41000, -42000],
    [0.4231, 0.41, 0.43, 0.42],
    [655432, 659000, 652000, 655000],
    [40, 10, 900, 40],
    [0, -5, 5, 0],
  ])("rounds %s within %s to %s", (value, low, high, rounded) =>
    expect(roundToLimits(value, low, high)).toBe(rounded),
  );
  it("stays within the limits, widened by half their width", () => {
    const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(number, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (value, half) => {
        const rounded = roundToLimits(value, value - half, value + half);
        const cap = Math.abs(value) * 0.0005; // four digits at the least favourable place
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(Math.max(half, cap) * (1 + 1e-9));
      }),
      { seed: 13, numRuns: 500 },
    );
  });
});

describe("roundSignificant(value, digits)", () => {
  it.each([
    [7340, 2, 7300],
    [-7350, 2, -7400],
    [0.01234, 3, 0.0123],
    [0, 2, 0],
  ])("rounds %s to %s digits", (value, digits, rounded) =>
    expect(roundSignificant(value, digits)).toBe(rounded),
  );
});

describe("formatChance(p)", () => {
  it.each([
    [0, "fewer than 1 in 50"],
    [0.0199, "fewer than 1 in 50"],
    [0.02, "2 %"],
    [0.1, "1 time in 10"],
    [0.74, "74 %"],
    [0.8, "8 times in 10"],
    [0.8049, "8 times in 10"],
    [0.806, "81 %"],
    [0.98, "98 %"],
    [0.981, "more than 49 in 50"],
    [1, "more than 49 in 50"],
    [Number.NaN, "not known"],
  ])("says %s", (p, words) => expect(formatChance(p)).toBe(words));
  it.each([
    [0.03, "fewer than 1 in 20"],
    [0.22, "about 2 times in 10"],
    [0.7, "7 times in 10"],
    [0.97, "more than 19 in 20"],
  ])("says %s in tenths", (p, words) => expect(formatChance(p, "tenths")).toBe(words));
});

describe("formatPercent(share)", () => {
  it.each([
    [0, "0 %"],
    [0.004, "under 1 %"],
    [0.736, "74 %"],
    [0.9951, "over 99 %"],
    [1, "100 %"],
  ])("writes %s", (share, text) => expect(formatPercent(share)).toBe(text));
});

describe("formatDays(value)", () => {
  it.each([
    [9.14, "9.1 working days"],
    [1, "1 working day"],
    [9.97, "10 working days"],
    [41.6, "42 working days"],
    [-0.04, "0 working days"],
    [-2.5, "−2.5 working days"],
  ])("writes %s", (value, text) => expect(formatDays(value)).toBe(text));
});

describe("columnDays(value)", () => {
  it.each([
    [3, "+3.0"],
    [-3.44, "−3.4"],
    [12.6, "+13"],
    [0.04, "0"],
    [-0.05, "−0.1"],
  ])("writes %s", (value, text) => expect(columnDays(value, true)).toBe(text));
});

// Unicode Standard Annex 9 (recalled): text between U+2068 and U+2069 does not reorder what is around it.
describe("plainName(name)", () => {
  it("stays on one line and drops control and direction characters", () =>
    expect(plainName("Dig\n\tthe \u0000 ditch\u202e")).toBe("Dig the ditch"));
  it("keeps a right-to-left name apart", () => expect(plainName("בדיקה")).toBe("\u2068בדיקה\u2069"));
  it("cuts between letters as a reader sees them", () =>
    expect(plainName("e\u0301e\u0301e\u0301", 2)).toBe("e\u0301e\u0301…"));
  it("names what has no name", () => expect(plainName(" \u0007 ")).toBe("(no name)"));
});
