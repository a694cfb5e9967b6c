// How late a task may start before the finish moves: the backward pass against the forward pass, which is asked again
// with the task held back by a little less than its slack, and by a little more.
import { expect, it } from "vitest";
import { workAt } from "../../../packages/core/src/calendar/workCalendar.ts";
import { fillLateRows } from "../../../packages/core/src/explain/paths/lateRows.ts";
import type { Placed } from "../../../packages/core/src/explain/paths/placed.ts";
import { slackOf } from "../../../packages/core/src/explain/paths/slackOf.ts";
import { type Block, newBlock } from "../../../packages/core/src/simulate/block.ts";
import { markFinish } from "../../../packages/core/src/simulate/critical.ts";
import type { ModelTask } from "../../../packages/core/src/simulate/model.ts";
import { place } from "../../../packages/core/src/simulate/place.ts";
import type { RandomPlanOptions } from "../../oracle/randomPlan.ts";
import { placedPlans } from "./placedPlans.ts";

const step = 1e-6;

/** The plan's finish in iteration k when task j may not start before a moment. */
function finishWith(
  { model, block, planned }: Placed,
  one: Block,
  j: number,
  k: number,
  notBefore: number,
): number {
  const tasks = [...model.tasks];
  tasks[j] = { ...(tasks[j] as ModelTask), notBefore };
  const held = { ...model, tasks };
  for (const [from, to] of [
    [block.duration, one.duration],
    [block.draws, one.draws],
    [block.wait, one.wait],
  ] as const) {
    for (const [at, row] of from.entries()) if (row !== undefined) to[at]?.set(row.subarray(k, k + 1));
  }
  for (const [at, row] of block.needed.entries()) {
    if (row !== undefined) one.needed[at]?.set(row.subarray(k, k + 1));
  }
  place(held, one, planned, undefined);
  markFinish(held, one);
  return one.planFinish[0] as number;
}

/** The first moment that lies `slack` working days of the task's calendar after its start. */
function momentAfter({ calendar }: ModelTask, start: number, slack: number): number {
  const target = workAt(calendar, start) + slack;
  let low = start;
  let high = start + 1;
  while (workAt(calendar, high) < target) high += 1;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (workAt(calendar, middle) < target) low = middle;
    else high = middle;
  }
  return high;
}

const families: [string, number, RandomPlanOptions][] = [
  ["one calendar, finish-to-start", 40, { people: false, calendars: false, links: false, progress: false }],
  ["one calendar, every link and lag", 40, { people: false, calendars: false, progress: false }],
  ["mixed calendars, every link and lag", 60, { people: false, progress: false }],
  ["people without limits, progress", 40, { capacity: false }],
];

it.each(families)(
  "less than the slack leaves the finish where it is, more moves it: %s",
  (_, count, options) => {
    const wrong: unknown[] = [];
    let asked = 0;
    for (const { seed, placed } of placedPlans(1, count, options, 6)) {
      const { model, block } = placed;
      const one = newBlock(model, 1);
      const rows = model.tasks.map(() => new Float64Array(block.n));
      fillLateRows(placed, rows);
      model.tasks.forEach((task, j) => {
        if (task.progress !== undefined) return;
        for (let k = 0; k < block.n; k++) {
          if (block.needed[j]?.[k] === 0 || (block.wait[j]?.[k] ?? 0) > 0) continue;
          const slack = slackOf(placed, j, k, rows[j] as Float64Array);
          const start = block.start[j]?.[k] as number;
          const finish = block.planFinish[k] as number;
          const less = Math.min(slack, 500) - step;
          if (
            less > 0 &&
            finishWith(placed, one, j, k, momentAfter(task, start, less)) > finish + step / 10
          ) {
            wrong.push([seed, task.id, k, "moved at less than", slack]);
          }
          if (
            slack < 500 &&
            finishWith(placed, one, j, k, momentAfter(task, start, slack + step)) <= finish + step / 10
          ) {
            wrong.push([seed, task.id, k, "stood at more than", slack]);
          }
          asked++;
        }
      });
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(asked).toBeGreaterThan(500);
  },
);
