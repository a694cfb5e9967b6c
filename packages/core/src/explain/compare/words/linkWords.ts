import type { Link } from "../../../plan/types.ts";
import { estimateChange, estimateWords, timeUnit } from "./estimateWords.ts";

const days = timeUnit();

/** "now also waits for Inspection": what a link asks of its task, as a clause after the task's name. */
export function linkAdded(link: Link, nameOf: (id: string) => string): string {
  return `${asks(link, "now also")} ${nameOf(link.task)}${lagWords(link)}`;
}

export function linkRemoved(link: Link, nameOf: (id: string) => string): string {
  return `${asks(link, "no longer")} ${nameOf(link.task)}`;
}

function asks({ link }: Link, how: "now also" | "no longer"): string {
  const no = how === "no longer";
  switch (link) {
    case "finish-to-start":
      return `${how} waits for`;
    case "start-to-start":
      return no ? "may now start before the start of" : "now starts no earlier than the start of";
    case "finish-to-finish":
      return no ? "may now finish before the end of" : "now finishes no earlier than the end of";
    case "start-to-finish":
      return no ? "may now finish before the start of" : "now finishes no earlier than the start of";
  }
}

/** ", and 2 working days more": the lag of a link; nothing where there is none. */
function lagWords({ lag }: Link): string {
  if (lag.kind === "fixed") {
    if (lag.value === 0) return "";
    const amount = days.value(Math.abs(lag.value), lag);
    return lag.value > 0 ? `, and ${amount} more` : `, less ${amount}`;
  }
  return `, with a lag of ${estimateWords(lag, days)}`;
}

/** "lag after Strip-out from 2 to 5 working days"; a calendar that changed is named. */
export function lagChange(older: Link, newer: Link, nameOf: (id: string) => string): string {
  const change = estimateChange(older.lag, newer.lag, days);
  const calendar =
    older.lagCalendar === newer.lagCalendar
      ? ""
      : `counted on ${newer.lagCalendar ?? "its own calendar"}, no longer on ${older.lagCalendar ?? "its own calendar"}`;
  const lag = `${change}${change !== "" && calendar !== "" ? ", " : ""}${calendar}`;
  return `lag after ${nameOf(newer.task)} ${lag}`;
}
