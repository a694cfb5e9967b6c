import jStat from "jstat";
import { describe, expect, it } from "vitest";
import { forecastOf, runOf } from "../laws/runPlan.ts";
import { documentOf } from "./page.ts";

/**
 * Plan format 1, `correlations`: the coefficient is the correlation of the standard normal scores behind the draws.
 * Uniform estimates are inverted by a straight line, their scores by another library's normal quantile, so the
 * correlation that was induced can be measured.
 *
 * Plain sampling, 20,000 iterations, seed `together`. A sample correlation has standard error (1 - r^2) / sqrt(n)
 * (normal law, n this large); bands are five of them and 1e-4 wide, so each fails by luck for one seed in 1.7
 * million, and all twenty-five for one in 70,000.
 */
const n = 20_000;
const bandAt = (r: number) => (5 * (1 - r * r)) / Math.sqrt(n) + 1e-4;
const band = bandAt(0);
const uniform = { low: 2, high: 12, shape: "uniform" };
const names = ["a", "b", "c"];
const tasks = Object.fromEntries(names.map((id) => [id, { duration: uniform }]));

function scores(correlations: object, list: Record<string, object> = tasks) {
  const document = documentOf(list, { calendar: "every-day", correlations });
  const run = runOf(document, { iterations: n, seed: "together", design: "plain" });
  if (run === undefined) throw new Error("no run");
  const of = (values: ArrayLike<number>, low: number, width: number) =>
    Array.from(values, (value) => jStat.normal.inv((value - low) / width, 0, 1));
  return new Map([
    ...run.model.tasks.map(({ id }, j): [string, number[]] => [id, of(run.trials.finishes[j] ?? [], 2, 10)]),
    ["cost", of(run.trials.cost, 100, 50)],
  ]);
}

function correlation(found: Map<string, number[]>, left: string, right: string): number {
  const [x = [], y = []] = [found.get(left), found.get(right)];
  const mean = (list: number[]) => list.reduce((sum, value) => sum + value, 0) / list.length;
  const [mx, my] = [mean(x), mean(y)];
  let [xy, xx, yy] = [0, 0, 0];
  x.forEach((value, k) => {
    const other = (y[k] ?? Number.NaN) - my;
    xy += (value - mx) * other;
    xx += (value - mx) ** 2;
    yy += other ** 2;
  });
  return xy / Math.sqrt(xx * yy);
}

describe("`correlations`", () => {
  it.each([0.9, 0.5, -0.4, 1])(
    "induce the coefficient %s between the normal scores; pairs not named 0",
    (coefficient) => {
      const found = scores({ between: ["a", "b"], coefficient });
      expect(Math.abs(correlation(found, "a", "b") - coefficient)).toBeLessThan(bandAt(coefficient));
      expect(Math.abs(correlation(found, "a", "c"))).toBeLessThan(band);
      expect(Math.abs(correlation(found, "b", "c"))).toBeLessThan(band);
    },
  );

  it("leave each draw its own law: the mean of a uniform", () => {
    const found = scores({ between: ["a", "b", "c"], coefficient: 0.7 });
    for (const id of names) {
      const list = found.get(id) ?? [];
      const mean = list.reduce((sum, value) => sum + value, 0) / n;
      // Standard normal scores: mean 0, standard error 0.0071; mean square 1, standard error 0.01.
      expect(Math.abs(mean)).toBeLessThan(band);
      expect(Math.abs(list.reduce((sum, value) => sum + value ** 2, 0) / n - 1)).toBeLessThan(2 * band);
    }
  });

  it("`cost:TASK` for a cost draw", () => {
    const cost = { low: 100, high: 150, shape: "uniform" };
    const list = { ...tasks, a: { duration: uniform, cost } };
    const found = scores({ between: ["cost:a", "b"], coefficient: 0.6 }, list);
    expect(Math.abs(correlation(found, "cost", "b") - 0.6)).toBeLessThan(bandAt(0.6));
    expect(Math.abs(correlation(found, "cost", "a"))).toBeLessThan(band);
  });

  // N. J. Higham (2002), "Computing the nearest correlation matrix - a problem from finance", IMA J. Numer. Anal.
  // 22(3), 329-343: the nearest to [1 1 0; 1 1 1; 0 1 1] has 0.7607, 0.7607 and 0.1573 (recalled).
  it("not positive semi-definite: the nearest correlation matrix replaces it, and the forecast says so", () => {
    const contradiction = [
      { between: ["a", "b"], coefficient: 1 },
      { between: ["b", "c"], coefficient: 1 },
    ];
    const found = scores(contradiction);
    expect(Math.abs(correlation(found, "a", "b") - 0.7607)).toBeLessThan(bandAt(0.7607));
    expect(Math.abs(correlation(found, "b", "c") - 0.7607)).toBeLessThan(bandAt(0.7607));
    expect(Math.abs(correlation(found, "a", "c") - 0.1573)).toBeLessThan(bandAt(0.1573));
    const { warnings } = forecastOf(documentOf(tasks, { correlations: contradiction }), { iterations: 1000 });
    expect(warnings).toHaveLength(1);
    // The largest change of a coefficient: from 1 to 0.7607.
    expect(warnings[0]).toMatch(/correlations .* nearest .*0\.239/);
    const fine = { between: ["a", "b"], coefficient: 0.9 };
    expect(forecastOf(documentOf(tasks, { correlations: fine }), { iterations: 1000 }).warnings).toEqual([]);
  });
});
