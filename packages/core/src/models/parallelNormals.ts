import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface ParallelNormalsAnswer {
  mean: number;
  sd: number;
  p50: number;
  p80: number;
  /** Chance that all paths keep their own P50, and their own P80. */
  allAtP50: number;
  allAtP80: number;
}

/** Of the greatest of n standard normal values: mean, standard deviation, median, P80. */
const greatest: Record<2 | 3 | 4, readonly [number, number, number, number]> = {
  2: [0.5641895835, 0.8256452712, 0.5449521356, 1.250421491],
  3: [0.8462843753, 0.7479754032, 0.8193286198, 1.4633762031],
  4: [1.029375373, 0.7012240989, 0.9981488825, 1.6048956002],
};

/**
 * The same normal path n times side by side: a mean of 100 days, a standard deviation of 10, no correlation.
 * The more paths meet, the later the finish, though each alone is as likely as before to keep its date.
 */
export function parallelNormals(n: 2 | 3 | 4): TestModel<ParallelNormalsAnswer> {
  const [mean, sd, p50, p80] = greatest[n];
  const z90 = 1.2815515655446004;
  return {
    document: {
      format: 1,
      title: `${n} equal paths`,
      start: "2027-03-01",
      calendar: "every-day",
      estimates: { shape: "normal", bounds: "p10-p90" },
      tasks: Array.from({ length: n }, (_, k) => ({
        id: `path-${k + 1}`,
        name: `Path ${k + 1}`,
        duration: { low: 100 - 10 * z90, high: 100 + 10 * z90 },
      })),
    },
    known: {
      mean: 100 + 10 * mean,
      sd: 10 * sd,
      p50: 100 + 10 * p50,
      p80: 100 + 10 * p80,
      allAtP50: 0.5 ** n,
      allAtP80: 0.8 ** n,
    },
    source:
      "Expected values of normal order statistics: Tippett (1925), Teichroew (1956), recalled (0.5642, 0.8463, 1.0294); recomputed by numerical integration.",
  };
}
