import type { Plan, QualityBar } from "../plan/types.ts";
import { estimateChance } from "../sampling/estimateChance.ts";
import type { QualityNow } from "./types.ts";

/**
 * Where each quality bar of a plan stands: measured, whether it holds; until then, the exact chance that what is
 * expected clears it. Draws nothing: it hangs on no task and moves no date.
 */
export function qualityBars({ purpose }: Pick<Plan, "purpose">): QualityNow[] {
  return purpose.quality.map((bar): QualityNow => {
    const { id, statement, atLeast, atMost, unit, measured, on, owner } = bar;
    const chance = measured === undefined ? chanceOf(bar) : undefined;
    return {
      id,
      statement,
      ...(atLeast === undefined ? {} : { atLeast }),
      ...(atMost === undefined ? {} : { atMost }),
      ...(unit === undefined ? {} : { unit }),
      ...(owner === undefined ? {} : { owner }),
      ...(measured === undefined ? {} : { measured, holds: clears(bar, measured) }),
      ...(on === undefined ? {} : { on }),
      ...(chance === undefined ? {} : { chance }),
    };
  });
}

function clears({ atLeast, atMost }: QualityBar, value: number): boolean {
  return (atLeast === undefined || value >= atLeast) && (atMost === undefined || value <= atMost);
}

function chanceOf({ expected, atLeast, atMost }: QualityBar): number | undefined {
  if (expected === undefined) return undefined;
  if (atMost !== undefined) return estimateChance(expected, atMost);
  if (atLeast === undefined) return undefined;
  // At least is not below: of values that stand alone, the bar itself counts.
  if (expected.kind === "fixed") return expected.value >= atLeast ? 1 : 0;
  if (expected.kind === "outcomes")
    return expected.outcomes.reduce((sum, { value, chance }) => (value >= atLeast ? sum + chance : sum), 0);
  return 1 - estimateChance(expected, atLeast);
}
