import type { Forecast } from "../../forecast/types.ts";
import { evaluateTriggers } from "../../live/triggers/evaluateTriggers.ts";
import type { Plan } from "../../plan/types.ts";
import type { BriefAssumption, BriefTrigger } from "../types.ts";

/** Below the level by this much, the promise is no longer the one that was signed. Common practice, no source. */
const slack = 0.1;
/** So many signposts are proposed. */
const watched = 3;

/**
 * When the commitment comes back to its approvers: what the plan has agreed on, else what is proposed, and marked so:
 * the chance of date or sum falls ten points below the level, contingency no longer covers what is left, a signpost of
 * one of the most load-bearing assumptions is seen.
 */
export function briefTriggers(
  plan: Plan,
  { forecast, ...beside }: { forecast: Forecast; spends: boolean; assumptions: readonly BriefAssumption[] },
): BriefTrigger[] {
  const confidence = forecast.committed.confidence;
  return stated(plan, { confidence, ...beside }).map((trigger) =>
    isMet(plan, forecast, trigger) ? { ...trigger, already: true } : trigger,
  );
}

/** As the plan's triggers are evaluated everywhere; what rests on a signed version is not known before it is signed. */
function isMet(plan: Plan, forecast: Forecast, trigger: BriefTrigger): boolean {
  const { signpost, finishLaterThan, costAbove } = trigger;
  const condition =
    signpost !== undefined
      ? { signpost: signpost.assumption }
      : finishLaterThan !== undefined
        ? { finishLaterThan }
        : costAbove !== undefined
          ? { costAbove }
          : undefined;
  if (condition === undefined) return false;
  const alone = { ...plan, approvals: [], returnTriggers: [{ id: "alone", ...condition }] };
  return evaluateTriggers(alone, forecast).triggers.some(({ state }) => state === "tripped");
}

function stated(
  plan: Plan,
  {
    confidence,
    spends,
    assumptions,
  }: { confidence: number; spends: boolean; assumptions: readonly BriefAssumption[] },
): BriefTrigger[] {
  if (plan.returnTriggers.length > 0) {
    return plan.returnTriggers.map(({ signpost, note: _note, was: _was, ...rest }) => {
      const trigger = { ...rest, proposed: false };
      return signpost === undefined ? trigger : { ...trigger, signpost: signpostOf(signpost, plan) };
    });
  }
  const least = Math.max(0.05, Math.round((confidence - slack) * 100) / 100);
  const bearing = assumptions
    .filter(({ signpost, ifWrong }) => signpost !== undefined && moves(ifWrong))
    .slice(0, watched);
  return [
    { proposed: true, chanceOfDateBelow: least },
    ...(spends ? [{ proposed: true, chanceOfBudgetBelow: least }] : []),
    { proposed: true, contingencyCoverBelow: 1 },
    ...bearing.map(({ id }) => ({ proposed: true, signpost: signpostOf(id, plan) })),
  ];
}

function moves(effect: BriefAssumption["ifWrong"]): boolean {
  return effect !== undefined && (Math.abs(effect.workingDays) > 1e-9 || Math.abs(effect.money) > 1e-6);
}

function signpostOf(id: string, plan: Plan): NonNullable<BriefTrigger["signpost"]> {
  const found = plan.assumptions.find((each) => each.id === id);
  return {
    assumption: id,
    statement: found?.name ?? id,
    ...(found?.signpost === undefined ? {} : { text: found.signpost }),
  };
}
