import type { Id, Opinion, Plan, Task } from "../../plan/types.ts";
import { type Calendars, compileCalendars } from "../../simulate/compileCalendars.ts";
import { latestOpinions } from "../latestOpinions.ts";
import { actualDays } from "./actualOf.ts";
import { entryOf } from "./entryOf.ts";
import { scoreOf } from "./scoreOf.ts";
import type { Scorecard, ScoreEntry } from "./types.ts";

/**
 * Past estimates against what happened: every finished task with a range, in this plan and in others.
 *
 * Plans of one title are versions of one project, in the order of their `statusDate`: what happened is read from the
 * last in which the task is finished, what was said from the first in which it had not started, so that an estimate
 * changed afterwards earns nothing. Tasks are found by id, or by `was`. Opinions count where they were dated no later
 * than the day the task started. Simulates nothing.
 */
export function scorecard(plan: Plan, ...past: readonly Plan[]): Scorecard {
  const projects = new Map<string, Plan[]>();
  for (const each of [...past, plan]) projects.set(each.title, [...(projects.get(each.title) ?? []), each]);
  const found: Found = { entries: [], money: [], opinions: [], unscored: [] };
  for (const versions of projects.values()) scoreProject(inOrder(versions), found);
  const { entries, money, opinions, unscored } = found;
  const overall = scoreOf(entries);
  const moneyScore = scoreOf(money);
  return {
    ...(overall !== undefined && { overall }),
    ...(moneyScore !== undefined && { money: moneyScore }),
    people: byPerson(found, [plan, ...past]),
    entries: [...entries, ...money],
    opinions,
    unscored,
    plans: [...projects].map(([title, versions]) => ({ title, versions: versions.length })),
  };
}

interface Found extends Pick<Scorecard, "entries" | "opinions" | "unscored"> {
  money: ScoreEntry[];
}

function inOrder(versions: readonly Plan[]): Plan[] {
  return [...versions].sort((a, b) => compare(a.statusDate ?? "", b.statusDate ?? ""));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function scoreProject(versions: readonly Plan[], found: Found): void {
  const finished = new Map<Id, { plan: Plan; task: Task }>();
  for (const plan of versions)
    for (const task of plan.tasks)
      if (task.finished !== undefined && task.milestone === false) finished.set(task.id, { plan, task });
  const calendars = new Map<Plan, Calendars>();
  const calendarsOf = (plan: Plan): Calendars => {
    const known = calendars.get(plan) ?? compileCalendars(plan);
    calendars.set(plan, known);
    return known;
  };
  for (const { plan, task } of finished.values()) {
    const said = before(versions, task) ?? { plan, task };
    const actual = actualDays(plan, task, calendarsOf(plan));
    if (actual === undefined) {
      found.unscored.push({ task: task.id, plan: plan.title, why: "no-time" });
      continue;
    }
    const events = eventsOn(plan, task.id);
    const about = { plan: said.plan, task: said.task, events, actual };
    const of = said.task.effort === undefined ? ("duration" as const) : ("effort" as const);
    const estimate = said.task[of];
    const by = said.task.estimatedBy;
    const entry = estimate && entryOf({ ...about, of, estimate, by }, calendarsOf(said.plan));
    if (entry === undefined) found.unscored.push({ task: task.id, plan: plan.title, why: "no-range" });
    else found.entries.push(entry);
    for (const opinion of opinionsBefore(versions, task, of)) {
      const told = { ...about, of, estimate: opinion.estimate, by: [opinion.by] };
      const each = entryOf(told, calendarsOf(said.plan));
      if (each !== undefined) found.opinions.push(each);
    }
    const { cost } = said.task;
    if (cost === undefined || task.spent === undefined || !onlyCost(plan, task)) continue;
    const priced = { ...about, of: "cost" as const, estimate: cost, by, actual: task.spent };
    const sum = entryOf(priced, calendarsOf(said.plan));
    if (sum !== undefined) found.money.push(sum);
  }
}

/** The task as it stood in the first version in which it had not started. */
function before(versions: readonly Plan[], { id, was }: Task): { plan: Plan; task: Task } | undefined {
  for (const plan of versions) {
    const task = plan.tasks.find((each) => each.id === id || each.id === was);
    if (task !== undefined && task.started === undefined && task.finished === undefined)
      return { plan, task };
  }
  return undefined;
}

function opinionsBefore(
  versions: readonly Plan[],
  { id, was, started }: Task,
  of: "duration" | "effort",
): Opinion[] {
  const said = versions.flatMap(({ tasks }) =>
    tasks.filter((task) => task.id === id || task.id === was).flatMap(({ opinions }) => opinions ?? []),
  );
  return latestOpinions(
    said.filter(({ date }) => date === undefined || started === undefined || date <= started),
    of,
  );
}

function eventsOn({ risks, assumptions }: Plan, task: Id): Id[] {
  return [...risks, ...assumptions]
    .filter(
      ({ status, impacts }) => status === "occurred" && impacts.some(({ tasks }) => tasks.includes(task)),
    )
    .map(({ id }) => id);
}

/** Whether all the money of a task is its `cost`: neither days nor people are paid. */
function onlyCost(plan: Plan, task: Task): boolean {
  const paid = new Set(plan.people.filter(({ rate }) => rate !== 0).map(({ id }) => id));
  return task.costPerDay === undefined && task.people.every(({ id }) => !paid.has(id));
}

function byPerson({ entries, opinions }: Found, plans: readonly Plan[]): Scorecard["people"] {
  const names = new Map(
    [...plans]
      .reverse()
      .flatMap(({ people, stakeholders }) =>
        [...people, ...stakeholders].map(({ id, name }): [Id, string] => [id, name]),
      ),
  );
  const ids = [...new Set([...entries, ...opinions].flatMap(({ by }) => by))].sort(compare);
  return ids.flatMap((id) => {
    const own = opinions.filter(({ by }) => by.includes(id));
    const told = new Set(own.map(({ plan, task }) => `${task} ${plan}`));
    const signed = entries.filter(({ by, plan, task }) => by.includes(id) && !told.has(`${task} ${plan}`));
    const score = scoreOf([...own, ...signed]);
    return score === undefined ? [] : [{ id, name: names.get(id) ?? id, score }];
  });
}
