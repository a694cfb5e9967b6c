import type { Place } from "../source/place.ts";
import { shorthand } from "./choose.ts";
import { enteredBy, estimatedBy, ROLES } from "./common.ts";
import { type EstimateDraft, estimate } from "./estimate.ts";
import { listOf } from "./list.ts";
import { id, label, reference } from "./names.ts";
import { object } from "./object.ts";
import { opinion } from "./opinion.ts";
import type { Reading } from "./reading.ts";
import { choice, date, flag, money, number, probability, text } from "./scalars.ts";
import { type Definitions, type JsonSchema, optional, required, type Type } from "./type.ts";

export const LINKS = ["finish-to-start", "start-to-start", "finish-to-finish", "start-to-finish"] as const;

export interface LagDraft {
  days?: EstimateDraft | undefined;
  calendar?: string | undefined;
}
const days = estimate("time");
const lagObject: Type<LagDraft> = object("lag", "a lag", {
  days: required(days, "working days, an estimate; may be negative."),
  calendar: optional(
    label("calendar", "refers"),
    "Calendar the lag is counted on; by default the successor's.",
  ),
});
/** An estimate in working days, or `{ days, calendar }`. */
const lag: Type<LagDraft> = {
  what: `${days.what}, or { days, calendar }`,
  read(place: Place, reading: Reading) {
    if (place.node.kind === "map" && (place.node.entries.has("days") || place.node.entries.has("calendar"))) {
      return lagObject.read(place, reading);
    }
    const draft = days.read(place, reading);
    return draft === undefined ? undefined : reading.settle({ days: draft }, place);
  },
  schema: (definitions: Definitions): JsonSchema => ({
    anyOf: [days.schema(definitions), lagObject.schema(definitions)],
  }),
};

const link = shorthand(
  reference(["task"]),
  object("link", "a link", {
    task: required(reference(["task"]), "the id of the task it hangs on.", ["id", "from", "predecessor"]),
    link: optional(choice(...LINKS), "Which ends are linked.", {
      fallback: "finish-to-start",
      mistakenFor: ["type", "kind"],
    }),
    lag: optional(lag, "Working days between the two ends; may be negative.", {
      fallback: 0,
      mistakenFor: ["delay", "days"],
    }),
  }),
  (task) => ({ task }),
);

const share = () => number("a share of a day, such as 0.5", { min: 0 });
const member = shorthand(
  reference(["person"]),
  object("task-person", "a person on a task", {
    id: required(reference(["person"]), "the person's id.", ["person", "who", "name"]),
    share: optional(share(), "Part of a day on this task; by default the person's own `share`.", {
      mistakenFor: ["allocation", "percent", "units"],
    }),
    along: optional(flag(), "Costs and holds a share, but does not limit the task's days.", {
      fallback: false,
    }),
  }),
  (person) => ({ id: person }),
);

export const task = object("task", "a task", {
  id: required(id("task"), "its id."),
  name: required(text("a name"), "what it is called.", ["title", "task", "summary"]),
  phase: optional(label("phase", "refers"), "Name of its phase."),
  scope: optional(reference(["scope item"]), "Id of the scope item it delivers."),
  duration: optional(estimate("time"), "Elapsed working days; exactly one of `duration` and `effort`.", {
    mistakenFor: ["days", "length", "estimate"],
  }),
  effort: optional(estimate("time"), "Person-days, divided by its people's shares to give the duration.", {
    mistakenFor: ["work", "person-days", "hours"],
  }),
  milestone: optional(
    choice(true, false, "start"),
    "A point in time; `start` where something begins there.",
    {
      fallback: false,
    },
  ),
  target: optional(date(), "Measured, never forces dates.", {
    mistakenFor: ["deadline", "due-date", "dueDate"],
  }),
  after: optional(listOf(link), "Tasks it waits for.", {
    mistakenFor: [
      "predecessors",
      "predecessor",
      "depends",
      "dependsOn",
      "depends-on",
      "dependencies",
      "requires",
    ],
  }),
  notBefore: optional(date(), "Earliest start.", { mistakenFor: ["earliest", "from", "start"] }),
  holdToPlan: optional(flag(), "Never starts before its start in the plan as written.", { fallback: false }),
  calendar: optional(label("calendar", "refers"), "Its calendar; by default its phase's, then the plan's."),
  unbroken: optional(label("calendar", "refers"), "May not span a non-working day of this calendar."),
  people: optional(listOf(member), "Who does it.", {
    mistakenFor: ["resources", "who", "assigned", "assignees", "team"],
  }),
  cost: optional(estimate("money"), "Money once.", { mistakenFor: ["price", "budget"] }),
  due: optional(choice("start", "finish"), "When `cost` falls due; by default evenly over the task."),
  costPerDay: optional(estimate("money"), "Money per working day of the task.", {
    mistakenFor: ["dayRate", "perDay", "rate"],
  }),
  priority: optional(number("a number"), "Higher goes first where people are short.", { fallback: 0 }),
  detail: optional(choice("firm", "outline"), "Near work is firm, far work an outline."),
  chance: optional(probability(), "Probability that it is needed at all.", {
    fallback: 1,
    mistakenFor: ["probability", "likelihood"],
  }),
  onlyIf: optional(reference(["response"]), "Needed only while this response is adopted."),
  ...ROLES,
  estimatedBy: estimatedBy(),
  basis: optional(text("text"), "Why they would know."),
  enteredBy: enteredBy("Who put it, or its estimate, into the plan: ids; changes no number."),
  started: optional(date(), "Day it started.", { mistakenFor: ["actualStart", "begun"] }),
  finished: optional(date(), "Day it finished.", { mistakenFor: ["actualFinish", "done", "completed"] }),
  remaining: optional(estimate("time"), "Working days that remain of a started task."),
  spent: optional(money(), "Money spent on it so far.", { mistakenFor: ["actualCost"] }),
  opinions: optional(listOf(opinion), "What people said before its estimate was settled; changes no number."),
  detailOf: optional(id(undefined), "Id of the outline task, in an earlier plan, that it details.", {
    mistakenFor: ["details", "partOf", "parent"],
  }),
});
