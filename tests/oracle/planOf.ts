import type {
  CalendarDefinition,
  Estimate,
  Plan,
  RegisterEntry,
  Response,
  Task,
  Weekday,
} from "../../packages/core/src/plan/types.ts";
import type {
  AssumptionDocument,
  DateDocument,
  EstimateDocument,
  LinkDocument,
  PlanDocument,
  RiskDocument,
  TaskDocument,
} from "./document.ts";

const WORKWEEK: Weekday[] = ["mon", "tue", "wed", "thu", "fri"];

/** Where one item stands alone, the list of it. */
function list<T>(value: T | T[] | undefined): T[] {
  if (value === undefined) return [];
  return Array.isArray(value) ? value : [value];
}

/** The keys whose values are defined, so that optional keys stay absent rather than undefined. */
function present<T extends object>(keys: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const defined = Object.entries(keys).filter(([, value]) => value !== undefined);
  // Object.fromEntries forgets which key holds what; nothing but undefined was dropped.
  return Object.fromEntries(defined) as { [K in keyof T]?: Exclude<T[K], undefined> };
}

/**
 * The normalised plan of a document that is already known to be correct. It checks nothing and reads only what
 * takes part in time and money; its hashes are empty.
 */
export function planOf(document: PlanDocument): Plan {
  const planCalendar = document.calendar ?? "weekdays";
  const estimate = (value: EstimateDocument): Estimate => estimateOf(document, value);
  const optional = (value: EstimateDocument | undefined) =>
    value === undefined ? undefined : estimate(value);
  const phases = list(document.phases);
  const taskDocuments = list(document.tasks);

  const taskOf = (task: TaskDocument): Task => ({
    id: task.id,
    name: task.name,
    milestone: task.milestone === true ? "finish" : (task.milestone ?? false),
    after: list(task.after).map((link) => linkOf(link, estimate)),
    holdToPlan: task.holdToPlan ?? false,
    calendar: task.calendar ?? phases.find((p) => p.name === task.phase)?.calendar ?? planCalendar,
    people: list(task.people).map((person) => {
      const id = typeof person === "string" ? person : person.id;
      const usual = list(document.people).find((p) => p.id === id)?.share ?? 1;
      const named: { share?: number; along?: true } = typeof person === "string" ? {} : person;
      return { id, share: named.share ?? usual, along: named.along ?? false };
    }),
    due: "evenly",
    priority: task.priority ?? 0,
    chance: task.chance ?? 1,
    // By default its first person.
    responsible: list(task.people)
      .slice(0, 1)
      .map((person) => (typeof person === "string" ? person : person.id)),
    accountable: [],
    consulted: [],
    informed: [],
    estimatedBy: [],
    ...present({
      phase: task.phase,
      duration: optional(task.duration),
      effort: optional(task.effort),
      notBefore: task.notBefore,
      unbroken: task.unbroken,
      cost: optional(task.cost),
      costPerDay: optional(task.costPerDay),
      onlyIf: task.onlyIf,
      started: task.started,
      finished: task.finished,
      remaining: optional(task.remaining),
      spent: task.spent,
    }),
  });

  const tasksOfPhase = (phase: string) =>
    taskDocuments.filter((t) => t.phase === phase && !t.milestone).map((t) => t.id);
  const entryOf = (entry: RiskDocument | AssumptionDocument): Omit<RegisterEntry, "kind"> => ({
    id: entry.id,
    name: "name" in entry ? entry.name : entry.statement,
    probability: "probability" in entry ? entry.probability : entry.chanceWrong,
    impacts: list(entry.impacts).map((impact) => ({
      tasks: impact.phase === undefined ? list(impact.tasks) : tasksOfPhase(impact.phase),
      ...present({
        phase: impact.phase,
        delay: optional(impact.delay),
        factor: optional(impact.factor),
        wait: optional(impact.wait),
        cost: optional(impact.cost),
      }),
    })),
    responses: list(entry.responses).map(
      (r): Response => ({
        id: r.id,
        action: r.action,
        adopted: r.adopted ?? false,
        scale: r.scale ?? 1,
        ...present({ cost: optional(r.cost), probability: r.probability }),
      }),
    ),
    status: entry.status ?? "open",
    ...present({ group: entry.group, expires: entry.expires, onlyIf: entry.onlyIf }),
  });

  return {
    format: 1,
    title: document.title,
    currency: "EUR",
    start: document.start,
    seed: document.seed ?? "leeway",
    iterations: document.iterations ?? 10_000,
    commitment: { confidence: 0.8, funds: [], ...present({ finishOf: document.commitment?.finishOf }) },
    calendars: calendarsOf(document),
    calendar: planCalendar,
    purpose: { goals: [], scopeIn: [], scopeOut: [], constraints: [], quality: [] },
    benefits: [],
    people: list(document.people).map((person) => ({
      id: person.id,
      name: person.name,
      rate: person.rate ?? 0,
      share: person.share ?? 1,
      capacity: person.capacity ?? 1,
      calendar: person.calendar ?? planCalendar,
      away: list(person.away).map((away) => ({
        ...rangeOf(away),
        share: typeof away === "string" ? 1 : (away.share ?? 1),
      })),
    })),
    respectCapacity: document.respectCapacity ?? true,
    stakeholders: [],
    phases: phases.map((phase) => ({
      name: phase.name,
      responsible: [],
      accountable: [],
      consulted: [],
      informed: [],
      ...present({ calendar: phase.calendar }),
    })),
    tasks: taskDocuments.map(taskOf),
    intervals: [],
    assumptions: list(document.assumptions).map((a) => ({ kind: "assumption", ...entryOf(a) })),
    risks: list(document.risks).map((r) => ({ kind: "risk", ...entryOf(r) })),
    correlations: [],
    overheads: list(document.overheads).map((o) => ({
      id: o.id,
      name: o.name,
      perDay: estimate(o.perDay ?? 0),
      ...present({ from: o.from, to: o.to }),
    })),
    approvals: [],
    objections: [],
    changes: [],
    returnTriggers: [],
    texts: [],
    acceptedFindings: [],
    sha256: "",
    approvalSha256: "",
    ...present({ statusDate: document.statusDate }),
  };
}

/** An estimate in one of its three kinds, the plan's usual shape and bounds filled in. */
function estimateOf(document: PlanDocument, value: EstimateDocument): Estimate {
  if (typeof value === "number") return { kind: "fixed", value, unit: "days" };
  if (Array.isArray(value)) {
    return estimateOf(document, { low: value[0], likely: value[1], high: value[2] });
  }
  const unit = value.unit ?? "days";
  if ("outcomes" in value) {
    const [only, ...others] = value.outcomes;
    // The only outcome has chance 1: it is certain.
    if (only !== undefined && others.length === 0) return { kind: "fixed", value: only.value, unit };
    return { kind: "outcomes", outcomes: [...value.outcomes].sort((a, b) => a.value - b.value), unit };
  }
  const { low, likely, high } = value;
  if (low === high) return { kind: "fixed", value: low, unit };
  const shape = value.shape ?? document.estimates?.shape ?? "pert";
  const bounds = value.bounds ?? document.estimates?.bounds ?? "extremes";
  return { kind: "range", low, high, shape, bounds, unit, ...present({ likely }) };
}

/** A link, where a bare id is finish-to-start without lag. */
function linkOf(link: string | LinkDocument, estimate: (value: EstimateDocument) => Estimate) {
  if (typeof link === "string") {
    return { task: link, link: "finish-to-start" as const, lag: estimate(0) };
  }
  const { lag } = link;
  const named = typeof lag === "object" && "days" in lag ? lag : undefined;
  const plain = typeof lag === "object" && "days" in lag ? lag.days : (lag ?? 0);
  return {
    task: link.task,
    link: link.link ?? ("finish-to-start" as const),
    lag: estimate(plain),
    ...present({ lagCalendar: named?.calendar }),
  };
}

/** A single date is the range of that one day. */
function rangeOf(date: DateDocument) {
  return typeof date === "string" ? { from: date, to: date } : { from: date.from, to: date.to };
}

/** Every calendar by name; `like` resolved: own workdays replace, own holidays add. */
function calendarsOf(document: PlanDocument): Map<string, CalendarDefinition> {
  const written = document.calendars ?? {};
  const resolve = (name: string): CalendarDefinition => {
    const own = written[name];
    if (own === undefined) {
      const workdays: Weekday[] = name === "every-day" ? [...WORKWEEK, "sat", "sun"] : WORKWEEK;
      return { name, workdays, holidays: [] };
    }
    const base = own.like === undefined ? undefined : resolve(own.like);
    return {
      name,
      workdays: own.workdays ?? base?.workdays ?? WORKWEEK,
      holidays: [...(base?.holidays ?? []), ...list(own.holidays).map(rangeOf)],
    };
  };
  const names = new Set(["weekdays", "every-day", ...Object.keys(written)]);
  return new Map([...names].map((name) => [name, resolve(name)]));
}
