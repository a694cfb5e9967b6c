import { tolerance } from "../../calendar/tolerance.ts";
import { type RankSelector, rankSelector } from "../../forecast/rankSelector.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { Person } from "../../plan/types.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { compileCalendars } from "../../simulate/compileCalendars.ts";
import type { Model, ModelPerson } from "../../simulate/model.ts";
import type { PersonLoad } from "../types.ts";
import type { Assignment } from "./assignments.ts";
import { loadBeyond, presentByWeek, type Span } from "./loadAsWritten.ts";
import type { TaskRows } from "./peopleRun.ts";
import type { Weeks } from "./weeks.ts";
import { addWork } from "./workByWeek.ts";

/** Rows of a week by iterations kept at once. */
const tableBytes = 32e6;

/**
 * The load of each person by week: in the plan as written, in the same plan with nobody waiting for people, and over
 * the futures.
 *
 * @param free  The plan as written with people without limits.
 * @param count  Weeks from the one that holds the start.
 *
 * Cost: a few steps for each week a task lies in, task by task over the iterations; then a selection a week.
 */
export function personLoads(
  model: Model,
  assignments: readonly Assignment[][],
  asWritten: AsWritten,
  free: AsWritten,
  rows: TaskRows,
  iterations: number,
  weeks: Weeks,
  count: number,
): PersonLoad[] {
  const calendars = compileCalendars(model.plan);
  const people = new Map(model.plan.people.map((person) => [person.id, person]));
  const select = rankSelector(iterations);
  const atOnce = Math.max(1, Math.floor(tableBytes / (8 * iterations)));
  const table = new Float64Array(Math.min(count, atOnce) * iterations);
  return model.people.map((person, p): PersonLoad => {
    const tasks = assignments[p] ?? [];
    const source = people.get(person.id) as Person;
    const own = calendars.shared(source.calendar, [person.id]);
    const written = loadIn(asWritten, person, own, tasks, weeks, count);
    const unlimited = loadIn(free, person, own, tasks, weeks, count);
    return {
      id: person.id,
      name: person.name,
      ...(source.role === undefined ? {} : { role: source.role }),
      capacity: person.capacity,
      tasks: tasks.map(({ task }) => task.id),
      asked: written.asked,
      present: presentByWeek(person, own, weeks, count),
      over: written.over,
      away: written.away,
      unlimited: { asked: unlimited.asked, over: unlimited.over },
      ...overFutures(tasks, rows, iterations, weeks, count, table, select),
    };
  });
}

function loadIn(
  plan: AsWritten,
  person: ModelPerson,
  own: Span["calendar"],
  tasks: readonly Assignment[],
  weeks: Weeks,
  count: number,
): { asked: number[]; over: number[]; away: number[] } {
  const asked = new Float64Array(count);
  const spans: Span[] = [];
  for (const { at, task, share } of tasks) {
    const start = plan.block.start[at] as Float64Array;
    const finish = plan.block.finish[at] as Float64Array;
    addWork(asked, 1, { calendar: task.calendar, share, start, finish }, weeks, 0, count);
    spans.push({ start: start[0] as number, finish: finish[0] as number, calendar: task.calendar, share });
  }
  const { over, away } = loadBeyond(person, own, spans, weeks, count);
  return { asked: [...asked], over: [...over], away: [...away] };
}

function overFutures(
  tasks: readonly Assignment[],
  rows: TaskRows,
  n: number,
  weeks: Weeks,
  count: number,
  table: Float64Array,
  select: RankSelector,
): Pick<PersonLoad, "mean" | "p80"> {
  const mean: number[] = [];
  const p80: number[] = [];
  const atOnce = table.length / n;
  for (let from = 0; from < count; from += atOnce) {
    const to = Math.min(count, from + atOnce);
    table.fill(0);
    for (const { at, task, share } of tasks) {
      const start = rows.start[at] as Float64Array;
      const finish = rows.finish[at] as Float64Array;
      addWork(table, n, { calendar: task.calendar, share, start, finish }, weeks, from, to);
    }
    for (let w = 0; w < to - from; w++) {
      const loads = table.subarray(w * n, (w + 1) * n);
      let sum = 0;
      for (let k = 0; k < n; k++) sum += loads[k] as number;
      mean.push(sum / n);
      p80.push(loadAtRank(loads, rankOf(0.8, n), select));
    }
  }
  return { mean, p80 };
}

/**
 * The load at a rank. Most weeks ask for nothing or for whole days of everything in nearly all futures: those are
 * counted, which is many times faster than selecting among values that are all alike.
 */
function loadAtRank(loads: Float64Array, rank: number, select: RankSelector): number {
  let most = 0;
  let none = 0;
  for (const load of loads) {
    if (load === 0) none++;
    if (load > most) most = load;
  }
  if (none >= rank) return 0;
  let less = 0;
  for (const load of loads) if (load < most - tolerance) less++;
  return less < rank ? most : (select(loads, [rank])[0] as number);
}
