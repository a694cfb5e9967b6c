import { type EstimateAbout, estimateCurve, estimateReading } from "@leeway/charts";
import { type RangeEstimate, SHAPES, shapeRules } from "@leeway/core";
import jStat from "jstat";
import { describe, expect, it } from "vitest";
import { newDocument } from "./newDocument.ts";

const document = newDocument();
const about: EstimateAbout = { name: "Dig", unitWords: "working days", of: "takes" };
const range = (
  low: number,
  likely: number,
  high: number,
  more: Partial<RangeEstimate> = {},
): RangeEstimate => ({
  kind: "range",
  low,
  likely,
  high,
  shape: "pert",
  bounds: "extremes",
  unit: "days",
  ...more,
});
const draw = (estimate: RangeEstimate, of = about) => estimateCurve(estimate, of, { document, width: 360 });

// Kotz & van Dorp (2004), Beyond Beta, ch. 1: the triangular law on (a, m, b) has its percentile p at
// a + sqrt(p (b - a)(m - a)) below the mode, b - sqrt((1 - p)(b - a)(b - m)) above it, and the mean (a + m + b) / 3.
describe("estimateReading()", () => {
  it.each([
    [0, 5, 10],
    [4, 6, 19],
    [2, 2, 12],
  ])("reads a triangular estimate of %d, %d, %d exactly", (a, m, b) => {
    const { p10, p90, mean } = estimateReading(range(a, m, b, { shape: "triangular" }), about);
    const up = (p: number) => a + Math.sqrt(p * (b - a) * (m - a));
    const down = (p: number) => b - Math.sqrt((1 - p) * (b - a) * (b - m));
    const at = (p: number) => (p <= (m - a) / (b - a) ? up(p) : down(p));
    expect(p10).toBeCloseTo(at(0.1), 9);
    expect(p90).toBeCloseTo(at(0.9), 9);
    expect(mean).toBeCloseTo((a + m + b) / 3, 9);
  });

  // The beta law with alpha = 1 + 4 (m - a)/(b - a), by another library (its inverse is good to about 3e-8).
  it("reads a pert estimate as the beta law has it", () => {
    const [a, m, b] = [5, 9, 25];
    const alpha = 1 + (4 * (m - a)) / (b - a);
    const beta = 6 - alpha;
    const { p10, half, p90, mean } = estimateReading(range(a, m, b), about);
    for (const [p, value] of [
      [0.1, p10],
      [0.5, half],
      [0.9, p90],
    ] as const)
      expect(value).toBeCloseTo(a + (b - a) * jStat.beta.inv(p, alpha, beta), 5);
    expect(mean).toBeCloseTo((a + 4 * m + b) / 6, 9);
  });

  it("cuts at nothing what takes time, and not what a delay may give back", () => {
    const early = range(0, 1, 10, { bounds: "p10-p90" });
    const cut = estimateReading(early, about);
    const kept = estimateReading(early, { ...about, of: "delays" });
    expect(cut.cut).toBeGreaterThan(0);
    expect(cut.cut).toBeLessThanOrEqual(0.1 + 1e-9);
    expect(kept.cut).toBe(0);
    expect(cut.mean).toBeGreaterThan(kept.mean);
  });
});

describe("estimateCurve()", () => {
  it("says the one-in-ten reading in its title, with as many digits as the range bears", () => {
    // Percentile bounds are the reading itself.
    expect(draw(range(6, 9, 19, { bounds: "p10-p90" })).title).toMatch(
      /^One time in ten it takes less than 6 working days, one in ten more than 19; average \d+ working days$/,
    );
    expect(draw(range(0.5, 0.6, 0.9, { bounds: "p10-p90" })).title).toMatch(
      /less than 0\.5 .* more than 0\.9;/,
    );
    expect(draw(range(1, 2, 4, { bounds: "p10-p90" })).title).toMatch(
      /less than 1 working day, one in ten more than 4;/,
    );
    const delay = { ...about, of: "delays" as const };
    expect(draw(range(5, 8, 20, { bounds: "p10-p90" }), delay).title).toMatch(
      /it delays by less than 5 working days/,
    );
    const cost = { name: "Dig", unitWords: "EUR", of: "costs" as const };
    expect(draw(range(4000, 5000, 9000, { bounds: "p10-p90" }), cost).title).toMatch(
      /costs less than EUR 4,000/,
    );
  });

  it("is drawn for every shape, its mode at an end included", () => {
    const shapes = [
      range(5, 9, 25),
      range(5, 5, 25),
      range(5, 25, 25),
      range(5, 9, 25, { shape: "triangular" }),
      range(5, 9, 25, { bounds: "p5-p95" }),
      ...SHAPES.filter((shape) => !shapeRules[shape].takesLikely).map((shape): RangeEstimate => {
        const { likely: _, ...rest } = range(5, 9, 25, { shape, bounds: "p10-p90" });
        return rest;
      }),
    ];
    for (const estimate of shapes) {
      const { svg, table } = draw(estimate);
      const line = [...svg.querySelectorAll("path")].find(
        (path) =>
          path.getAttribute("stroke-width") === "2" ||
          path.parentElement?.getAttribute("stroke-width") === "2",
      );
      expect(line?.getAttribute("d"), estimate.shape).toMatch(/^M[\d.,L-]+$/);
      expect(svg.outerHTML).not.toMatch(/NaN|Infinity/);
      expect(table.rows.flat().join(" ")).not.toMatch(/NaN|not known/);
    }
  });

  it("a certain value has no curve and says so", () => {
    const figure = estimateCurve({ kind: "fixed", value: 7, unit: "days" }, about, { document });
    expect(figure.title).toBe("It always takes 7 working days");
    expect(figure.svg.textContent).toMatch(/no curve/);
  });
});
