// What holds a start, and the chain that sets the finish, on random plans. No source outside: the laws are those of the
// words "binds" and "critical" in METHOD.md; times are those of the placement.
import { expect, it } from "vitest";
import {
  addWork,
  finishMoment,
  startMoment,
  workAt,
} from "../../../packages/core/src/calendar/workCalendar.ts";
import { aloneStart } from "../../../packages/core/src/explain/paths/aloneStart.ts";
import { type Bound, boundsOf, lagOf } from "../../../packages/core/src/explain/paths/boundsOf.ts";
import { bindingBounds } from "../../../packages/core/src/explain/paths/driverOf.ts";
import { chainTo, finishingTask } from "../../../packages/core/src/explain/paths/drivingPath.ts";
import { fillLateRows } from "../../../packages/core/src/explain/paths/lateRows.ts";
import type { Placed } from "../../../packages/core/src/explain/paths/placed.ts";
import { slackOf } from "../../../packages/core/src/explain/paths/slackOf.ts";
import type { ModelTask } from "../../../packages/core/src/simulate/model.ts";
import type { RandomPlanOptions } from "../../oracle/randomPlan.ts";
import { placedPlans } from "./placedPlans.ts";

// The last number: the share of tasks and iterations in which "no slack" and the engine's mark "critical" may differ.
// Without people both are exact; with people the mark asks who ends as the task starts, the slack who has to be done
// before it, and shares that fit only two by two are told apart differently.
const families: [string, number, RandomPlanOptions, number][] = [
  ["one calendar", 60, { people: false, calendars: false, progress: false }, 0],
  ["mixed calendars", 60, { people: false, progress: false }, 0],
  ["limited people", 50, { progress: false }, 0.01],
  ["everything at once", 50, {}, 0.01],
];
const nudge = 1e-6;

const known = new Map<string, { seed: number; placed: Placed }[]>();
/** The plans of a family, made once for all laws. */
function plansOf(
  name: string,
  count: number,
  options: RandomPlanOptions,
): { seed: number; placed: Placed }[] {
  const plans = known.get(name) ?? [...placedPlans(1, count, options)];
  known.set(name, plans);
  return plans;
}

it.each(families)("every start is the latest of its bounds: %s", (name, count, options) => {
  const wrong: unknown[] = [];
  let waited = 0;
  for (const { seed, placed } of plansOf(name, count, options)) {
    const { model, block } = placed;
    model.tasks.forEach((task, j) => {
      for (let k = 0; k < block.n; k++) {
        const start = block.start[j]?.[k] as number;
        const bounds = boundsOf(placed, j, k);
        const latest = Math.max(...bounds.map((bound) => bound.start));
        if (Math.abs(latest - start) > 1e-9) wrong.push([seed, task.id, k, latest, start]);
        if (bounds.some((bound) => bound.kind === "person")) waited++;
      }
    });
  }
  expect(wrong.slice(0, 5)).toEqual([]);
  if (options.people !== false) expect(waited).toBeGreaterThan(60);
});

it.each(families)("a driving path chains without gaps: %s", (name, count, options) => {
  const wrong: unknown[] = [];
  let steps = 0;
  for (const { seed, placed } of plansOf(name, count, options)) {
    const { model, block } = placed;
    for (let k = 0; k < block.n; k++) {
      const last = finishingTask(placed, k);
      if (last < 0) continue;
      const finish = block.finish[last]?.[k] as number;
      if (Math.abs(finish - (block.planFinish[k] as number)) > 1e-9) wrong.push([seed, k, "finish"]);
      const chain = chainTo(placed, last, k);
      chain.forEach(({ task: j, by }, at) => {
        const task = model.tasks[j] as ModelTask;
        steps++;
        if (by.from !== (chain[at + 1]?.task ?? -1)) wrong.push([seed, task.id, k, "not linked"]);
        if (Math.abs(by.start - (block.start[j]?.[k] as number)) > 1e-9)
          wrong.push([seed, task.id, k, "gap"]);
        const linked = by.kind === "link" ? task.links[by.at]?.from === by.from : true;
        const shared = by.kind === "person" ? sharePerson(task, model.tasks[by.from]) : true;
        if (!linked || !shared) wrong.push([seed, task.id, k, by.kind]);
      });
    }
  }
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(steps).toBeGreaterThan(500);
});

function sharePerson(a: ModelTask, b: ModelTask | undefined): boolean {
  return a.holds.some(({ person }) => b?.holds.some((hold) => hold.person === person));
}

// A path leads over what held each start. Days off may lie between the two, and then the earlier task can slip over
// them; everywhere else its slipping is the finish's.
it.each(families)(
  "tasks of a driving path are critical, days off and ties aside: %s",
  (name, count, options) => {
    const wrong: unknown[] = [];
    let steps = 0;
    let critical = 0;
    for (const { seed, placed } of plansOf(name, count, options)) {
      const { model, block } = placed;
      for (let k = 0; k < block.n; k++) {
        const last = finishingTask(placed, k);
        if (last < 0) continue;
        const chain = chainTo(placed, last, k);
        for (let at = 0; at < chain.length; at++) {
          const { task: i } = chain[at] as { task: number };
          if (model.tasks[i]?.progress?.finished === true) break;
          steps++;
          if (block.pushed[i]?.[k] === 1) {
            critical++;
            continue;
          }
          const after = chain[at - 1];
          if (after === undefined || !slipsAlone(placed, after.task, after.by, k)) {
            wrong.push([seed, model.tasks[i]?.id, k, after]);
          }
          break;
        }
      }
    }
    expect(wrong.slice(0, 5)).toEqual([]);
    expect(critical / steps).toBeGreaterThan(options.calendars === false ? 0.999999 : 0.8);
  },
);

/** Whether what task j waits for can slip a little without it: over days off, or beside another that ends as it does. */
function slipsAlone(placed: Placed, j: number, by: Bound, k: number): boolean {
  const { block } = placed;
  // A point on a day off: only a slip beyond it counts.
  if (block.moves[j]?.[k] === 0) return true;
  if (by.kind === "link") return standsStill(placed, j, by, k);
  return by.start > by.moment + nudge || bindingBounds(placed, j, k).length > 1;
}

/** Whether the link asks for the same start when its predecessor slips by a little of its own work. */
function standsStill(placed: Placed, j: number, by: Bound, k: number): boolean {
  const { model, block } = placed;
  const task = model.tasks[j] as ModelTask;
  const from = model.tasks[by.from] as ModelTask;
  const link = task.links[by.at] as ModelTask["links"][number];
  const fromFinish = link.kind === "finish-to-start" || link.kind === "finish-to-finish";
  const toFinish = link.kind === "finish-to-finish" || link.kind === "start-to-finish";
  const at = (fromFinish ? block.finish[by.from] : block.start[by.from])?.[k] as number;
  const w = workAt(from.calendar, at) + nudge;
  const slipped = fromFinish ? finishMoment(from.calendar, w) : startMoment(from.calendar, w);
  const moment = addWork(link.lagCalendar, slipped, lagOf(placed, link, k));
  const held = by.wait > 0 ? addWork(task.ownCalendar, moment, by.wait) : moment;
  const d = block.duration[j]?.[k] as number;
  return aloneStart(task, d, block.needed[j]?.[k] === 0, held, toFinish) <= by.start + nudge / 2;
}

it.each(families)("a task without slack is one marked critical: %s", (name, count, options, most) => {
  let asked = 0;
  let differ = 0;
  for (const { placed } of plansOf(name, count, options)) {
    const { model, block } = placed;
    const rows = model.tasks.map(() => new Float64Array(block.n));
    fillLateRows(placed, rows);
    model.tasks.forEach((task, j) => {
      if (task.progress?.finished === true) return;
      for (let k = 0; k < block.n; k++) {
        asked++;
        const none = slackOf(placed, j, k, rows[j] as Float64Array) === 0;
        if (none !== (block.pushed[j]?.[k] === 1)) differ++;
      }
    });
  }
  expect(differ / asked).toBeLessThanOrEqual(most);
});
