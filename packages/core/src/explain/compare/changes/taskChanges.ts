import type { Id, Task } from "../../../plan/types.ts";
import {
  estimateChange,
  estimateWords,
  moneyUnit,
  sameEstimate,
  timeUnit,
  type Unit,
} from "../words/estimateWords.ts";
import { dateWords, listWords, numberWords, percentWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { linkChanges } from "./linkChanges.ts";
import { calendarPlace, idsOf, memberPlace, otherCalendar, type Pair } from "./pair.ts";
import { places } from "./places.ts";
import { progressChanges } from "./progressChanges.ts";

/** Every change of tasks that can move a number. */
export function taskChanges(pair: Pair): Change[] {
  const { older, newer } = pair;
  const touchedPhases = new Set(
    [...older.entries.values(), ...newer.entries.values()].flatMap(({ impacts }) =>
      impacts.map(({ phase }) => phase),
    ),
  );
  return idsOf(older.tasks, newer.tasks).flatMap((id) => {
    const before = older.tasks.get(id);
    const after = newer.tasks.get(id);
    if (before !== undefined && after !== undefined) return changesOf(pair, before, after, touchedPhases);
    return (before ?? after) === undefined
      ? []
      : [presence(pair, (after ?? before) as Task, after !== undefined)];
  });
}

function presence(pair: Pair, task: Task, added: boolean): Change {
  const waits = task.after.map((link) => pair.nameOf(link.task));
  const after = waits.length === 0 || waits.length > 3 ? "" : `, after ${listWords(waits)}`;
  const what = task.milestone === false ? "task" : "milestone";
  const size = workWords(task);
  return {
    places: [places.task(task.id)],
    kind: "scope",
    ids: [task.id],
    subject: task.name,
    text: added
      ? `new ${what}${size === "" ? "" : `, ${size}`}${after}`
      : `${what} left out${size === "" ? "" : ` (it was ${size})`}`,
  };
}

function workOf(task: Task): { unit: Unit; estimate: Task["duration"] } {
  return { estimate: task.duration ?? task.effort, unit: timeUnit(task.effort !== undefined) };
}

function workWords(task: Task): string {
  const { estimate, unit } = workOf(task);
  return estimate === undefined ? "" : estimateWords(estimate, unit);
}

function changesOf(
  pair: Pair,
  before: Task,
  after: Task,
  touchedPhases: ReadonlySet<string | undefined>,
): Change[] {
  const { id, name } = after;
  const change = (place: string, kind: Change["kind"], text: string): Change[] =>
    text === "" ? [] : [{ places: [place], kind, ids: [id], subject: name, text }];
  const { currency } = pair.newer.plan;
  const money = (key: "cost" | "costPerDay", what: string) => {
    const unit = moneyUnit(currency, key === "cost" ? "" : "a day");
    const text = estimateChange(before[key], after[key], unit);
    return change(places.taskMoney(id), "money", text === "" ? "" : `${what} ${text}`);
  };
  return [
    ...change(
      places.work(id),
      before.milestone === after.milestone ? "estimates" : "scope",
      workChange(before, after),
    ),
    ...money("cost", "cost"),
    ...money("costPerDay", "cost"),
    ...linkChanges(pair, before, after),
    ...change(places.logic(id), "logic", orderWords(before, after)),
    ...calendarChanges(pair, before, after),
    ...teamChanges(pair, before, after),
    ...change(places.need(id), "scope", needWords(pair, before, after)),
    ...progressChanges(before, after, currency),
    ...(before.phase !== after.phase && (touchedPhases.has(before.phase) || touchedPhases.has(after.phase))
      ? change(
          places.taskPhase(id),
          "risks",
          `phase from ${before.phase ?? "none"} to ${after.phase ?? "none"}, whose risks touch it`,
        )
      : []),
  ];
}

function workChange(before: Task, after: Task): string {
  if (before.milestone !== after.milestone) {
    if (after.milestone !== false) {
      if (before.milestone === false) return `now a milestone, no longer work of ${workWords(before)}`;
      return after.milestone === "start" ? "now read as a start" : "now read as a finish";
    }
    return `now work of ${workWords(after)}, no longer a milestone`;
  }
  const was = workOf(before);
  const is = workOf(after);
  if ((before.effort === undefined) === (after.effort === undefined)) {
    return estimateChange(was.estimate, is.estimate, is.unit);
  }
  return `from ${workWords(before)} to ${workWords(after)}${after.effort === undefined ? "" : " of effort"}`;
}

function orderWords(before: Task, after: Task): string {
  const parts: string[] = [];
  if (before.notBefore !== after.notBefore) {
    if (after.notBefore === undefined) parts.push(`may start before ${dateWords(before.notBefore ?? "")}`);
    else if (before.notBefore === undefined) parts.push(`not before ${dateWords(after.notBefore)}`);
    else parts.push(`not before ${dateWords(after.notBefore)}, instead of ${dateWords(before.notBefore)}`);
  }
  if (before.holdToPlan !== after.holdToPlan) {
    parts.push(
      after.holdToPlan ? "never starts before its start as written" : "may start earlier than written",
    );
  }
  if (before.priority !== after.priority) {
    parts.push(`priority from ${numberWords(before.priority)} to ${numberWords(after.priority)}`);
  }
  return listWords(parts);
}

function calendarChanges(pair: Pair, before: Task, after: Task): Change[] {
  const { id, name } = after;
  const list: Change[] = [];
  const place = calendarPlace(pair, before, after);
  const base = { kind: "calendar" as const, ids: [id], subject: name };
  if (place === places.taskCalendar(id)) {
    list.push({ ...base, places: [place], text: `calendar from ${before.calendar} to ${after.calendar}` });
  }
  if (otherCalendar(pair, before.unbroken, after.unbroken)) {
    const text =
      after.unbroken === undefined
        ? `may be broken off over days off of ${before.unbroken}`
        : `may not be broken off over days off of ${after.unbroken}`;
    list.push({ ...base, places: [places.taskCalendar(id)], text });
  }
  return list;
}

function teamChanges(pair: Pair, before: Task, after: Task): Change[] {
  const ids: Id[] = [...new Set([...before.people, ...after.people].map((member) => member.id))].sort();
  return ids.flatMap((person): Change[] => {
    const place = memberPlace(pair, before, after, person);
    if (place === undefined || place === places.usualShare(person)) return [];
    const was = before.people.find((member) => member.id === person);
    const is = after.people.find((member) => member.id === person);
    const who = pair.nameOf(person);
    const share = (value: number) => (value === 1 ? "" : ` with a share of ${numberWords(value)}`);
    let text: string;
    if (is === undefined) text = `${who} no longer works on it`;
    else if (was === undefined) {
      const fresh = pair.older.people.has(person) ? "" : " (new)";
      text = `${who}${fresh} works on it${share(is.share)}`;
    } else if (was.share !== is.share) {
      text = `share of ${who} from ${numberWords(was.share)} to ${numberWords(is.share)}`;
    } else text = is.along ? `no longer waits for the days of ${who}` : `works only on the days of ${who}`;
    return [{ places: [place], kind: "people", ids: [after.id, person], subject: after.name, text }];
  });
}

function needWords(pair: Pair, before: Task, after: Task): string {
  const parts: string[] = [];
  if (before.chance !== after.chance) {
    parts.push(
      `chance that it is needed from ${percentWords(before.chance)} to ${percentWords(after.chance)}`,
    );
  }
  if (before.onlyIf !== after.onlyIf) {
    parts.push(
      after.onlyIf === undefined
        ? `needed whether or not “${pair.nameOf(before.onlyIf ?? "")}” is adopted`
        : `needed only if “${pair.nameOf(after.onlyIf)}” is adopted`,
    );
  }
  return listWords(parts);
}

/** Whether a task's own draws or amounts of work differ. */
export function sameWork(before: Task, after: Task): boolean {
  return (
    before.milestone === after.milestone &&
    sameEstimate(before.duration, after.duration) &&
    sameEstimate(before.effort, after.effort)
  );
}
