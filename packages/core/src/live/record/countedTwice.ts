import { twiceCounted } from "../../findings/network/twiceCounted.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { Told } from "./readFacts.ts";

/** Warnings of what this report may have made count twice: an event, and the work or the money that has it already. */
export function countedTwice(after: Plan, told: readonly Told[]): Problem[] {
  const touched = new Map(told.map(({ id, said }) => [id, said]));
  return twiceCounted(after).flatMap(({ entry, task, part, says, advice }): Problem[] => {
    const said = touched.get(entry.id) ?? touched.get(task.id);
    if (said === undefined) return [];
    return [
      {
        code: `occurred-in-${part}`,
        severity: "warning",
        path: said,
        received: "",
        rule: says,
        remedy: advice,
      },
    ];
  });
}
