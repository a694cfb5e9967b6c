/**
 * The trade's indices on a network small enough to write down every future: two possible durations each, 32 futures.
 *
 * Data our own; all combinations enumerated by another program, in the spirit of Van Slyke (1963) and MacCrimmon &
 * Ryavec (1964). Indices: criticality; significance E[d / (d + slack) * T / E[T]] (Williams 1992); cruciality; schedule
 * sensitivity. Definitions read in part (Vanhoucke, Measuring Time, 2010, as told on
 * https://www.pmknowledgecenter.com/node/134) and recalled. Ties: both paths critical.
 */
import { compile, drivingPaths, planFromData } from "@leeway/core";
import { describe, expect, it } from "vitest";
import {
  addToIndexSums,
  newIndexSums,
  type TaskSums,
} from "../../../packages/core/src/explain/paths/indexSums.ts";
import { indicesOf } from "../../../packages/core/src/explain/paths/indicesOf.ts";
import { fillLateRows } from "../../../packages/core/src/explain/paths/lateRows.ts";
import {
  countPaths,
  mostFrequent,
  type PathCounts,
} from "../../../packages/core/src/explain/paths/pathCounts.ts";
import { placedOf } from "../../../packages/core/src/explain/paths/placed.ts";
import { discreteFive } from "../../../packages/core/src/models/index.ts";
import { newBlock } from "../../../packages/core/src/simulate/block.ts";
import { markMoving } from "../../../packages/core/src/simulate/critical.ts";
import type { Model } from "../../../packages/core/src/simulate/model.ts";
import { place } from "../../../packages/core/src/simulate/place.ts";
import { realise } from "../../../packages/core/src/simulate/realise.ts";

const known = {
  a: [0.55, 0.8685090361, 0.4762032554, 0.5036765201],
  b: [0.55, 0.8813721553, 0.5035932609, 0.4616271558],
  c: [0.34, 0.6774598394, 0.3476933142, 0.4576092651],
  d: [0.76, 0.9281726908, 0.3022059121, 0.3479946866],
  e: [1, 1, 0.3663101964, 0.3663101964],
} as const;

const plan = planFromData(discreteFive().document).plan;
if (plan === undefined) throw new Error("the model is no plan");
const model = compile(plan);

/**
 * Durations of all 32 futures, each as often as its chance asks for among 1,000: chances are tenths, three of them
 * halves, so that every product is a whole number of thousandths.
 */
function enumerated(of: Model): Float64Array[] {
  const rows = of.tasks.map(() => new Float64Array(1000));
  let combinations: { values: number[]; chance: number }[] = [{ values: [], chance: 1 }];
  for (const slot of of.slots) {
    const { estimate } = slot;
    if (estimate.kind !== "outcomes") throw new Error(`${slot.key} has no outcomes`);
    combinations = combinations.flatMap(({ values, chance }) =>
      estimate.outcomes.map((each) => ({ values: [...values, each.value], chance: chance * each.chance })),
    );
  }
  let k = 0;
  for (const { values, chance } of combinations) {
    for (let times = Math.round(1000 * chance); times > 0; times--, k++) {
      values.forEach((value, s) => {
        (rows[s] as Float64Array)[k] = value;
      });
    }
  }
  expect(k).toBe(1000);
  return rows;
}

describe("indices of five tasks, every future in its proportion", () => {
  const block = newBlock(model, 1000);
  enumerated(model).forEach((row, s) => {
    block.draws[s]?.set(row);
  });
  realise(model, block);
  place(model, block, undefined, undefined);
  markMoving(model, block, false);
  const placed = placedOf(model, block, undefined);
  const late = model.tasks.map(() => new Float64Array(1000));
  fillLateRows(placed, late);

  // The source gives ten decimals.
  it.each(Object.entries(known))("are exact for %s", (id, expected) => {
    const sums = newIndexSums(model.tasks.length);
    addToIndexSums(sums, placed, late);
    const j = model.tasks.findIndex((task) => task.id === id);
    const { criticality, significance, cruciality, scheduleSensitivity } = indicesOf(
      sums,
      sums.tasks[j] as TaskSums,
    );
    const ours = [criticality, significance, cruciality, scheduleSensitivity];
    ours.forEach((value, at) => {
      expect(Math.abs(value - (expected[at] as number))).toBeLessThan(1e-9);
    });
  });

  it("are the same added up in unequal parts", () => {
    const whole = newIndexSums(model.tasks.length);
    addToIndexSums(whole, placed, late);
    const parts = newIndexSums(model.tasks.length);
    for (const [from, to] of [
      [0, 1],
      [1, 700],
      [700, 1000],
    ] as const) {
      const cut = <T extends Float64Array | Uint8Array>(rows: T[]) =>
        rows.map((row) => row.subarray(from, to) as T);
      const part = {
        ...block,
        n: to - from,
        duration: cut(block.duration),
        start: cut(block.start),
        finish: cut(block.finish),
        pushed: cut(block.pushed),
        planFinish: block.planFinish.subarray(from, to),
      };
      addToIndexSums(parts, { ...placed, block: part }, cut(late));
    }
    model.tasks.forEach((_, j) => {
      const a = indicesOf(whole, whole.tasks[j] as TaskSums);
      const b = indicesOf(parts, parts.tasks[j] as TaskSums);
      for (const key of ["criticality", "significance", "cruciality", "scheduleSensitivity"] as const) {
        expect(Math.abs(a[key] - b[key])).toBeLessThan(1e-12);
      }
    });
  });

  // Three ways through: A-C-E, A-D-E and B-D-E. By hand, from the same 32 futures: which of them is the longest. A
  // tie goes to the predecessor whose id comes first.
  it("counts each future's longest way as its path", () => {
    const counts: PathCounts = new Map();
    countPaths(placed, counts);
    const byHand = new Map<string, number>();
    for (let k = 0; k < 1000; k++) {
      const [a, b, c, d] = model.tasks.map((_, j) => block.duration[j]?.[k] as number) as [
        number,
        number,
        number,
        number,
      ];
      const way = a + c >= Math.max(a, b) + d ? "a,c,e" : a >= b ? "a,d,e" : "b,d,e";
      byHand.set(way, (byHand.get(way) ?? 0) + 1);
    }
    const ours = new Map(
      mostFrequent(counts, 9).map(({ tasks, count }) => [tasks.map((j) => model.tasks[j]?.id).join(), count]),
    );
    expect(ours).toEqual(byHand);
    expect(byHand.size).toBe(3);
  });
});

describe("indices of five tasks, sampled", () => {
  const n = 10_000;
  const { paths } = drivingPaths(plan, { iterations: n, design: "plain" });

  // Four standard errors: of a share sqrt(p (1 - p) / n) at most 0.005; a correlation's is at most 0.01; of the others
  // the spread of each term is below 1.
  it.each(Object.entries(known))("are near for %s", (id, expected) => {
    const task = paths?.tasks.find((each) => each.id === id);
    const ours = [
      task?.criticality,
      task?.significance,
      task?.cruciality,
      task?.scheduleSensitivity,
    ] as number[];
    ours.forEach((value, at) => {
      expect(Math.abs(value - (expected[at] as number))).toBeLessThan(at === 2 ? 0.04 : 0.02);
    });
  });

  it("has three paths whose shares add up to 1", () => {
    expect(paths?.different).toBe(3);
    const shares = paths?.paths.map(({ share }) => share) ?? [];
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
});
