import { movesMoney, palette, sharesDays } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { largestFalls } from "../../../../packages/charts/src/waterfall/largestFalls.ts";
import { newDocument } from "../newDocument.ts";
import { sampleComparison, sampleMoves } from "./sampleComparison.ts";
import { namedShares, sampleExplanation, sampleShares } from "./sampleExplanation.ts";

// Lengths in px against days and money, by proportion, from the figures the samples are made of.

const colours = palette();
const document = newDocument();
const at = (element: Element | undefined, name: string) => Number(element?.getAttribute(name));
const all = (svg: Element, selector: string) => Array.from(svg.querySelectorAll(selector));
/** Pole of a level: the line in its colour that reaches up to its label. */
const pole = (svg: Element, colour: string) =>
  all(svg, `line[stroke="${colour}"]`).sort((a, b) => at(a, "y2") - at(b, "y2"))[0];
const numbers = (element: Element | undefined, name: string) =>
  (element?.getAttribute(name)?.match(/-?[\d.]+/g) ?? []).map(Number);

describe("sharesDays(explanation) as a waterfall", () => {
  const { svg } = sharesDays(sampleExplanation(), { document });
  const bars = all(svg, "rect:not([transform])"); // the diamond is a rect that is turned
  // Named shares by size, then those gathered by size; 56 days from pole to pole.
  const days = [14.2, 11.3, 8.4, 7.6, 6.1, -4.7, 9.9, 3.2];
  const [start, end] = [pole(svg, colours.asWritten), pole(svg, colours.committed)].map((line) =>
    at(line, "x1"),
  );
  const unit = ((end ?? 0) - (start ?? 0)) / 56;

  it("begins at the plan as written and ends at the commitment", () => {
    expect(at(bars[0], "x")).toBeCloseTo(start ?? 0, 1);
    const last = bars[bars.length - 1];
    expect(at(last, "x") + at(last, "width")).toBeCloseTo(end ?? 0, 1);
  });
  it("draws every share as long as it is, from where the one before it ended", () => {
    expect(bars).toHaveLength(days.length);
    let sum = 0;
    bars.forEach((bar, k) => {
      const value = days[k] ?? 0;
      const from = Math.min(sum, sum + value);
      expect(at(bar, "width")).toBeCloseTo(Math.abs(value) * unit, 1);
      expect(at(bar, "x")).toBeCloseTo((start ?? 0) + from * unit, 1);
      sum += value;
    });
  });
  it("draws whiskers of 1.96 standard errors to either side of where a share arrives", () => {
    // Normal law: 95 % lie within 1.96 standard deviations; any table of it, recalled.
    const whiskers = all(svg, `path[stroke="${colours.ink}"]`);
    expect(whiskers).toHaveLength(days.length);
    const [from, , to] = numbers(whiskers[0], "d");
    expect((to ?? 0) - (from ?? 0)).toBeCloseTo(2 * 1.96 * 0.18 * unit, 1);
    expect(((to ?? 0) + (from ?? 0)) / 2).toBeCloseTo((start ?? 0) + 14.2 * unit, 1);
  });
  it("draws no whisker where shares are exact", () => {
    const exact = sampleShares.map((share) => ({ ...share, error: { workingDays: 0, money: 0 } }));
    expect(all(sharesDays(sampleExplanation(exact), { document }).svg, "path")).toHaveLength(0);
  });
  it("paints events of the register, ranges and limited people each in its own way", () => {
    const fills = bars.map((bar) => bar.getAttribute("fill"));
    const { register, rangeCore, paper } = colours;
    expect(fills).toEqual([rangeCore, register, rangeCore, paper, register, register, rangeCore, register]);
  });
});

describe("movesMoney(comparison) as a waterfall", () => {
  it("runs from the earlier commitment to the present one, to the left where it falls", () => {
    const fallen = sampleComparison(sampleMoves.map((move) => ({ ...move, money: -Math.abs(move.money) })));
    const { svg } = movesMoney(fallen, { document });
    const [before, now] = [pole(svg, colours.inkQuiet), pole(svg, colours.committed)].map((line) =>
      at(line, "x1"),
    );
    expect(now ?? 0).toBeLessThan(before ?? 0);
    const [first] = all(svg, "rect");
    expect(at(first, "x") + at(first, "width")).toBeCloseTo(before ?? 0, 1);
    // 14,300 of 4200 + 900 + 14,300 + 7600 + 3100 = 30,100
    expect(at(first, "width") / ((before ?? 0) - (now ?? 0))).toBeCloseTo(14_300 / 30_100, 2);
  });
});

describe("largestFalls(falls, least, most)", () => {
  const falls = namedShares(
    Array.from({ length: 30 }, (_, k) => `n${k}`),
    (k) => (k % 2 === 0 ? 1 : -0.5) * (k + 1),
  ).map(({ id, name, workingDays, error }) => ({
    id,
    name,
    word: "",
    tint: "range" as const,
    value: workingDays,
    error: error.workingDays,
  }));
  const sum = (list: readonly { value: number }[]) => list.reduce((total, each) => total + each.value, 0);

  it("keeps the sum, whatever it gathers", () => {
    for (const most of [1, 5, 14, 29, 30, 40])
      expect(sum(largestFalls(falls, 0.05, most))).toBeCloseTo(sum(falls), 9);
  });
  it("gathers no lone step, which could as well be shown", () => {
    expect(largestFalls(falls, 0.05, 29).map((fall) => fall.id)).not.toContain("smaller");
    expect(largestFalls(falls, 0.05, 28)).toHaveLength(29);
  });
  it("adds errors of what it gathers as those of independent things", () => {
    const smaller = largestFalls(falls, 0.05, 14).find((fall) => fall.id === "smaller");
    expect(smaller?.error).toBeCloseTo(0.18 * Math.sqrt(16), 9); // 16 steps of 0.18 each
  });
  it("drops what shows no digit when it comes to nothing, and keeps it when it does not", () => {
    const dust = (value: number) =>
      falls.slice(0, 2).concat(falls.slice(2, 12).map((fall) => ({ ...fall, value })));
    expect(largestFalls(dust(0.001), 0.05)).toHaveLength(2);
    expect(largestFalls(dust(0.04), 0.05).map((fall) => fall.name)).toContain("10 smaller ones");
  });
});
