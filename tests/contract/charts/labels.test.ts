import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangeDots } from "../../../packages/charts/src/dots/arrangeDots.ts";
import { fitText, wrapEvenly, wrapText } from "../../../packages/charts/src/draw/fitText.ts";
import { textWidth } from "../../../packages/charts/src/draw/textWidth.ts";
import { placeAlong } from "../../../packages/charts/src/labels/placeAlong.ts";
import { placeFlags } from "../../../packages/charts/src/labels/placeFlags.ts";
import { fitScale } from "../../../packages/charts/src/tornado/fitScale.ts";

const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("placeAlong(wishes, min, max, gap)", () => {
  const wishes = fc.array(fc.record({ at: finite(-50, 350), size: finite(5, 40) }), { maxLength: 6 });

  it("leaves no overlap, keeps within its limits and keeps the order", () => {
    fc.assert(
      fc.property(wishes, (items) => {
        const centres = placeAlong(items, 0, 300, 4);
        if (centres === undefined) throw new Error("six labels of 40 and their gaps fit in 300");
        const sorted = items
          .map((item, k) => ({ ...item, c: centres[k] ?? Number.NaN, k }))
          .sort((a, b) => a.at - b.at || a.k - b.k);
        sorted.forEach((item, k) => {
          expect(item.c - item.size / 2).toBeGreaterThanOrEqual(-1e-6);
          expect(item.c + item.size / 2).toBeLessThanOrEqual(300 + 1e-6);
          const before = sorted[k - 1];
          if (before !== undefined)
            expect(item.c - before.c).toBeGreaterThanOrEqual((item.size + before.size) / 2 + 4 - 1e-6);
        });
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it("moves no more than any placement of an exhaustive search", () => {
    // Every placement of three labels on a grid of 2 px: none may have a smaller sum of squares.
    const items = [
      { at: 40, size: 20 },
      { at: 44, size: 10 },
      { at: 58, size: 30 },
    ];
    const cost = (c: readonly number[]) =>
      c.reduce((sum, each, k) => sum + (each - (items[k]?.at ?? 0)) ** 2, 0);
    let least = Number.POSITIVE_INFINITY;
    for (let a = 10; a <= 90; a += 1)
      for (let b = a + 19; b <= 95; b += 1)
        for (let c = b + 24; c <= 85; c += 1) least = Math.min(least, cost([a, b, c]));
    const placed = placeAlong(items, 0, 100, 4) ?? [];
    expect(cost(placed)).toBeLessThanOrEqual(least + 1e-9);
    expect(cost(placed)).toBeGreaterThan(least - 10);
  });

  it("leaves labels that do not touch where they are", () =>
    expect(
      placeAlong(
        [
          { at: 20, size: 10 },
          { at: 80, size: 10 },
        ],
        0,
        100,
      ),
    ).toEqual([20, 80]));
  it("says when they do not fit", () =>
    expect(
      placeAlong(
        [
          { at: 5, size: 60 },
          { at: 5, size: 60 },
        ],
        0,
        100,
      ),
    ).toBeUndefined());
});

describe("placeFlags(flags, min, max)", () => {
  const crowd = fc.array(fc.record({ at: finite(20, 380), width: finite(60, 120) }), {
    minLength: 1,
    maxLength: 4,
  });

  it("leaves no overlap, and no pole through a label, on a drawing of 400 px", () => {
    fc.assert(
      fc.property(crowd, (flags) => {
        const placed = placeFlags(flags, 0, 400);
        expect(placed).toHaveLength(flags.length);
        placed.forEach((p, i) => {
          const flag = flags[i] ?? { at: 0, width: 0 };
          expect(p.from).toBeGreaterThanOrEqual(0);
          expect(p.from + flag.width).toBeLessThanOrEqual(400 + 1e-9);
          placed.forEach((q, j) => {
            const other = flags[j] ?? { at: 0, width: 0 };
            if (i === j) return;
            const apart = p.from + flag.width <= q.from || q.from + other.width <= p.from;
            expect(p.row !== q.row || apart).toBe(true);
            // The pole of j rises to its own row, alongside its label or to the foot of it.
            const passes = q.side === "over" ? q.row > p.row : q.row >= p.row;
            const through = passes && other.at > p.from && other.at < p.from + flag.width;
            expect(through).toBe(false);
          });
        });
      }),
      { seed: 22, numRuns: 200 },
    );
  });
  it("puts labels with room for all on one row", () =>
    expect(
      placeFlags(
        [
          { at: 10, width: 80 },
          { at: 200, width: 80 },
        ],
        0,
        400,
      ).map((p) => p.row),
    ).toEqual([0, 0]));
  it("has a place for each of four labels on one pole", () => {
    const four = placeFlags(
      Array.from({ length: 4 }, () => ({ at: 200, width: 90 })),
      0,
      400,
    );
    expect(new Set(four.map((p) => `${p.row}${p.side}`)).size).toBe(4);
  });
});

describe("fitScale(bars, left, right)", () => {
  it("keeps every bar and its labels inside, and is as wide as it can be", () => {
    const bars = fc.array(
      fc.record({ from: finite(-50, 0), to: finite(0, 50), before: finite(0, 60), after: finite(0, 60) }),
      { minLength: 1, maxLength: 8 },
    );
    fc.assert(
      fc.property(bars, (rows) => {
        fc.pre(rows.some((row) => row.to - row.from > 1e-3));
        const scale = fitScale(rows, 10, 400);
        let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
        for (const row of rows) {
          first = Math.min(first, scale(row.from) - row.before);
          last = Math.max(last, scale(row.to) + row.after);
        }
        // Tight at both ends: nothing is left over, nothing sticks out.
        expect(first).toBeCloseTo(10, 6);
        expect(last).toBeCloseTo(400, 6);
      }),
      { seed: 23, numRuns: 200 },
    );
  });
});

describe("arrangeDots(values, anchor, from, to, width, height)", () => {
  it("keeps 50 dots apart, inside, and on their own side of the anchor", () => {
    const values = fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 50, maxLength: 50 });
    fc.assert(
      fc.property(values, fc.integer({ min: 0, max: 900 }), finite(300, 900), (days, anchor, width) => {
        days.sort((a, b) => a - b);
        const made = arrangeDots(days, anchor, days[0] ?? 0, days[49] ?? 1, width, 220);
        const anchorX = ((anchor - made.from) / (made.to - made.from)) * width;
        expect(made.height).toBeLessThanOrEqual(220 + 1e-9);
        made.dots.forEach((dot, k) => {
          expect(dot.x - made.pitch / 2).toBeGreaterThanOrEqual(-1e-6);
          expect(dot.x + made.pitch / 2).toBeLessThanOrEqual(width + 1e-6);
          if ((days[k] ?? 0) <= anchor) expect(dot.x).toBeLessThan(anchorX);
          else expect(dot.x).toBeGreaterThan(anchorX);
          for (const other of made.dots.slice(0, k))
            expect(Math.hypot(dot.x - other.x, dot.y - other.y)).toBeGreaterThanOrEqual(made.pitch - 1e-6);
        });
      }),
      { seed: 24, numRuns: 60 },
    );
  });
});

describe("wrapText, wrapEvenly, fitText", () => {
  it("no line is wider than asked, and no word is lost while there are lines", () => {
    const sentence = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 25 });
    fc.assert(
      fc.property(sentence, finite(120, 500), (words, width) => {
        for (const wrap of [wrapText, wrapEvenly]) {
          const lines = wrap(words.join(" "), width, 14, 99);
          for (const line of lines) expect(textWidth(line, 14)).toBeLessThanOrEqual(width);
          expect(lines.join(" ")).toBe(words.join(" "));
        }
      }),
      { seed: 25, numRuns: 150 },
    );
  });
  it("keeps a sum with its currency and a figure with its unit", () => {
    const lines = wrapText("costs at most EUR 655,000 in 80 % of all futures by 16 Nov 2027", 90, 14, 99);
    expect(lines.some((line) => line.includes("EUR\u00a0655,000"))).toBe(true);
    expect(lines.some((line) => line.includes("80\u00a0%"))).toBe(true);
    expect(lines.some((line) => line.includes("16\u00a0Nov"))).toBe(true);
  });
  it("cuts a name of 100,000 letters at once", () => {
    const cut = fitText("x".repeat(100_000), 80, 13);
    expect(cut.endsWith("…")).toBe(true);
    expect(textWidth(cut, 13)).toBeLessThanOrEqual(80);
  });
});
