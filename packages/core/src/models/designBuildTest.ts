import type { KnownPercentile, PlanData, TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface DesignBuildTestAnswer {
  /** Every duration at its most likely value. */
  asWritten: number;
  mean: number;
  sd: number;
  /** Chance of finishing by then. */
  asWrittenChance: number;
  percentiles: readonly KnownPercentile[];
}

const onePath: DesignBuildTestAnswer = {
  asWritten: 95,
  mean: 338 / 3,
  sd: 13.1740485636,
  asWrittenChance: 0.0861829454,
  percentiles: [
    [0.05, 92.0377204473, 0.861493],
    [0.1, 95.9192969452, 0.764157],
    [0.5, 112.0719057022, 0.685385],
    [0.7, 119.3795741088, 0.746609],
    [0.8, 123.9016234669, 0.818852],
    [0.9, 130.2154967653, 0.979839],
    [0.95, 135.392211949, 1.195555],
  ],
};

const twoPaths: DesignBuildTestAnswer = {
  asWritten: 95,
  mean: 120.1303803916,
  sd: 11.4222680009,
  asWrittenChance: 0.0074275001,
  percentiles: [
    [0.05, 102.0936348006, 0.812505],
    [0.1, 105.6831432596, 0.693163],
    [0.5, 119.670770522, 0.582976],
    [0.7, 125.8985633588, 0.637812],
    [0.8, 129.7692630848, 0.702535],
    [0.9, 135.213449389, 0.850103],
    [0.95, 139.733798966, 1.051001],
  ],
};

/**
 * Design, build and test in a row, skewed triangular durations in days; with two paths, the same three once
 * more beside them, and the plan done when both are.
 *
 * The most likely durations add to 95 days, which one path keeps in 8.6 % of futures and two in 0.7 %.
 */
export function designBuildTest(paths: 1 | 2 = 1): TestModel<DesignBuildTestAnswer> {
  const chain = (suffix: string): PlanData[] => [
    { id: `design${suffix}`, name: "Design", duration: [20, 30, 60] },
    { id: `build${suffix}`, name: "Build", duration: [30, 40, 65], after: `design${suffix}` },
    { id: `test${suffix}`, name: "Test", duration: [18, 25, 50], after: `build${suffix}` },
  ];
  return {
    document: {
      format: 1,
      title: "Design, build, test",
      start: "2027-03-01",
      calendar: "every-day",
      estimates: { shape: "triangular" },
      tasks: paths === 1 ? chain("") : [...chain(""), ...chain("-2")],
    },
    known: paths === 1 ? onePath : twoPaths,
    source:
      "Hulett, Advanced Project Schedule Risk Analysis (2001), slides 5-7: estimates and the 95 days read. Answers exact: piecewise polynomials in rational arithmetic, checked against 4,000,000 draws.",
  };
}
