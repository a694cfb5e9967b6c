import { formatDate, plainName } from "@leeway/charts";
import type { StillMissing } from "@leeway/core";
import { inset } from "./inset.ts";

const SHOWN = 8;

/** What a report leaves open: what remains of started tasks, what was due and has not happened. */
export function missingLines({ remaining, toStart, toFinish }: StillMissing, width: number): string[] {
  const list = (heading: string, items: readonly string[]) =>
    items.length === 0
      ? []
      : [
          heading,
          ...items.slice(0, SHOWN).flatMap((item) => inset(item, width)),
          ...(items.length > SHOWN ? [`  and ${items.length - SHOWN} more`] : []),
        ];
  const due = ({ name, id, date }: StillMissing["toStart"][number]) =>
    `${plainName(name)} (${id}), on ${formatDate(date, "weekday")}`;
  return [
    ...list(
      "Started, and nobody said what remains (--remaining TASK=5,7,14):",
      remaining.map(
        ({ name, id, started }) => `${plainName(name)} (${id}), since ${formatDate(started, "weekday")}`,
      ),
    ),
    ...list("Should have started by now, in the plan before this report:", toStart.map(due)),
    ...list("Should have finished by now, in the plan before this report:", toFinish.map(due)),
  ];
}
