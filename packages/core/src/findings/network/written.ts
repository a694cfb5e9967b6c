import { fillLateRows } from "../../explain/paths/lateRows.ts";
import { placedOf } from "../../explain/paths/placed.ts";
import { slackOf } from "../../explain/paths/slackOf.ts";
import type { Plan } from "../../plan/types.ts";
import { type AsWritten, planAsWritten } from "../../simulate/asWritten.ts";
import { compile } from "../../simulate/compile.ts";
import type { Model } from "../../simulate/model.ts";

/** One task in the plan as written; moments are days since the plan's start. */
export interface WrittenTask {
  /** Its index in the model. */
  at: number;
  start: number;
  finish: number;
  /** Realised, working days of its calendar. */
  duration: number;
  needed: boolean;
  /** Whether it sets the finish: critical as written. */
  driving: boolean;
  /** Working days of its calendar it could slip before the finish moved; infinite where it never would. */
  float: number;
}
export interface Written {
  model: Model;
  asWritten: AsWritten;
  tasks: ReadonlyMap<string, WrittenTask>;
}

/** The plan as written with the float of each task; or the task at which it runs past what calendars cover. */
export function writtenPlan(plan: Plan): Written | { model: Model; beyond: number } {
  const model = compile(plan);
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return { model, beyond: asWritten.beyond };
  const placed = placedOf(model, asWritten.block, undefined);
  const late = model.tasks.map(() => new Float64Array(1));
  fillLateRows(placed, late);
  const { block } = asWritten;
  const one = (row: Float64Array | undefined) => row?.[0] ?? 0;
  const tasks = model.tasks.map((task, at): [string, WrittenTask] => {
    const needed = block.needed[at]?.[0] !== 0;
    const open = needed && task.progress?.finished !== true;
    return [
      task.id,
      {
        at,
        start: one(block.start[at]),
        finish: one(block.finish[at]),
        duration: one(block.duration[at]),
        needed,
        driving: open && block.moves[at]?.[0] === 1,
        float: slackOf(placed, at, 0, late[at] as Float64Array),
      },
    ];
  });
  return { model, asWritten, tasks: new Map(tasks) };
}
