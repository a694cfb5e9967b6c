import { dayNumber } from "../calendar/dates.ts";
import { workAt } from "../calendar/workCalendar.ts";
import { type OrderTask, placementOrder } from "../network/placementOrder.ts";
import type { Estimate, Link, Plan, Task } from "../plan/types.ts";
import { asWrittenValue } from "../sampling/index.ts";
import { type Calendars, compileCalendars } from "./compileCalendars.ts";
import { compileCorrelations } from "./compileCorrelations.ts";
import { compileMoney } from "./compileMoney.ts";
import { compileRegister, unitScale } from "./compileRegister.ts";
import { linkedPairs } from "./linkedPairs.ts";
import { mayBePoint } from "./mayBePoint.ts";
import { constant, type Model, type ModelEntry, type ModelProgress, type ModelTask } from "./model.ts";
import { type SlotList, slotList } from "./slots.ts";

/**
 * Turns a correct plan into the flat model the simulation runs on.
 *
 * Everything is put in id order, so the order of the file cannot reach a number. Cost: one pass over the plan
 * plus one table of 36,526 days per distinct calendar; about a millisecond per hundred tasks.
 *
 * Throws never for a plan made by `readPlan`.
 */
export function compile(source: Plan): Model {
  const plan: Plan = { ...source, tasks: [...source.tasks].sort(byId) };
  const startDay = dayNumber(plan.start);
  const calendars = compileCalendars(plan);
  const list = slotList();
  const taskIndex = new Map(plan.tasks.map((task, index) => [task.id, index]));
  const drawIds = new Map(plan.tasks.map((task) => [task.id, task.was ?? task.id]));
  const warnings: string[] = [];

  const statusDay = plan.statusDate === undefined ? undefined : dayNumber(plan.statusDate) - startDay;
  const register = compileRegister(plan, taskIndex, drawIds, calendars, list);
  const adopted = new Set(
    [...plan.risks, ...plan.assumptions].flatMap((e) =>
      e.responses.filter((r) => r.adopted).map((r) => r.id),
    ),
  );
  const people = [...plan.people].sort(byId);
  const personIndex = new Map(people.map((person, index) => [person.id, index]));
  const rates = new Map(people.map((person) => [person.id, person.rate]));
  const tasks = plan.tasks.map((task, index) =>
    compileTask(task, {
      plan,
      startDay,
      statusDay,
      calendars,
      list,
      taskIndex,
      drawIds,
      personIndex,
      rates,
      adopted,
      impacts: register.impactsOn[index] ?? [],
      entries: register.entries,
    }),
  );
  const money = compileMoney(plan, { startDay, taskIndex, list, adopted });
  const correlated = compileCorrelations(plan, list.slots, warnings);
  const order = placementOrder(plan.tasks.map((task, i) => orderTask(task, tasks[i] as ModelTask)));
  const commitment = plan.commitment;
  return {
    plan,
    startDay,
    planCalendar: calendars.named(plan.calendar),
    tasks,
    order,
    slots: list.slots,
    register: register.entries,
    groups: register.groups,
    responses: money.responses,
    overheads: money.overheads,
    people: people.map((person) => ({
      id: person.id,
      name: person.name,
      capacity: person.capacity,
      partial: calendars.partialAbsences(person),
    })),
    intervals: [...plan.intervals].sort(byId).map((interval) => ({
      id: interval.id,
      name: interval.name,
      from: taskIndex.get(interval.from) ?? 0,
      to: taskIndex.get(interval.to) ?? 0,
      ...(interval.atMost === undefined ? {} : { atMost: interval.atMost }),
    })),
    pairs: linkedPairs(plan, taskIndex, register.entries),
    correlated,
    lateness: money.lateness,
    benefits: money.benefits,
    finishOf: commitment.finishOf === undefined ? -1 : (taskIndex.get(commitment.finishOf) ?? -1),
    confidence: commitment.confidence,
    finishByDay: commitment.finishBy === undefined ? undefined : dayNumber(commitment.finishBy) - startDay,
    budget: commitment.budget,
    statusDay,
    limitedPeople: plan.respectCapacity && tasks.some((task) => task.holds.length > 0),
    warnings,
  };
}

interface TaskContext {
  plan: Plan;
  startDay: number;
  statusDay: number | undefined;
  calendars: Calendars;
  list: SlotList;
  taskIndex: ReadonlyMap<string, number>;
  drawIds: ReadonlyMap<string, string>;
  personIndex: ReadonlyMap<string, number>;
  /** What people cost a working day. */
  rates: ReadonlyMap<string, number | undefined>;
  adopted: ReadonlySet<string>;
  impacts: ModelTask["impacts"];
  entries: readonly ModelEntry[];
}

function compileTask(task: Task, context: TaskContext): ModelTask {
  const { plan, startDay, statusDay, calendars, list } = context;
  const item = task.was ?? task.id;
  const week = calendars.weekLength(task.calendar);
  // A milestone needs no people, so theirs does not narrow its calendar.
  const calendar = calendars.shared(
    task.calendar,
    task.people.filter((person) => !person.along && task.milestone === false).map((person) => person.id),
  );
  // No draw touches a finished task: its estimates stand as written.
  const amount = (estimate: Estimate | undefined, purpose: string) =>
    task.finished !== undefined && estimate !== undefined
      ? constant(Math.max(0, asWrittenValue(estimate)))
      : list.amount(estimate, { key: `${task.id}:${purpose}`, item, purpose, cut: true });
  const work = task.duration ?? task.effort;
  // In id order, so that the order of the list cannot reach the last digit.
  const people = [...task.people].sort(byId);
  const shares = people.reduce((sum, person) => sum + person.share, 0);
  const perHead = task.effort === undefined ? 1 : 1 / shares;
  const notBefore = task.notBefore === undefined ? 0 : Math.max(0, dayNumber(task.notBefore) - startDay);
  const progress = compileProgress(task, calendar, context);
  return {
    id: task.id,
    name: task.name,
    phase: task.phase,
    kind: task.milestone === false ? "task" : task.milestone === "start" ? "milestone-start" : "milestone",
    mayBePoint: mayBePoint(task, context.impacts, context.entries, list.slots),
    calendar,
    ownCalendar: calendars.named(task.calendar),
    unbroken: task.unbroken === undefined ? undefined : calendars.named(task.unbroken),
    duration: amount(work, task.effort === undefined ? "duration" : "effort"),
    durationScale: unitScale(work, week) * perHead,
    links: compileLinks(task, context),
    notBefore,
    holdToPlan: task.holdToPlan,
    statusFloor: statusDay === undefined ? 0 : statusDay + 1,
    readingFloor: progress?.start ?? Math.max(notBefore, statusDay === undefined ? 0 : statusDay + 1),
    cost: amount(task.cost, "cost"),
    costPerDay: amount(task.costPerDay, "costPerDay"),
    peoplePerDay: people.reduce((sum, person) => sum + (context.rates.get(person.id) ?? 0) * person.share, 0),
    chance:
      progress !== undefined
        ? 1
        : task.onlyIf !== undefined && !context.adopted.has(task.onlyIf)
          ? 0
          : task.chance,
    chanceAddress: item,
    holds:
      plan.respectCapacity && task.milestone === false
        ? people
            .filter((person) => person.share > 0)
            .map(({ id, share, along }) => ({ person: context.personIndex.get(id) ?? 0, share, along }))
        : [],
    progress,
    targetDay: task.target === undefined ? undefined : dayNumber(task.target) - startDay,
    impacts: context.impacts,
  };
}

function compileLinks(task: Task, context: TaskContext): ModelTask["links"] {
  const item = task.was ?? task.id;
  const address = (link: Link) => `lag:${context.drawIds.get(link.task) ?? link.task}:${link.link}`;
  return [...task.after]
    .sort((a, b) => (address(a) < address(b) ? -1 : 1))
    .map((link) => {
      const name = link.lagCalendar ?? task.calendar;
      const lag = context.list.amount(link.lag, {
        key: `${task.id}:lag:${link.task}:${link.link}`,
        item,
        purpose: address(link),
        cut: false,
      });
      return {
        from: context.taskIndex.get(link.task) ?? 0,
        kind: link.link,
        lag,
        lagScale: unitScale(link.lag, context.calendars.weekLength(name)),
        lagCalendar: context.calendars.named(name),
        direct: lag.slot < 0 && lag.value === 0,
      };
    });
}

/** A finished milestone may lack `started`: it stands at the end of its day. */
function compileProgress(
  task: Task,
  calendar: ModelTask["calendar"],
  context: TaskContext,
): ModelProgress | undefined {
  const { startDay, statusDay, list, calendars } = context;
  if (task.started === undefined && task.finished === undefined) return undefined;
  const finish = task.finished === undefined ? 0 : dayNumber(task.finished) - startDay + 1;
  const started = task.started === undefined ? finish : dayNumber(task.started) - startDay;
  const start = task.milestone !== false && task.finished !== undefined ? finish : started;
  const until = task.finished === undefined ? (statusDay ?? 0) + 1 : finish;
  const held = task.milestone === false ? Math.max(0, workAt(calendar, until) - workAt(calendar, start)) : 0;
  const item = task.was ?? task.id;
  return {
    finished: task.finished !== undefined,
    start,
    finish,
    held,
    remaining:
      task.remaining === undefined
        ? undefined
        : list.amount(task.remaining, { key: `${task.id}:remaining`, item, purpose: "remaining", cut: true }),
    remainingScale: unitScale(task.remaining, calendars.weekLength(task.calendar)),
    spent: task.spent,
  };
}

function orderTask(task: Task, model: ModelTask): OrderTask {
  return {
    id: task.id,
    priority: task.priority,
    duration: model.kind === "task" ? model.duration.value * model.durationScale : 0,
    placed: model.progress !== undefined,
    after: model.links.map((link) => ({
      task: link.from,
      kind: link.kind,
      lag: link.lag.value * link.lagScale,
    })),
  };
}

function byId(a: { id: string }, b: { id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
