import { designBuildTest } from "./designBuildTest.ts";
import type { TestModel } from "./testModel.ts";

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface TimeDependentCostAnswer {
  asWritten: number;
  mean: number;
  percentiles: readonly (readonly [p: number, money: number])[];
  /** Money = once + perDay * finish, in every future. */
  once: number;
  perDay: number;
}

/**
 * `designBuildTest` with a team that costs 4,000 a day as long as the plan runs, and 250,000 that time does
 * not touch: every percentile of cost is that of the finish, times 4,000, plus 250,000.
 */
export function timeDependentCost(): TestModel<TimeDependentCostAnswer> {
  const { document } = designBuildTest(1);
  const tasks = (document.tasks as { [key: string]: string }[]).map((task) =>
    task.id === "design" ? { ...task, cost: 250_000 } : task,
  );
  return {
    document: {
      ...document,
      title: "Design, build, test: what the time costs",
      tasks,
      overheads: [{ id: "team", name: "The standing team", perDay: 4000 }],
    },
    known: {
      asWritten: 630_000,
      mean: 250_000 + (4000 * 338) / 3,
      percentiles: [
        [0.1, 633677.187781],
        [0.5, 698287.622809],
        [0.8, 745606.493868],
        [0.9, 770861.987061],
      ],
      once: 250_000,
      perDay: 4000,
    },
    source:
      "NASA Cost Estimating Handbook 4.0 (2015), appendix J, time-dependent and time-independent cost (digest read); estimates of designBuildTest, exact quantiles.",
  };
}
