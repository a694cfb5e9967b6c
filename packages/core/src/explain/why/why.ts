import { isoDate } from "../../calendar/dates.ts";
import { tolerance } from "../../calendar/tolerance.ts";
import { addWork, nextWork, workAt } from "../../calendar/workCalendar.ts";
import { rankOf } from "../../forecast/ranks.ts";
import { nearest } from "../../plan/definition/nearest.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { finishDay, markMoving, startDay } from "../../simulate/critical.ts";
import type { Model, ModelTask } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { boundJson, named } from "../paths/boundJson.ts";
import type { Bound } from "../paths/boundsOf.ts";
import { eachBlock } from "../paths/eachBlock.ts";
import { fillLateRows } from "../paths/lateRows.ts";
import { pathTo } from "../paths/pathCounts.ts";
import { type Placed, placedOf } from "../paths/placed.ts";
import { slackOf } from "../paths/slackOf.ts";
import { wayJson } from "../paths/wayJson.ts";
import { type ExplainingOptions, explaining, type Subject } from "../subject.ts";
import type { Why, WhyBound } from "../types.ts";
import type { Draw } from "../variants.ts";
import { type BoundCount, countBounds } from "./boundShares.ts";
import { boundKey, whyBounds } from "./whyBounds.ts";

/** Which run the task is looked at in. */
export type WhyOptions = ExplainingOptions;

/** What holds the task's start, or why that cannot be told. */
export interface WhyResult {
  why?: Why;
  problems: Problem[];
}

/**
 * What holds the start of a task: in the plan as written, bound by bound (links with their lags, dates, people and what
 * held them), which of them binds and by how many working days the others do not; and over the futures how often each
 * of them did.
 *
 * Problems are values: an unknown id says which it may have meant. Cost: about one `simulate`.
 */
export function why(plan: Plan, task: string, options: WhyOptions = {}): WhyResult {
  const unfit = plan.tasks.some(({ id }) => id === task) ? [] : [unknownTask(plan, task)];
  const explain = ({ model, asWritten, draw }: Subject): WhyResult => {
    const j = model.tasks.findIndex(({ id }) => id === task);
    return { why: whyOf(model, asWritten, draw, j, options.onProgress), problems: [] };
  };
  return explaining(plan, options, explain, { unfit });
}

function unknownTask(plan: Plan, id: string): Problem {
  const ids = plan.tasks.map((task) => task.id);
  const known = (wanted: (task: Plan["tasks"][number]) => boolean) => plan.tasks.find(wanted);
  const nearId = nearest(id, ids);
  const nearName = nearest(
    id,
    plan.tasks.map(({ name }) => name),
  );
  const task = known((each) => each.id === nearId) ?? known((each) => each.name === nearName);
  const list = ids.slice(0, 6).join(", ");
  const remedy =
    task === undefined
      ? `Its tasks: ${list}${ids.length > 6 ? ` and ${ids.length - 6} more` : ""}.`
      : `Did you mean ${task.id} (${task.name})?`;
  return {
    code: "unknown-task",
    severity: "error",
    path: "tasks",
    received: id,
    rule: "The plan has no task of that id.",
    remedy,
  };
}

function whyOf(
  model: Model,
  asWritten: AsWritten,
  draw: Draw,
  j: number,
  onProgress: WhyOptions["onProgress"],
): Why {
  const n = draw.iterations;
  const task = model.tasks[j] as ModelTask;
  const counts = new Map<string, BoundCount>();
  const starts = new Float64Array(n);
  let points = 0;
  let critical = 0;
  eachBlock(model, draw, asWritten.starts, (block, first) => {
    markMoving(model, block, model.limitedPeople);
    countBounds(placedOf(model, block, asWritten.starts), j, counts);
    starts.set((block.start[j] as Float64Array).subarray(0, block.n), first);
    for (let k = 0; k < block.n; k++) {
      if (((block.duration[j] as Float64Array)[k] as number) <= tolerance) points++;
      if (block.needed[j]?.[k] === 0 || task.progress?.finished === true) continue;
      if (block.pushed[j]?.[k] === 1) critical++;
    }
    onProgress?.(first + block.n, n);
  });
  starts.sort();
  const dateAt = (p: number) => {
    const day = startDay(task, starts[rankOf(p, n) - 1] as number, points === n);
    return isoDate(model.startDay + Math.max(0, day));
  };
  const written = placedOf(model, asWritten.block, undefined);
  const bounds = whyBounds(written, j, 0);
  const chain = pathTo(written, j, 0, true);
  return {
    stamp: stampOf(model, draw),
    plan: { title: model.plan.title, currency: model.plan.currency, start: model.plan.start },
    task: named(task),
    asWritten: writtenOf(written, j),
    awayBefore: awayBefore(written, j, bounds),
    bounds: boundRows(written, j, bounds, counts, n),
    chain: chain.tasks.map((each, at) => ({
      task: named(model.tasks[each] ?? task),
      way: wayJson(model, chain.ways[at]),
    })),
    futures: {
      startDates: { p10: dateAt(0.1), p50: dateAt(0.5), p90: dateAt(0.9) },
      criticality: critical / n,
    },
  };
}

function writtenOf(written: Placed, j: number): Why["asWritten"] {
  const { model, block } = written;
  const task = model.tasks[j] as ModelTask;
  const late = model.tasks.map(() => new Float64Array(1));
  fillLateRows(written, late);
  const start = block.start[j]?.[0] as number;
  const finish = block.finish[j]?.[0] as number;
  const duration = block.duration[j]?.[0] as number;
  const needed = block.needed[j]?.[0] !== 0;
  const point = duration <= tolerance;
  const dateOf = (day: number) => isoDate(model.startDay + Math.max(0, day));
  const slack = slackOf(written, j, 0, late[j] as Float64Array);
  const { progress } = task;
  return {
    state: progress === undefined ? "ahead" : progress.finished ? "finished" : "started",
    needed,
    start,
    // As in the forecast: where it would stand, needed or not.
    startDate: dateOf(startDay(task, start, point)),
    finish,
    finishDate: dateOf(finishDay(task, finish, point)),
    duration,
    critical: needed && task.progress?.finished !== true && block.pushed[j]?.[0] === 1,
    ...(slack === Number.POSITIVE_INFINITY ? {} : { slack }),
  };
}

/** The bounds of the plan as written with their shares; then those that set the start in some future only. */
function boundRows(
  written: Placed,
  j: number,
  bounds: readonly Bound[],
  counts: ReadonlyMap<string, BoundCount>,
  n: number,
): WhyBound[] {
  const { model } = written;
  const here = new Set(bounds.map(boundKey));
  // A person who had room all along as written: bound from the plan's start on, by nobody.
  const elsewhere = [...counts].flatMap(([key, { bound }]): Bound[] => {
    if (here.has(key)) return [];
    return [bound.kind === "held-to-plan" ? bound : { ...bound, from: -1, moment: 0, start: 0, wait: 0 }];
  });
  return [...bounds, ...elsewhere]
    .map((bound): WhyBound => {
      const counted = counts.get(boundKey(bound));
      const behind = [...(counted?.behind ?? [])]
        .sort(([a, x], [b, y]) => y - x || a - b)
        .map(([task, count]) => ({ task: named(model.tasks[task] as ModelTask), share: count / n }));
      return {
        ...boundJson(written, j, 0, bound),
        // As written a task is not held to what is written: it is that.
        ...(bound.kind === "held-to-plan" ? { binds: false } : {}),
        share: (counted?.count ?? 0) / n,
        ...(behind.length === 0 ? {} : { behind }),
      };
    })
    .sort((a, b) => a.slack - b.slack || b.share - a.share);
}

/** Working days on which its calendar works, its people do not, between what binds and its start. */
function awayBefore({ model, block }: Placed, j: number, bounds: readonly Bound[]): number {
  const task = model.tasks[j] as ModelTask;
  const start = block.start[j]?.[0] as number;
  if (task.progress !== undefined || (block.duration[j]?.[0] as number) <= tolerance) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const bound of bounds) {
    if (bound.start < start - tolerance) continue;
    const kind = bound.kind === "link" ? task.links[bound.at]?.kind : undefined;
    if (kind === "finish-to-finish" || kind === "start-to-finish") return 0;
    const held = bound.wait > 0 ? addWork(task.ownCalendar, bound.moment, bound.wait) : bound.moment;
    const own = nextWork(task.ownCalendar, held);
    least = Math.min(least, workAt(task.ownCalendar, start) - workAt(task.ownCalendar, own));
  }
  return Number.isFinite(least) ? Math.max(0, least) : 0;
}
