import type { Plan } from "@leeway/core";
import type { Kind } from "./questions.ts";

/** Questions whose answer tells of decisions and of what people said, too. */
const telling: ReadonlySet<Kind> = new Set<Kind>(["findings", "brief", "compare"]);

/** What stands in a plan that its hash leaves out; it moves no number, and some answers speak of it. */
export function talkOf({ approvals, objections, changes, acceptedFindings, tasks }: Plan): string {
  const said = tasks.flatMap(({ id, opinions, enteredBy }) =>
    (opinions ?? []).length === 0 && enteredBy === undefined ? [] : [[id, opinions, enteredBy]],
  );
  return JSON.stringify([approvals, objections, changes, acceptedFindings, said]);
}

export function tellsOfTalk(kind: Kind): boolean {
  return telling.has(kind);
}
