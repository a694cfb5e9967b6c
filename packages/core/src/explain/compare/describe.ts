import type { MoveKind } from "../types.ts";
import { type Change, sentenceOf } from "./changes/change.ts";
import type { Player } from "./gather.ts";
import type { Group } from "./groups/groupChanges.ts";
import { countWords, listWords } from "./words/numbers.ts";

/** More changes of one item than this are counted, not told, in its sentence. */
const told = 3;

const plural: Record<MoveKind, string> = {
  actuals: "records of progress",
  estimates: "changes of estimates",
  scope: "changes of scope",
  logic: "changes of what waits for what",
  people: "changes of people",
  calendar: "changes of calendars",
  risks: "changes of the register",
  money: "changes of rates and costs",
  other: "changes of several kinds",
};

/** The move in one sentence: the change itself; of several the first, and how many more. */
export function whatMoved({ groups, kind }: Player): string {
  const [group] = groups;
  if (group === undefined) return "";
  if (groups.length > 1) return `${groups.length} smaller ${plural[kind]}`;
  const progress = progressWords(group);
  if (progress !== undefined) return progress;
  const [first, ...rest] = bySubject(group.changes);
  if (first === undefined) return "";
  if (rest.length === 0) return first;
  if (rest.length === 1 && rest[0] !== undefined) return `${first}; ${rest[0]}`;
  return `${first}; and ${countWords(rest.length, "change")} that go with it`;
}

/** Changes of one subject in one sentence: "Permit decided: P90 from 45 to 60 working days; cost from 0 to EUR 500". */
function bySubject(changes: readonly Change[]): string[] {
  const subjects = new Map<string, Change[]>();
  for (const change of leadFirst(changes)) {
    const known = subjects.get(change.subject);
    if (known === undefined) subjects.set(change.subject, [change]);
    else known.push(change);
  }
  return [...subjects.values()].map((own) => {
    const [first, ...rest] = own;
    if (first === undefined) return "";
    const more = rest.slice(0, told - 1).map((change) => change.text);
    const left = own.length - 1 - more.length;
    if (left > 0) more.push(`and ${left} more`);
    return [sentenceOf(first), ...more].join("; ");
  });
}

/** What the group is about comes first: a task that came or went, then the others as they are. */
function leadFirst(changes: readonly Change[]): Change[] {
  const rank = ({ kind }: Change) => (kind === "scope" ? 0 : 1);
  return changes
    .map((change, at) => ({ change, at }))
    .sort((a, b) => rank(a.change) - rank(b.change) || a.at - b.at)
    .map(({ change }) => change);
}

/** Progress is told by how much of it there is. */
function progressWords({ kind, changes }: Group): string | undefined {
  const lead = changes.find(({ subject, kind: own }) => own === "actuals" && subject === "Progress");
  if (kind !== "actuals" || lead === undefined) return undefined;
  const rest = changes.filter((change) => change !== lead);
  if (rest.length === 0) return sentenceOf(lead);
  if (rest.length <= told)
    return `${sentenceOf(lead)}: ${rest.map((change) => `${change.subject} ${change.text}`).join("; ")}`;
  const finished = rest.filter(({ text }) => text.includes("finished")).length;
  const others = rest.length - finished;
  const counts = [
    ...(finished > 0 ? [`${countWords(finished, "task")} finished`] : []),
    ...(others > 0 ? [finished > 0 ? `${others} under way` : `${countWords(others, "task")} under way`] : []),
  ];
  return `${sentenceOf(lead)}: ${listWords(counts)}`;
}
