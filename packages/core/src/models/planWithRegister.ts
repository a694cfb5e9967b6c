import { discreteFive } from "./discreteFive.ts";
import type { TestModel } from "./testModel.ts";

/** Which entries of the register occur. */
export interface PlanWithRegisterState {
  finish: { mean: number; sd: number; percentiles: readonly (readonly [p: number, days: number])[] };
  cost: { mean: number; sd: number; percentiles: readonly (readonly [p: number, money: number])[] };
  /** Chance of day 11, of 320 in money, and of both. */
  finishBy: number;
  budget: number;
  both: number;
}

/** What is known of this model, to check a run against; see its source beside the plan. */
export interface PlanWithRegisterAnswer {
  /** Without the two risks. */
  bare: PlanWithRegisterState;
  /** As the document stands. */
  before: PlanWithRegisterState;
  /** With the response `second-source`, which makes the first risk's chance 0.1 instead of 0.3. */
  after: PlanWithRegisterState;
}

/**
 * The whole chain in one: the five tasks of `discreteFive`, two risks that add days and money, money that
 * runs with time, a date and a sum asked for; then one response taken in. 128 futures, all enumerated.
 *
 * The risks are `late-parts` and `rework`; the response `second-source` is not adopted.
 */
export function planWithRegister(): TestModel<PlanWithRegisterAnswer> {
  const { document } = discreteFive({
    commitment: { finishBy: "2027-03-11", budget: 320, confidence: 0.8 },
    risks: [
      {
        id: "late-parts",
        name: "Parts come late",
        probability: 0.3,
        impacts: [{ tasks: ["d"], delay: 2, cost: 15 }],
        responses: [{ id: "second-source", action: "Order from a second source", probability: 0.1 }],
      },
      {
        id: "rework",
        name: "First sample is refused",
        probability: 0.2,
        impacts: [{ tasks: ["a"], delay: 1, cost: 40 }],
      },
    ],
    overheads: [{ id: "office", name: "Site office", perDay: 10 }],
  });
  const tasks = (document.tasks as { [key: string]: string }[]).map((task) =>
    task.id === "a" ? { ...task, cost: 200 } : task,
  );
  return {
    document: { ...document, title: "Five tasks and a register", tasks },
    known: {
      bare: state([9.96, 1.0919706956, 10, 11, 12], [299.6, 10.9197069558, 300, 310, 320], [0.936, 1, 0.936]),
      before: state(
        [10.565, 1.3557931258, 11, 12, 13],
        [318.15, 25.5682909089, 310, 340, 365],
        [0.75796, 0.60536, 0.56952],
      ),
      after: state(
        [10.235, 1.2452208639, 10, 11, 12],
        [311.85, 23.3173218874, 310, 335, 360],
        [0.85252, 0.74632, 0.70024],
      ),
    },
    source: "Own data; all 128 combinations enumerated by another program (tasks and risks independent).",
  };
}

/** Mean, deviation, P50, P80, P95 of days and of money; chance of the date, the sum, both. */
function state(
  [meanDays, sdDays, ...days]: [number, number, number, number, number],
  [meanMoney, sdMoney, ...money]: [number, number, number, number, number],
  [finishBy, budget, both]: [number, number, number],
): PlanWithRegisterState {
  const levels = [0.5, 0.8, 0.95];
  const pair = (values: number[]) => values.map((value, k) => [levels[k] as number, value] as const);
  return {
    finish: { mean: meanDays, sd: sdDays, percentiles: pair(days) },
    cost: { mean: meanMoney, sd: sdMoney, percentiles: pair(money) },
    finishBy,
    budget,
    both,
  };
}
