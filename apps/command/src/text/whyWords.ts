import { formatDays } from "@leeway/charts";
import type { StartBound } from "@leeway/core";

/** What a bound is, in a few words: "after Drawings + 5 working days", "Ada, busy with Tender". */
export function boundWords(bound: StartBound): string {
  const held = bound.wait === undefined ? "" : `, then held back ${formatDays(bound.wait)} by the register`;
  return `${bareWords(bound)}${held}`;
}

function bareWords({ kind, task, person, link, lag, day }: StartBound): string {
  switch (kind) {
    case "link":
      return linkWords(task?.name ?? "", link, lag);
    case "person":
      return task === undefined || day <= 0
        ? `${person?.name ?? ""}, free`
        : `${person?.name ?? ""}, busy with ${task.name}`;
    case "away":
      return `${person?.name ?? ""}, away in part`;
    case "not-before":
      return "the date it may not start before";
    case "held-to-plan":
      return "the start as written, which it holds to";
    case "status-date":
      return "the day after the status date";
    case "recorded":
      return "a recorded start";
    case "plan-start":
      return "the plan's start";
  }
}

function linkWords(name: string, link: StartBound["link"], lag: number | undefined): string {
  const apart = lag === undefined ? "" : lag > 0 ? ` + ${formatDays(lag)}` : ` less ${formatDays(-lag)}`;
  switch (link) {
    case "start-to-start":
      return `the start of ${name}${apart}`;
    case "finish-to-finish":
      return `its finish no earlier than that of ${name}${apart}`;
    case "start-to-finish":
      return `its finish no earlier than the start of ${name}${apart}`;
    default:
      return `after ${name}${apart}`;
  }
}
