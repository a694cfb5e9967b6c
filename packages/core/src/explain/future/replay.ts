import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import type { Block } from "../../simulate/block.ts";
import { finishDay, markMoving, startDay } from "../../simulate/critical.ts";
import type { Model } from "../../simulate/model.ts";
import { addMoney, newMoneySums } from "../../simulate/money.ts";
import { lateCost } from "../../simulate/worth.ts";
import { standingAsWritten } from "../confidence/standings.ts";
import { boundJson, named } from "../paths/boundJson.ts";
import { bindingBounds } from "../paths/driverOf.ts";
import { fillLateRows } from "../paths/lateRows.ts";
import { pathOf } from "../paths/pathCounts.ts";
import { type Placed, placedOf } from "../paths/placed.ts";
import { slackOf } from "../paths/slackOf.ts";
import { wayJson } from "../paths/wayJson.ts";
import type { Future, FutureTask } from "../types.ts";
import { costLines } from "./costLines.ts";
import { drawsOf } from "./drawsOf.ts";
import { eventsOf } from "./eventsOf.ts";

/** What one iteration says of itself: everything but where it stands among the others. */
export type Replay = Omit<Future, "stamp" | "iteration" | "at" | "finish" | "cost"> & {
  finish: Omit<Future["finish"], "level">;
  cost: Omit<Future["cost"], "level">;
};

/** Tells iteration k of a placed block, step by step. Marks it and adds its money up, as a simulation does. */
export function replay(model: Model, asWritten: AsWritten, block: Block, k: number): Replay {
  markMoving(model, block, model.limitedPeople);
  addMoney(model, block, newMoneySums(model));
  const total = block.cost[k] as number;
  const day = block.planFinish[k] as number;
  const placed = placedOf(model, block, asWritten.starts);
  const path = pathOf(placed, k);
  const late = new Float64Array(block.n);
  if (model.lateness !== undefined) lateCost(model, block, 0, late);
  const lines = costLines(model, block, k);
  return {
    plan: { title: model.plan.title, currency: model.plan.currency, start: model.plan.start },
    asWritten: standingAsWritten(model, asWritten),
    finish: {
      date: isoDate(model.startDay + (block.planFinishDay[k] as number)),
      day,
      workingDays: workAt(model.planCalendar, day),
    },
    cost: { total, lines },
    ...(model.lateness === undefined ? {} : { lateness: late[k] as number }),
    events: eventsOf(model, block, k),
    draws: drawsOf(model, block, k),
    tasks: tasksOf(placed, asWritten, k, lines),
    path: path.tasks.map((j, at) => ({
      task: named(model.tasks[j] ?? { id: "", name: "" }),
      way: wayJson(model, path.ways[at]),
    })),
  };
}

function tasksOf(
  placed: Placed,
  asWritten: AsWritten,
  k: number,
  lines: Future["cost"]["lines"],
): FutureTask[] {
  const { model, block } = placed;
  const late = model.tasks.map(() => new Float64Array(block.n));
  fillLateRows(placed, late);
  const dateOf = (day: number) => isoDate(model.startDay + Math.max(0, day));
  const written = asWritten.block;
  return model.tasks
    .map((task, j): FutureTask => {
      const start = block.start[j]?.[k] as number;
      const finish = block.finish[j]?.[k] as number;
      const duration = block.duration[j]?.[k] as number;
      const needed = block.needed[j]?.[k] !== 0;
      const point = duration <= tolerance;
      const finished = task.progress?.finished === true;
      const slack = slackOf(placed, j, k, late[j] as Float64Array);
      const planned = written.finish[j]?.[0] as number;
      const plannedLength = written.duration[j]?.[0] as number;
      const plannedDay = finishDay(task, planned, plannedLength <= tolerance);
      return {
        id: task.id,
        name: task.name,
        milestone: task.kind !== "task",
        needed,
        start,
        finish,
        startDate: dateOf(startDay(task, start, point, needed)),
        finishDate: dateOf(finishDay(task, finish, point, needed)),
        duration,
        asWritten: { duration: plannedLength, finish: planned, finishDate: dateOf(plannedDay) },
        critical: needed && !finished && block.pushed[j]?.[k] === 1,
        ...(slack === Number.POSITIVE_INFINITY ? {} : { slack }),
        cost: lines.find(({ kind, id }) => kind === "task" && id === task.id)?.money ?? 0,
        heldBy: bindingBounds(placed, j, k).map((bound) => boundJson(placed, j, k, bound)),
      };
    })
    .sort((a, b) => a.start - b.start || a.finish - b.finish || (a.id < b.id ? -1 : 1));
}
