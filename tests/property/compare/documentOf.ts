import type {
  Assumption,
  Estimate,
  Impact,
  Plan,
  Response,
  Risk,
  Task,
} from "../../../packages/core/src/index.ts";

/** The document a plan could have been read from: every default written out. */
export function documentOf(plan: Plan): unknown {
  const given = new Set(["weekdays", "every-day"]);
  const { confidence, finishOf } = plan.commitment;
  return clean({
    format: 1,
    title: plan.title,
    currency: plan.currency,
    start: plan.start,
    statusDate: plan.statusDate,
    seed: plan.seed,
    iterations: plan.iterations,
    commitment: { confidence, finishOf },
    calendar: plan.calendar,
    calendars: Object.fromEntries(
      [...plan.calendars]
        .filter(([name]) => !given.has(name))
        .map(([name, { workdays, holidays }]) => [name, { workdays, holidays: listOf(holidays) }]),
    ),
    people: listOf(
      plan.people.map(({ id, name, was, rate, share, capacity, calendar, away }) => ({
        id,
        name,
        was,
        rate,
        share,
        capacity,
        calendar,
        away: listOf(away),
      })),
    ),
    respectCapacity: plan.respectCapacity,
    phases: listOf(plan.phases.map(({ name, calendar }) => ({ name, calendar }))),
    tasks: plan.tasks.map(taskOf),
    risks: listOf(plan.risks.map(entryOf)),
    assumptions: listOf(plan.assumptions.map(entryOf)),
    correlations: listOf(plan.correlations.map(({ between, coefficient }) => ({ between, coefficient }))),
    overheads: listOf(
      plan.overheads.map(({ id, name, was, perDay, from, to }) => ({
        id,
        name,
        was,
        perDay: estimateOf(perDay),
        from,
        to,
      })),
    ),
  });
}

function taskOf(task: Task) {
  return {
    id: task.id,
    name: task.name,
    was: task.was,
    phase: task.phase,
    duration: estimateOf(task.duration),
    effort: estimateOf(task.effort),
    milestone: task.milestone === "finish" ? true : task.milestone === "start" ? "start" : undefined,
    after: listOf(
      task.after.map(({ task: id, link, lag, lagCalendar }) => ({
        task: id,
        link,
        lag: lagCalendar === undefined ? estimateOf(lag) : { days: estimateOf(lag), calendar: lagCalendar },
      })),
    ),
    notBefore: task.notBefore,
    holdToPlan: task.holdToPlan,
    calendar: task.calendar,
    unbroken: task.unbroken,
    people: listOf(task.people),
    cost: estimateOf(task.cost),
    costPerDay: estimateOf(task.costPerDay),
    priority: task.priority,
    chance: task.chance,
    onlyIf: task.onlyIf,
    started: task.started,
    finished: task.finished,
    remaining: estimateOf(task.remaining),
    spent: task.spent,
  };
}

function entryOf(entry: Risk | Assumption) {
  const { id, was, name, probability, group, status, expires, onlyIf, kind } = entry;
  return {
    id,
    was,
    ...(kind === "risk" ? { name, probability } : { statement: name, chanceWrong: probability }),
    group,
    status,
    expires,
    onlyIf,
    impacts: listOf(entry.impacts.map(impactOf)),
    responses: listOf(entry.responses.map(responseOf)),
  };
}

function impactOf({ phase, tasks, delay, factor, wait, cost }: Impact) {
  return {
    ...(phase === undefined ? { tasks: listOf(tasks) } : { phase }),
    delay: estimateOf(delay),
    factor: estimateOf(factor),
    wait: estimateOf(wait),
    cost: estimateOf(cost),
  };
}

function responseOf({ id, was, action, due, cost, adopted, probability, scale }: Response) {
  return { id, was, action, due, cost: estimateOf(cost), adopted, probability, scale };
}

function estimateOf(estimate: Estimate | undefined): unknown {
  if (estimate === undefined) return undefined;
  const { kind, unit, ...rest } = estimate;
  const weeks = unit === "weeks" ? { unit } : {};
  if (estimate.kind !== "fixed") return { ...rest, ...weeks };
  return unit === "days" ? estimate.value : { outcomes: [{ value: estimate.value, chance: 1 }], ...weeks };
}

function listOf<T>(items: readonly T[]): readonly T[] | undefined {
  return items.length === 0 ? undefined : items;
}

/** Without keys that have no value. */
function clean(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(clean);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, item]) => (item === undefined ? [] : [[key, clean(item)]])),
  );
}
