import { type Broken, plan, risk } from "./broken.ts";

export const REGISTER: Broken[] = [
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
    "an impact on a phase of nothing",
    "phases: { name: X }\nrisks: { id: r, name: R, probability: 0.1, impacts: { phase: X, delay: 1 } }",
    "impact-nothing",
    "risks.impacts.phase",
    "nothing would happen",
    { severity: "warning" },
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

export const OTHER: Broken[] = [
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
  plan(
    "a return trigger without a condition",
    "returnTriggers: { id: t, name: T }",
    "trigger-condition",
    "returnTriggers",
    "has a condition",
  ),
  plan(
    "a return trigger with two conditions",
    "returnTriggers: [{ id: t, costAbove: 1, finishLaterThan: 2027-05-01 }]",
    "trigger-condition",
    "returnTriggers[0].finishLaterThan",
    "one condition only",
  ),
  plan(
    "a return trigger on no assumption",
    "returnTriggers: { id: t, signpost: floor }",
    "unknown-id",
    "returnTriggers.signpost",
    "No assumption",
  ),
  plan(
    "a signpost seen after the status date",
    "statusDate: 2027-01-08\nassumptions: { id: s, statement: S, chanceWrong: 0.1, tripped: 2027-01-09 }",
    "progress-date",
    "assumptions.tripped",
    "after `statusDate`",
  ),
  plan(
    "a signpost seen without a status date",
    "assumptions: { id: s, statement: S, chanceWrong: 0.1, tripped: 2027-01-09 }",
    "no-status-date",
    "assumptions.tripped",
    "needs the plan's `statusDate`",
  ),
];
