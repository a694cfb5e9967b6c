import { who } from "./common.ts";
import { estimate } from "./estimate.ts";
import { listOf } from "./list.ts";
import { drawName, id, label, reference } from "./names.ts";
import { object } from "./object.ts";
import { choice, date, flag, money, number, probability, text } from "./scalars.ts";
import { optional, required } from "./type.ts";

const impact = object("impact", "an impact", {
  tasks: optional(listOf(reference(["task"]), 1), "Ids of the tasks it touches.", { mistakenFor: ["task"] }),
  phase: optional(label("phase", "refers"), "A phase it touches: its tasks, milestones excluded."),
  delay: optional(estimate("time"), "Lengthens each task by working days."),
  factor: optional(estimate("plain"), "Multiplies each task's duration."),
  wait: optional(estimate("time"), "Moves each task's bounds that many working days later."),
  cost: optional(estimate("money"), "Money, once."),
});

const response = object("response", "a response", {
  id: required(id("response"), "its id."),
  action: required(text("what is done"), "what is done.", ["name", "title"]),
  owner: optional(who(), "Who sees to it."),
  due: optional(date(), "By when."),
  cost: optional(estimate("money"), "Spent when adopted, whatever the risk's status."),
  adopted: optional(flag(), "Whether it is part of the plan.", { fallback: false }),
  probability: optional(probability(), "What the risk's probability becomes.", {
    mistakenFor: ["chance", "likelihood"],
  }),
  scale: optional(number("a factor such as 0.6", { min: 0 }), "Part of the impact that remains.", {
    fallback: 1,
  }),
});

/** What an occurred entry did in fact: a fact takes the place of the range. */
const actual = object("actual", "what an occurred entry did in fact", {
  cost: optional(money(), "Money it cost in all, in place of its impacts' `cost`.", {
    mistakenFor: ["spent", "money"],
  }),
  days: optional(
    number("working days"),
    "Working days it took of each task that its impacts delay or make wait, in place of these.",
    { mistakenFor: ["delay", "wait"] },
  ),
});

const shared = {
  cause: optional(text("text"), "What would bring it about."),
  owner: optional(who(), "Who watches it."),
  impacts: optional(listOf(impact), "What it does when it happens.", {
    mistakenFor: ["impact", "effects", "effect"],
  }),
  responses: optional(listOf(response), "What can be done about it.", {
    mistakenFor: ["response", "mitigation", "mitigations", "actions"],
  }),
  group: optional(text("a name"), "Entries of one group exclude each other."),
  status: optional(choice("open", "occurred", "closed"), "Whether it can still happen.", {
    fallback: "open",
  }),
  actual: optional(actual, "What it did in fact, once it has occurred.", { mistakenFor: ["actuals"] }),
  expires: optional(date(), "Last day it can happen."),
  onlyIf: optional(reference(["response"]), "Exists only while this response is adopted."),
};

export const risk = object("risk", "a risk", {
  id: required(id("risk"), "its id."),
  name: required(text("a name"), "what may happen.", ["title", "event", "description"]),
  probability: required(probability(), "its chance, from 0 to 1.", ["chance", "likelihood", "chanceWrong"]),
  ...shared,
});

export const assumption = object("assumption", "an assumption", {
  id: required(id("assumption"), "its id."),
  statement: required(text("a statement"), "what you count on.", ["name", "title", "text"]),
  chanceWrong: required(probability(), "the chance that it proves wrong, from 0 to 1.", [
    "probability",
    "chance",
  ]),
  reviewBy: optional(date(), "When to look at it again."),
  signpost: optional(text("text"), "The sign by which you would notice."),
  tripped: optional(date(), "The day its signpost was seen; changes no number."),
  ...shared,
});

export const correlation = object("correlation", "a correlation", {
  between: required(listOf(drawName(), 2), "ids of tasks, or `cost:TASK` for a cost.", ["tasks", "ids"]),
  coefficient: required(number("a number from -1 to 1", { min: -1, max: 1 }), "from -1 to 1.", [
    "rho",
    "correlation",
  ]),
  cause: optional(text("text"), "Why they move together."),
});
