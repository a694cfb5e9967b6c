import type { TestModel } from "./testModel.ts";

/** Standard normal quantile of 0.9: what makes a normal estimate's P10 and P90 out of its mean and deviation. */
const z90 = 1.2815515655446004;

/** Two strands of normal length that meet. */
export interface TwoNormals {
  mean: readonly [number, number];
  sd: readonly [number, number];
  correlation: number;
}

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface TwoNormalsAnswer {
  /** Of the later of the two. */
  mean: number;
  sd: number;
  /** Chance that the first is the later one: its share of futures on the critical path. */
  firstCritical: number;
}

/**
 * Two tasks with normal durations side by side, correlated or not: the finish is the greater of the two.
 * Means well above zero, or durations would be cut there.
 *
 * Clark's formulas, with a^2 = s1^2 + s2^2 - 2 r s1 s2 and d = (m1 - m2) / a:
 * E = m1 Phi(d) + m2 Phi(-d) + a phi(d) and
 * E2 = (m1^2 + s1^2) Phi(d) + (m2^2 + s2^2) Phi(-d) + (m1 + m2) a phi(d).
 *
 * @param normalCdf  Phi, handed in so that the answer does not rest on the code it is to check.
 */
export function twoNormals(
  { mean, sd, correlation }: TwoNormals,
  normalCdf: (z: number) => number,
): TestModel<TwoNormalsAnswer> {
  const a = Math.sqrt(sd[0] ** 2 + sd[1] ** 2 - 2 * correlation * sd[0] * sd[1]);
  const d = (mean[0] - mean[1]) / a;
  const density = Math.exp((-d * d) / 2) / Math.sqrt(2 * Math.PI);
  const first = normalCdf(d);
  const second = normalCdf(-d);
  const greatest = mean[0] * first + mean[1] * second + a * density;
  const square =
    (mean[0] ** 2 + sd[0] ** 2) * first +
    (mean[1] ** 2 + sd[1] ** 2) * second +
    (mean[0] + mean[1]) * a * density;
  const task = (id: string, k: 0 | 1) => ({
    id,
    name: `Path ${k + 1}`,
    duration: { low: mean[k] - z90 * sd[k], high: mean[k] + z90 * sd[k], bounds: "p10-p90", shape: "normal" },
  });
  return {
    document: {
      format: 1,
      title: "Two normal paths",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [task("one", 0), task("two", 1)],
      ...(correlation === 0
        ? {}
        : { correlations: [{ between: ["one", "two"], coefficient: correlation, cause: "Given." }] }),
    },
    known: { mean: greatest, sd: Math.sqrt(square - greatest ** 2), firstCritical: first },
    source:
      "Clark, The greatest of a finite set of random variables, Operations Research 9(2), 1961, 145-162: formulas recalled, checked by quadrature.",
  };
}
