import { SHAPES } from "../shapes.ts";
import { acceptedFinding } from "./acceptedFinding.ts";
import { who } from "./common.ts";
import { decision } from "./decision.ts";
import { BOUNDS, estimate } from "./estimate.ts";
import { listOf } from "./list.ts";
import { id, label, reference } from "./names.ts";
import { object } from "./object.ts";
import { pageText } from "./pageText.ts";
import { calendars, person, phase, stakeholder } from "./people.ts";
import { appraisal, benefit, purpose } from "./purpose.ts";
import { assumption, correlation, risk } from "./register.ts";
import { returnTrigger } from "./returnTrigger.ts";
import { choice, date, flag, moneyFromZero, number, pattern, text } from "./scalars.ts";
import { task } from "./task.ts";
import { optional, required } from "./type.ts";

const commitment = object("commitment", "the commitment", {
  finishOf: optional(reference(["task"]), "Whose finish is promised; by default the plan's.", {
    mistakenFor: ["task"],
  }),
  confidence: optional(
    number("a confidence such as 0.8", { min: 0, max: 1, open: true }),
    "The level committed to.",
    { fallback: 0.8, mistakenFor: ["level", "percentile"] },
  ),
  finishBy: optional(date(), "The date asked for.", { mistakenFor: ["deadline", "by", "date"] }),
  budget: optional(moneyFromZero(), "The money available."),
  reserve: optional(moneyFromZero(), "The sponsor's reserve, not part of `budget`."),
  holder: optional(who(), "Who holds the contingency."),
  releaseRule: optional(text("how contingency is released"), "Who releases contingency, and how; in words."),
  funds: optional(
    listOf(
      object("funds", "a release of money", {
        from: required(date(), "the day it is there.", ["date"]),
        amount: required(moneyFromZero(), "how much.", ["money"]),
      }),
    ),
    "When money is released.",
  ),
});

const lateness = object("lateness", "the cost of lateness", {
  after: optional(date(), "Late after this day; by default `commitment.finishBy`."),
  perWeek: optional(estimate("money"), "Money per week late."),
  once: optional(estimate("money"), "Money when late at all."),
});

const estimates = object("estimates", "what every estimate is unless it says", {
  shape: optional(choice(...SHAPES), "Shape of every estimate that does not say.", { fallback: "pert" }),
  bounds: optional(choice(...BOUNDS), "Bounds of every estimate that does not say.", {
    fallback: "extremes",
  }),
});

const interval = object("interval", "an interval", {
  id: required(id("interval"), "its id."),
  name: optional(text("a name"), "What it is called; by default its id."),
  from: required(reference(["task"]), "the task from whose finish it runs."),
  to: required(reference(["task"]), "the task to whose start it runs."),
  atMost: optional(number("a number of calendar days"), "Calendar days it should not exceed."),
});

const overhead = object("overhead", "an overhead", {
  id: required(id("overhead"), "its id."),
  name: required(text("a name"), "what it is called."),
  perDay: optional(estimate("money"), "Money per working day.", {
    fallback: 0,
    mistakenFor: ["costPerDay", "rate", "cost"],
  }),
  from: optional(reference(["task"]), "Runs from this task's start; by default the plan's."),
  to: optional(reference(["task"]), "Runs to this task's finish; by default the plan's."),
});

const approval = object("approval", "an approval", {
  who: required(who(), "who decides.", ["by", "id"]),
  decision: optional(choice("pending", "approve", "approve-subject-to", "rework"), "The decision.", {
    fallback: "pending",
  }),
  date: optional(date(), "When it was taken."),
  conditions: optional(text("text"), "What it is subject to."),
  conditionsBy: optional(date(), "The day by which the conditions have to be met.", {
    mistakenFor: ["until", "expires"],
  }),
  conditionsMet: optional(date(), "The day on which they were met."),
  plan: optional(text("a hash"), "Hash of the plan it is bound to."),
  by: optional(who(), "Who signed in their place."),
});

const objection = object("objection", "an objection", {
  id: required(id("objection"), "its id."),
  who: optional(who(), "Who raised it."),
  date: optional(date(), "When."),
  text: optional(text("text"), "What it says."),
  answer: optional(text("text"), "What was answered."),
  evidence: optional(text("text"), "What supports the answer."),
  state: optional(choice("open", "answered", "accepted"), "Where it stands.", { fallback: "open" }),
  changedPlan: optional(flag(), "Whether it changed the plan.", { fallback: false }),
  acceptedBy: optional(who(), "Who accepted that it stands."),
  reopenedBy: optional(who(), "Who opened it again after it was answered or accepted."),
});

const change = object("change", "a change", {
  date: optional(date(), "When."),
  who: optional(who(), "Who decided it."),
  what: optional(text("text"), "What changed."),
  why: optional(text("text"), "Why."),
  approvedBy: optional(who(), "Who agreed to it."),
});

/** The whole format, version 1. */
export const planDocument = object("plan", "a plan", {
  format: required(choice(1), "always 1.", ["version"]),
  title: required(text("a title"), "what the plan is called.", ["name"]),
  start: required(date(), "the first day on which work may happen.", ["startDate", "begin", "from"]),
  tasks: required(listOf(task, 1), "the work, milestones included.", ["task", "activities", "work"]),
  currency: optional(
    pattern("a currency code such as EUR (ISO 4217)", /^[A-Z]{3}$/),
    "Currency of all money.",
    { fallback: "EUR" },
  ),
  statusDate: optional(date(), "The day up to which progress is recorded.", {
    mistakenFor: ["today", "asOf", "dataDate"],
  }),
  seed: optional(text("text"), "Same plan, seed and iterations: same numbers.", { fallback: "leeway" }),
  iterations: optional(
    number("a number of iterations", { min: 1, max: 10_000_000, whole: true }),
    "How many futures are drawn.",
    { fallback: 10000, mistakenFor: ["runs", "trials", "n"] },
  ),
  commitment: optional(commitment, "What is promised, and at which confidence."),
  decision: optional(decision, "What is asked of the approvers."),
  lateness: optional(lateness, "What finishing late costs the organisation."),
  estimates: optional(estimates, "Shape and bounds of every estimate that does not say."),
  calendars: optional(calendars, "Named calendars."),
  calendar: optional(label("calendar", "refers"), "The plan's own calendar.", { fallback: "weekdays" }),
  purpose: optional(purpose, "Why: problem, goals, scope, constraints.", { mistakenFor: ["why"] }),
  benefits: optional(listOf(benefit), "Why it is worth it."),
  appraisal: optional(appraisal, "How benefits are weighed against cost."),
  people: optional(listOf(person), "Who does the work, and when they can.", {
    mistakenFor: ["resources", "team"],
  }),
  respectCapacity: optional(flag(), "Nobody is asked for more than their capacity.", { fallback: true }),
  stakeholders: optional(listOf(stakeholder), "Who has a stake in it."),
  phases: optional(listOf(phase), "Phases in reading order, with defaults for their tasks."),
  intervals: optional(listOf(interval), "Spans to watch."),
  assumptions: optional(listOf(assumption), "What is counted on."),
  risks: optional(listOf(risk), "What may happen."),
  correlations: optional(listOf(correlation), "Estimates that move together."),
  overheads: optional(listOf(overhead), "Money that runs with time."),
  approvals: optional(listOf(approval), "Who decided what."),
  objections: optional(listOf(objection), "What was objected, and the answer."),
  changes: optional(listOf(change), "What changed, and why."),
  returnTriggers: optional(listOf(returnTrigger), "When it comes back to those who approved it.", {
    mistakenFor: ["triggers", "returnTrigger"],
  }),
  texts: optional(listOf(pageText), "Free text between the sections of the page; changes no number."),
  acceptedFindings: optional(
    listOf(acceptedFinding),
    "Findings of `check` that were looked at and accepted.",
  ),
});
