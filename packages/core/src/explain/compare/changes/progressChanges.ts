import type { Task } from "../../../plan/types.ts";
import { estimateChange, estimateWords, timeUnit } from "../words/estimateWords.ts";
import { dateWords, moneyWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { places } from "./places.ts";

/** What has been recorded of a task since. */
export function progressChanges(before: Task, after: Task, currency: string): Change[] {
  const parts: string[] = [];
  const day = (key: "started" | "finished") => {
    const was = before[key];
    const is = after[key];
    if (was === is) return;
    if (is === undefined) parts.push(`no longer ${key}`);
    else parts.push(`${key} ${dateWords(is)}${was === undefined ? "" : `, not ${dateWords(was)}`}`);
  };
  day("started");
  day("finished");
  if (after.finished === undefined) {
    const change = estimateChange(before.remaining, after.remaining, timeUnit());
    if (change !== "") {
      parts.push(
        before.remaining === undefined && after.remaining !== undefined
          ? `${estimateWords(after.remaining, timeUnit())} remaining`
          : `remaining ${change}`,
      );
    }
  }
  if (before.spent !== after.spent) {
    if (after.spent === undefined) parts.push("money spent no longer recorded");
    else if (before.spent === undefined) parts.push(`${moneyWords(after.spent, currency)} spent`);
    else {
      const from = moneyWords(before.spent, currency);
      parts.push(`spent from ${from} to ${moneyWords(after.spent, currency)}`);
    }
  }
  if (parts.length === 0) return [];
  return [
    {
      places: [places.progress(after.id)],
      kind: "actuals",
      ids: [after.id],
      subject: after.name,
      text: parts.join(", "),
    },
  ];
}
