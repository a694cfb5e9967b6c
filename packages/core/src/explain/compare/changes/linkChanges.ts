import type { Link, Task } from "../../../plan/types.ts";
import { sameEstimate } from "../words/estimateWords.ts";
import { lagChange, linkAdded, linkRemoved } from "../words/linkWords.ts";
import type { Change } from "./change.ts";
import { otherCalendar, type Pair } from "./pair.ts";
import { places } from "./places.ts";

/** What a task waits for, now and before. */
export function linkChanges(pair: Pair, before: Task, after: Task): Change[] {
  const was = byKey(before.after);
  const is = byKey(after.after);
  const change = (text: string, clause: boolean): Change => ({
    places: [places.logic(after.id)],
    kind: "logic",
    ids: [after.id],
    subject: after.name,
    text,
    ...(clause ? { clause } : {}),
  });
  const list: Change[] = [];
  for (const [key, link] of is) {
    const old = was.get(key);
    if (old === undefined) list.push(change(linkAdded(link, pair.nameOf), true));
    else if (!sameEstimate(old.lag, link.lag) || otherCalendar(pair, old.lagCalendar, link.lagCalendar)) {
      list.push(change(lagChange(old, link, pair.nameOf), false));
    }
  }
  for (const [key, link] of was) if (!is.has(key)) list.push(change(linkRemoved(link, pair.nameOf), true));
  return list;
}

function byKey(links: readonly Link[]): Map<string, Link> {
  return new Map(
    links
      .map((link): [string, Link] => [`${link.task} ${link.link}`, link])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}
