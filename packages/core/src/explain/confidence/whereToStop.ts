import type { Confidence, ConfidenceStep } from "../types.ts";

/**
 * The level of least sum held and lateness left together, the lower one when two are equal: from there no step, and
 * no run of steps, avoids more than it costs. undefined when lateness is not priced.
 *
 * `clear`: the step into it and the step out of it each differ from nought by more than twice their standard error.
 */
export function whereToStop(steps: readonly ConfidenceStep[]): Confidence["stop"] {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (const [l, { cost, latenessLeft }] of steps.entries()) {
    if (latenessLeft === undefined) return undefined;
    if (cost + latenessLeft >= least) continue;
    least = cost + latenessLeft;
    best = l;
  }
  const chosen = steps[best];
  if (chosen === undefined) return undefined;
  const next = steps[best + 1];
  const clear = [best > 0 ? chosen : undefined, next].every((step) => step === undefined || isClear(step));
  return {
    p: chosen.p,
    ...(next?.bought === undefined || next.avoided === undefined
      ? {}
      : { next: { p: next.p, costs: next.bought.money, avoids: next.avoided } }),
    clear,
  };
}

function isClear({ bought, avoided, netError }: ConfidenceStep): boolean {
  if (bought === undefined || avoided === undefined || netError === undefined) return false;
  return Math.abs(avoided - bought.money) > 2 * netError;
}
