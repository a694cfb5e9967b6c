import { describeProblem } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";
import type { PlanRead } from "../worker/planMessages.ts";
import type { Pending } from "./state.ts";

/** Reads a text once edits are made in it. */
type Read = (text: string, edits: readonly Edit[]) => Promise<PlanRead>;

/**
 * Tries entries again that the rules of the plan refused: what they lacked may be there now. One that can be taken in is
 * made in the text and waits no longer; one that cannot says why it waits now. In the order in which they were entered,
 * and again as long as one was taken in, as one may be what the other lacked.
 */
export async function takeInWaiting(
  read: Read,
  now: PlanRead,
  pending: ReadonlyMap<string, Pending>,
): Promise<{ now: PlanRead; pending: ReadonlyMap<string, Pending> }> {
  const left = new Map(pending);
  let last = now;
  for (let taken = true; taken; ) {
    taken = false;
    for (const [field, entry] of left) {
      if (entry.edits === undefined) continue;
      const then = await read(last.text, entry.edits);
      const error = then.problems.find(({ severity }) => severity === "error");
      if (error !== undefined) {
        left.set(field, { ...entry, words: refusedWords(error) });
        continue;
      }
      left.delete(field);
      last = then;
      taken = true;
    }
  }
  return { now: last, pending: left };
}

/** Why the plan's rules refuse an entry, and the way out. */
export function refusedWords(problem: PlanRead["problems"][number]): string {
  return `${problem.rule} ${problem.remedy}`.trim() || describeProblem(problem);
}
