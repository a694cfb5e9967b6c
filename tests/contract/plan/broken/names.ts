import { HEAD, TASK } from "../plans.ts";
import { type Broken, pair, plan, task } from "./broken.ts";

export const NAMES: Broken[] = [
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

export const CALENDARS: Broken[] = [
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
