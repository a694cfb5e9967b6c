import { palette } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { contrast, difference, lab, linear, seen, visions } from "./colour.ts";

const roles = ["ink", "committed", "asWritten", "register"] as const;
const pairs = roles.flatMap((a, k) => roles.slice(k + 1).map((b) => [a, b] as const));

// Two published anchors for the arithmetic itself, both recalled: black on white is 21 to 1, the highest
// ratio WCAG 2.2 knows; #767676 is known as the lightest grey that still makes 4.5 to 1 on white.
describe("colour arithmetic", () => {
  it("contrast(a, b) matches WCAG 2.2", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
    expect(contrast("#767676", "#ffffff")).toBeGreaterThanOrEqual(4.5);
    expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
  });
  it("lab(white) is L* = 100 without colour", () => {
    const [l, a, b] = lab(linear("#ffffff"));
    expect(l).toBeCloseTo(100, 4);
    expect(Math.hypot(a, b)).toBeLessThan(0.02);
  });
  it.each(Object.entries(visions))("%s leaves white white", (_, matrix) => {
    expect(difference(seen(matrix, [1, 1, 1]), [1, 1, 1])).toBeLessThan(0.01);
  });
});

describe.each(["light", "dark"] as const)("palette(%s)", (theme) => {
  const colours = palette(theme);

  // WCAG 2.2, success criterion 1.4.3 (contrast, minimum): 4.5 to 1 for text of ordinary size.
  it.each(["ink", "inkQuiet", "committed", "asWritten", "register"] as const)("%s is text", (role) => {
    expect(contrast(colours[role], colours.paper)).toBeGreaterThanOrEqual(4.5);
  });

  // WCAG 2.2, success criterion 1.4.11 (non-text contrast): 3 to 1 for graphics that carry meaning. The ranges
  // carry it by their edge, the levels also where they cross a range.
  it("rangeEdge is seen on the paper", () => {
    expect(contrast(colours.rangeEdge, colours.paper)).toBeGreaterThanOrEqual(3);
  });
  it.each(["ink", "committed", "asWritten"] as const)("%s is seen on a range", (role) => {
    expect(contrast(colours[role], colours.rangeCore)).toBeGreaterThanOrEqual(3);
    expect(contrast(colours[role], colours.rangeWide)).toBeGreaterThanOrEqual(3);
  });

  // Thresholds: common practice, no source. A difference of 2.3 in L*a*b* is just noticeable; ten is told apart
  // at a glance, and every role differs in dash or shape besides.
  it.each(pairs)("%s and %s differ in grey print", (a, b) => {
    const [p, q] = [lab(linear(colours[a])), lab(linear(colours[b]))];
    expect(Math.abs(p[0] - q[0])).toBeGreaterThanOrEqual(10);
  });
  it.each(pairs.flatMap(([a, b]) => Object.keys(visions).map((vision) => [a, b, vision] as const)))(
    "%s and %s differ with %s",
    (a, b, vision) => {
      const matrix = visions[vision] ?? [];
      const distance = difference(seen(matrix, linear(colours[a])), seen(matrix, linear(colours[b])));
      expect(distance).toBeGreaterThanOrEqual(12);
    },
  );
  it("the tints step away from the paper", () => {
    const steps = [colours.paper, colours.rangeWide, colours.rangeCore, colours.rangeEdge].map(
      (each) => lab(linear(each))[0],
    );
    for (let k = 1; k < steps.length; k++)
      expect(Math.abs((steps[k] ?? 0) - (steps[k - 1] ?? 0))).toBeGreaterThanOrEqual(5);
  });
});
