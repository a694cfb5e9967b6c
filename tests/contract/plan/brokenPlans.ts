import { HEAD, TASK } from "./plans.ts";

export interface Broken {
  name: string;
  text: string;
  code: string;
  path: string;
  /** What the message holds. */
  says: string;
  /** First place in the text where the problem points to. */
  at?: string;
  severity?: "warning";
}

/** One document for each rule, with the least beside it. */
const plan = (
  name: string,
  more: string,
  code: string,
  path: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken => ({
  name,
  text: `${HEAD}${more}${/^tasks:/m.test(more) ? "" : `\n${TASK}`}`,
  code,
  path,
  says,
  ...extra,
});
const task = (
  name: string,
  keys: string,
  code: string,
  key: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `tasks:\n  - { id: a, name: A, ${keys} }\n`,
    code,
    key === "" ? "tasks[0]" : `tasks[0].${key}`,
    says,
    extra,
  );
const risk = (
  name: string,
  keys: string,
  code: string,
  key: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `risks:\n  - { id: r, name: R, ${keys} }`,
    code,
    key === "" ? "risks[0]" : `risks[0].${key}`,
    says,
    extra,
  );
const pair = (
  name: string,
  second: string,
  code: string,
  path: string,
  says: string,
  extra: Partial<Broken> = {},
): Broken =>
  plan(
    name,
    `tasks:\n  - { id: a, name: A, duration: 1 }\n  - { id: b, name: B, duration: 1, ${second} }\n`,
    code,
    path,
    says,
    extra,
  );

const FORM: Broken[] = [
  plan(
    "an unknown key suggests the nearest",
    "statusDat: 2027-02-01",
    "unknown-key",
    "statusDat",
    "Did you mean `statusDate`?",
    { at: "statusDat" },
  ),
  plan(
    "snake case suggests the key",
    "status_date: 2027-02-01",
    "unknown-key",
    "status_date",
    "Did you mean `statusDate`?",
  ),
  task(
    "a word of the trade suggests the key",
    "duration: 1, predecessors: []",
    "unknown-key",
    "predecessors",
    "Did you mean `after`?",
  ),
  {
    name: "a missing key",
    text: `format: 1\nstart: 2027-01-04\n${TASK}`,
    code: "missing-key",
    path: "",
    says: "A plan needs `title`.",
  },
  {
    name: "another format",
    text: `format: 2\ntitle: T\nstart: 2027-01-04\n${TASK}`,
    code: "not-a-choice",
    path: "format",
    says: "Write 1.",
  },
  { name: "no task", text: `${HEAD}tasks: []`, code: "too-few", path: "tasks", says: "At least one item" },
  {
    name: "a title with a colon",
    text: `format: 1\ntitle: Move: the clinic\nstart: 2027-01-04\n${TASK}`,
    code: "colon-in-text",
    path: "",
    says: 'needs quotes. Write title: "Move: the clinic".',
    at: "Move:",
  },
  plan(
    "a name with a colon",
    "tasks:\n  - id: a\n    name: Phase 1: dig\n    duration: 1\n",
    "colon-in-text",
    "",
    'Write name: "Phase 1: dig".',
    { at: "Phase 1:" },
  ),
  plan("an empty value", "commitment:", "wrong-type", "commitment", "commitment"),
  plan("a repeated key", "seed: a\nseed: b", "repeated-key", "seed", "`seed` is here twice.", {
    at: "seed: b",
  }),
  plan("true as text", "seed: true", "wrong-type", "seed", 'Put it between quotes: "true".', { at: "true" }),
  plan(
    "a number that is other text in JSON",
    "seed: 1.0",
    "number-as-text",
    "seed",
    'Put it between quotes: "1.0".',
    { at: "1.0" },
  ),
  plan(
    "a percentage",
    "commitment: { confidence: 80% }",
    "wrong-type",
    "commitment.confidence",
    "`80%`: A confidence such as 0.8 belongs here. Write 0.8.",
    { at: "80%" },
  ),
  risk("a probability in per cent", "probability: 30%", "wrong-type", "probability", "Write 0.3.", {
    at: "30%",
  }),
  risk(
    "a probability above 1",
    "probability: 30",
    "out-of-range",
    "probability",
    "Write 0.3 if 30 % is meant.",
    { at: "30 }" },
  ),
  risk("odds", "probability: 1 in 4", "wrong-type", "probability", "Write 0.25."),
  plan(
    "certainty as a confidence",
    "commitment: { confidence: 1 }",
    "out-of-range",
    "commitment.confidence",
    "strictly between 0 and 1",
  ),
  plan(
    "a German date",
    "commitment: { finishBy: 01.09.2027 }",
    "bad-format",
    "commitment.finishBy",
    "`01.09.2027`: A date is written year-month-day. Write 2027-09-01.",
    { at: "01.09" },
  ),
  plan(
    "a date with slashes",
    "commitment: { finishBy: 13/09/2027 }",
    "bad-format",
    "commitment.finishBy",
    "Write 2027-09-13.",
  ),
  plan(
    "a date with an ambiguous order",
    "commitment: { finishBy: 01/09/2027 }",
    "bad-format",
    "commitment.finishBy",
    "like 2027-02-01",
  ),
  plan(
    "a date in words",
    "commitment: { finishBy: 1 September 2027 }",
    "bad-format",
    "commitment.finishBy",
    "Write 2027-09-01.",
  ),
  plan(
    "a date without zeros",
    "commitment: { finishBy: 2027-9-1 }",
    "bad-format",
    "commitment.finishBy",
    "Write 2027-09-01.",
  ),
  plan(
    "a day that does not exist",
    "commitment: { finishBy: 2027-02-30 }",
    "no-such-date",
    "commitment.finishBy",
    "no such day",
    { at: "2027-02-30" },
  ),
  plan(
    "29 February of a common year",
    "commitment: { finishBy: 2100-02-29 }",
    "no-such-date",
    "commitment.finishBy",
    "no such day",
  ),
  plan("iterations of none", "iterations: 0", "out-of-range", "iterations", "from 1 to 10000000"),
  plan("iterations in parts", "iterations: 10.5", "out-of-range", "iterations", "A whole number"),
  plan("too many iterations", "iterations: 10000001", "out-of-range", "iterations", "from 1 to 10000000"),
  plan("infinite money", "commitment: { budget: .inf }", "wrong-type", "commitment.budget", "plain number"),
  plan(
    "money past all accounting",
    "commitment: { budget: 1e308 }",
    "out-of-range",
    "commitment.budget",
    "at most 1000000000000000",
  ),
  plan(
    "money grouped by dots",
    "commitment: { budget: 210.000 }",
    "grouped-digits",
    "commitment.budget",
    "`210.000`: This reads as 210; the dot is the decimal point. Write 210000",
    { severity: "warning", at: "210.000" },
  ),
  plan(
    "money grouped by commas",
    "commitment: { budget: '210,000' }",
    "wrong-type",
    "commitment.budget",
    "Write 210000; the dot is the decimal point.",
  ),
  plan(
    "money grouped twice by dots",
    "commitment: { budget: 1.210.000 }",
    "wrong-type",
    "commitment.budget",
    "Write 1210000.",
  ),
  plan(
    "money with its currency",
    "commitment: { budget: 210 000 EUR }",
    "wrong-type",
    "commitment.budget",
    "Write 210000.",
  ),
  plan("a currency sign", "currency: €", "bad-format", "currency", "ISO 4217"),
  task(
    "a decimal comma",
    "duration: '2,5'",
    "wrong-type",
    "duration",
    "Write 2.5; the dot is the decimal point.",
  ),
  task("a duration with its unit", "duration: 5 days", "wrong-type", "duration", "Write 5."),
  task("a number in quotes", "duration: '5'", "wrong-type", "duration", "Write 5 without quotes."),
  task("an estimate of two numbers", "duration: [5, 9]", "too-few", "duration", "low, likely, high"),
  task("a word instead of a flag", "duration: 1, holdToPlan: yes", "wrong-type", "holdToPlan", "Write true."),
  pair(
    "a mistyped choice",
    "after: { task: a, link: start-to-strat }",
    "not-a-choice",
    "tasks[1].after.link",
    "Write start-to-start.",
  ),
  {
    name: "an id in capitals",
    text: `${HEAD}tasks: { id: Open Day, name: A, duration: 1 }`,
    code: "bad-format",
    path: "tasks.id",
    says: "Write open-day.",
    at: "Open Day",
  },
  plan("half a character", 'seed: "\\uD800"', "encoding", "seed", "Half a character"),
  plan("a lost character", "seed: Z\uFFFDrich", "lost-character", "seed", "UTF-8", { severity: "warning" }),
];

const NAMES: Broken[] = [
  {
    name: "an id used twice",
    text: `${HEAD}people: { id: a, name: P }\n${TASK}`,
    code: "repeated-id",
    path: "tasks[0].id",
    says: "people has this id already",
    at: "a, name: A",
  },
  pair(
    "an unknown task suggests the nearest id",
    "after: [aa]",
    "unknown-id",
    "tasks[1].after[0]",
    "Did you mean `a`?",
    { at: "aa]" },
  ),
  task(
    "a person where there are none",
    "duration: 1, people: [tam]",
    "unknown-id",
    "people[0]",
    "No person has this id.",
  ),
  plan(
    "an id of the wrong kind",
    "people: { id: p, name: P }\ncommitment: { finishOf: p }",
    "wrong-kind",
    "commitment.finishOf",
    "`p` is a person; a task belongs here.",
  ),
  task(
    "an unknown calendar",
    "duration: 1, calendar: weekday",
    "unknown-calendar",
    "calendar",
    "Did you mean `weekdays`?",
  ),
  plan(
    "an undeclared phase",
    "phases: { name: Build }\ntasks: { id: a, name: A, duration: 1, phase: Biuld }\n",
    "unknown-phase",
    "tasks.phase",
    "Did you mean `Build`?",
  ),
  plan(
    "two phases of one name",
    "phases: [{ name: Build }, { name: Build }]",
    "repeated-name",
    "phases[1].name",
    "own name",
  ),
  task(
    "only if what is not a response",
    "duration: 1, onlyIf: x",
    "unknown-id",
    "onlyIf",
    "No response has this id.",
  ),
  task(
    "an estimator nobody knows",
    "duration: 1, estimatedBy: The vendor",
    "unknown-id",
    "estimatedBy",
    "No person or stakeholder",
    { severity: "warning" },
  ),
  plan(
    "an old id that is still in use",
    "tasks:\n - { id: a, name: A, duration: 1 }\n - { id: b, name: B, duration: 1, was: a }\n",
    "old-id-taken",
    "tasks[1].was",
    "share their random draws",
    { severity: "warning" },
  ),
];

const TASKS: Broken[] = [
  task("neither duration nor effort", "priority: 1", "no-duration", "", "needs `duration` or `effort`"),
  plan(
    "both duration and effort",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, duration: 1, effort: 1, people: p }",
    "duration-and-effort",
    "tasks.effort",
    "not both",
  ),
  task("effort without a person", "effort: 3", "effort-without-people", "effort", "Effort needs a person"),
  plan(
    "effort with shares of nothing",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, effort: 1, people: { id: p, share: 0 } }",
    "effort-without-people",
    "tasks.effort",
    "sum to 0",
  ),
  task(
    "a milestone with a duration",
    "milestone: true, duration: 1",
    "milestone-key",
    "duration",
    "has no `duration`",
  ),
  plan(
    "a milestone with people",
    "people: { id: p, name: P }\ntasks: { id: a, name: A, milestone: start, people: p }",
    "milestone-key",
    "tasks.people",
    "has no `people`",
  ),
  pair(
    "a link made twice",
    "after: [a, { task: a, link: finish-to-start }]",
    "repeated-link",
    "tasks[1].after[1]",
    "a is linked finish-to-start twice.",
  ),
  plan(
    "a loop shows its way",
    "tasks:\n - { id: a, name: A, duration: 1, after: c }\n - { id: b, name: B, duration: 1, after: a }\n - { id: c, name: C, duration: 1, after: { task: b, link: start-to-start } }\n",
    "loop",
    "tasks[0].after",
    "a -> b -> c -> a",
    { at: "c }" },
  ),
  task("a task after itself", "duration: 1, after: a", "loop", "after", "a -> a"),
  plan(
    "a share above capacity",
    "people: { id: tam, name: Tam, capacity: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: { id: tam, share: 1 } }",
    "share-above-capacity",
    "tasks.people.share",
    "`share` 1 of Tam is more than Tam's capacity 0.5. Write at most 0.5.",
  ),
  plan(
    "a bare person above capacity",
    "people: { id: tam, name: Tam, capacity: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: [tam] }",
    "share-above-capacity",
    "tasks.people[0]",
    "Give Tam `share: 0.5` in `people`",
  ),
  plan(
    "a person named twice",
    "people: { id: p, name: P, share: 0.5 }\ntasks: { id: a, name: A, duration: 1, people: [p, p] }",
    "repeated-person",
    "tasks.people[1]",
    "named twice",
  ),
  plan(
    "an absence that ends before it begins",
    "people: { id: p, name: P, away: { from: 2027-03-02, to: 2027-03-01 } }",
    "dates-reversed",
    "people.away.to",
    "Exchange",
  ),
];

const ESTIMATES: Broken[] = [
  task("likely below low", "duration: [5, 3, 9]", "estimate-order", "duration", "likely 3 is below low 5", {
    at: "[5, 3",
  }),
  task(
    "likely above high",
    "duration: [5, 12, 9]",
    "estimate-order",
    "duration",
    "likely 12 is above high 9",
  ),
  task(
    "low above high",
    "duration: { low: 9, likely: 7, high: 5 }",
    "estimate-order",
    "duration",
    "low 9 is above high 5",
  ),
  task(
    "pert without likely",
    "duration: { low: 1, high: 2 }",
    "estimate-shape",
    "duration",
    "pert needs `likely`",
  ),
  task(
    "triangular without likely",
    "duration: { low: 1, high: 2, shape: triangular }",
    "estimate-shape",
    "duration",
    "triangular needs `likely`",
  ),
  task(
    "uniform with likely",
    "duration: { low: 1, likely: 1, high: 2, shape: uniform }",
    "estimate-shape",
    "duration",
    "uniform takes no `likely`",
  ),
  task(
    "normal with extremes",
    "duration: { low: 1, high: 2, shape: normal }",
    "estimate-shape",
    "duration",
    "bounds are percentiles",
  ),
  task(
    "lognormal from zero",
    "duration: { low: 0, high: 2, shape: lognormal, bounds: p10-p90 }",
    "estimate-shape",
    "duration",
    "needs low above 0",
  ),
  plan(
    "a shape from `estimates`",
    "estimates: { shape: uniform }\ntasks: { id: a, name: A, duration: [1, 2, 3] }",
    "estimate-shape",
    "tasks.duration",
    "uniform (from `estimates`) takes no `likely`",
  ),
  task(
    "chances that do not sum to 1",
    "duration: { outcomes: [{ value: 1, chance: 0.5 }, { value: 2, chance: 0.4 }] }",
    "outcome-sum",
    "duration",
    "sum to 0.9",
  ),
  task(
    "a value twice",
    "duration: { outcomes: [{ value: 1, chance: 0.5 }, { value: 1, chance: 0.5 }] }",
    "outcome-repeated",
    "duration.outcomes[1].value",
    "stands once",
  ),
  task(
    "a chance of nothing",
    "duration: { outcomes: [{ value: 1, chance: 1 }, { value: 2, chance: 0 }] }",
    "outcome-chance",
    "duration.outcomes[1].chance",
    "above 0",
  ),
  task(
    "a unit on money",
    "duration: 1, cost: { low: 1, likely: 2, high: 3, unit: weeks }",
    "unknown-key",
    "cost.unit",
    "no key `unit`",
  ),
];

const CALENDARS: Broken[] = [
  plan(
    "a calendar without workdays",
    "calendars: { site: { workdays: [] } }",
    "too-few",
    "calendars.site.workdays",
    "At least one",
  ),
  plan(
    "calendars in a circle",
    "calendars: { x: { like: y }, y: { like: x } }",
    "calendar-loop",
    "calendars.y.like",
    "x -> y -> x",
  ),
  plan(
    "a calendar like one that is not there",
    "calendars: { x: { like: z } }",
    "unknown-calendar",
    "calendars.x.like",
    "No calendar has this name.",
  ),
  plan(
    "a given calendar changed",
    "calendars: { weekdays: { holidays: 2027-01-06 } }",
    "given-calendar",
    "calendars.weekdays",
    "`like: weekdays`",
  ),
  plan(
    "holidays that end before they begin",
    "calendars: { x: { holidays: { from: 2027-02-02, to: 2027-02-01 } } }",
    "dates-reversed",
    "calendars.x.holidays.to",
    "Exchange",
  ),
];

const PROGRESS: Broken[] = [
  task(
    "progress without a status date",
    "duration: 1, started: 2027-01-04",
    "no-status-date",
    "started",
    "needs the plan's `statusDate`",
  ),
  ...(
    [
      [
        "started before the plan",
        "started: 2027-01-03",
        "progress-date",
        "started",
        "before the plan's `start`",
      ],
      [
        "started after the status date",
        "started: 2027-01-20",
        "progress-date",
        "started",
        "after `statusDate`",
      ],
      [
        "finished without having started",
        "finished: 2027-01-05",
        "progress-order",
        "finished",
        "Add `started`.",
      ],
      [
        "finished before it started",
        "started: 2027-01-06, finished: 2027-01-05",
        "progress-order",
        "finished",
        "finished before it started",
      ],
      ["remaining without having started", "remaining: 2", "progress-order", "remaining", "Add `started`"],
      [
        "remaining of a finished task",
        "started: 2027-01-04, finished: 2027-01-05, remaining: 2",
        "progress-order",
        "remaining",
        "Nothing remains",
      ],
      ["spent without having started", "spent: 2", "progress-order", "spent", "Add `started`."],
    ] as const
  ).map(([name, keys, code, key, says]) =>
    plan(
      name,
      `statusDate: 2027-01-12\ntasks:\n - { id: a, name: A, duration: 1, ${keys} }\n`,
      code,
      `tasks[0].${key}`,
      says,
    ),
  ),
];

const REGISTER: Broken[] = [
  risk(
    "an impact on nothing",
    "probability: 0.1, impacts: { delay: 1 }",
    "impact-target",
    "impacts",
    "says what it touches",
  ),
  risk(
    "an impact that does nothing",
    "probability: 0.1, impacts: { tasks: a }",
    "impact-empty",
    "impacts",
    "says what it does",
  ),
  plan(
    "an impact on tasks and a phase",
    "risks: { id: r, name: R, probability: 0.1, impacts: { tasks: a, phase: X, delay: 1 } }\ntasks: { id: a, name: A, phase: X, duration: 1 }",
    "impact-target",
    "risks.impacts.phase",
    "not both",
  ),
  risk(
    "an impact that names a task twice",
    "probability: 0.1, impacts: { tasks: [a, a], delay: 1 }",
    "repeated-task",
    "impacts.tasks",
    "named twice",
  ),
  plan(
    "a milestone that is delayed",
    "risks: { id: r, name: R, probability: 0.1, impacts: { tasks: a, delay: 1 } }\ntasks: { id: a, name: A, milestone: true }",
    "impact-on-milestone",
    "risks.impacts.delay",
    "can only `wait`",
  ),
  plan(
    "a group above certainty",
    "risks:\n - { id: r, name: R, probability: 0.7, group: g }\nassumptions:\n - { id: s, statement: S, chanceWrong: 0.4, group: g }",
    "group-sum",
    "assumptions[0].chanceWrong",
    "sum to 1.1",
  ),
  plan(
    "a response that raises a slot",
    "risks: { id: r, name: R, probability: 0.2, group: g, responses: { id: x, action: X, adopted: true, probability: 0.3 } }",
    "group-raised",
    "risks.responses.probability",
    "from 0.2 to 0.3",
  ),
  plan(
    "two of a group have occurred",
    "risks:\n - { id: r, name: R, probability: 0.1, group: g, status: occurred }\n - { id: s, name: S, probability: 0.1, group: g, status: occurred }",
    "group-occurred",
    "risks[1].status",
    "`r` of group g",
  ),
];

const TWO =
  "tasks:\n - { id: a, name: A, duration: 1, cost: 5 }\n - { id: b, name: B, duration: 1 }\n - { id: m, name: M, milestone: true }\n";
const correlation = (name: string, sets: string, code: string, path: string, says: string): Broken =>
  plan(name, `${TWO}correlations: ${sets}`, code, path, says);
const OTHER: Broken[] = [
  correlation(
    "a set of one",
    "[{ between: a, coefficient: 0.5 }]",
    "too-few",
    "correlations[0].between",
    "At least 2",
  ),
  correlation(
    "a coefficient past 1",
    "[{ between: [a, b], coefficient: 1.2 }]",
    "out-of-range",
    "correlations[0].coefficient",
    "from -1 to 1",
  ),
  correlation(
    "a pair named twice",
    "[{ between: [a, b], coefficient: 0.5 }, { between: [b, a], coefficient: 0.2 }]",
    "repeated-pair",
    "correlations[1].between[1]",
    "correlations[0]",
  ),
  correlation(
    "a name twice in a set",
    "[{ between: [a, b, a], coefficient: 0.5 }]",
    "repeated-member",
    "correlations[0].between[2]",
    "stands twice",
  ),
  correlation(
    "a milestone in a set",
    "[{ between: [a, m], coefficient: 0.5 }]",
    "no-draw",
    "correlations[0].between[1]",
    "is a milestone",
  ),
  correlation(
    "a cost that is not there",
    '[{ between: [a, "cost:b"], coefficient: 0.5 }]',
    "no-draw",
    "correlations[0].between[1]",
    "has no `cost`",
  ),
  correlation(
    "an unknown task",
    '[{ between: [a, "cost:zebra"], coefficient: 0.5 }]',
    "unknown-id",
    "correlations[0].between[1]",
    "No task has this id.",
  ),
  plan(
    "a benefit of nothing",
    "benefits: { id: x, name: X, per: year }",
    "no-amount",
    "benefits",
    "needs `amount` or `quantity`",
  ),
  plan(
    "a benefit both ways",
    "benefits: { id: x, name: X, per: year, amount: 1, quantity: 1 }",
    "amount-and-quantity",
    "benefits.quantity",
    "not both",
  ),
  plan(
    "worth without a quantity",
    "benefits: { id: x, name: X, per: year, amount: 1, worth: 1 }",
    "without-quantity",
    "benefits.worth",
    "belongs to a `quantity`",
  ),
  plan(
    "a benefit without its period",
    "benefits: { id: x, name: X, amount: 1 }",
    "no-period",
    "benefits",
    "per year",
    { severity: "warning" },
  ),
  plan("lateness after no day", "lateness: { once: 5 }", "no-deadline", "lateness", "Add `after`", {
    severity: "warning",
  }),
  plan("an overhead of nothing", "overheads: { id: o, name: O }", "no-amount", "overheads", "costs nothing", {
    severity: "warning",
  }),
];

export const BROKEN: Broken[] = [
  ...FORM,
  ...NAMES,
  ...TASKS,
  ...ESTIMATES,
  ...CALENDARS,
  ...PROGRESS,
  ...REGISTER,
  ...OTHER,
];
