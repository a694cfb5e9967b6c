import { applyScenario } from "../plan/applyScenario.ts";
import type { ScenarioChoice } from "../plan/scenarioProblems.ts";
import type { IsoDate, Plan } from "../plan/types.ts";
import { briefAssumptions } from "./parts/assumptions.ts";
import { briefCommitment } from "./parts/commitment.ts";
import { briefDecision } from "./parts/decision.ts";
import { briefDrivers } from "./parts/drivers.ts";
import { briefObjections } from "./parts/objections.ts";
import { briefOutcome } from "./parts/outcome.ts";
import { briefRecommendation } from "./parts/recommendation.ts";
import { briefResponses } from "./parts/responses.ts";
import { briefScope } from "./parts/scope.ts";
import { briefTriggers } from "./parts/triggers.ts";
import { briefWorth } from "./parts/worth.ts";
import { traceBrief } from "./traceBrief.ts";
import type { Brief, BriefAnswers } from "./types.ts";

/**
 * Puts a brief together from results of one run. Reads, and computes nothing but sums of what it leaves out.
 *
 * @param today     The day it is written on.
 * @param scenario  What was taken in and left out of the run.
 */
export function briefOf(
  source: Plan,
  answers: BriefAnswers,
  { today, scenario = {} }: { today: IsoDate; scenario?: ScenarioChoice },
): Brief {
  const { plan } = applyScenario(source, scenario);
  const { forecast, explanation } = answers;
  const { cost, asked } = forecast;
  const spends = cost.sd > 0 || cost.mean !== 0 || asked.budget !== undefined;
  const assumptions = briefAssumptions(plan, answers);
  const brief: Brief = {
    plan: {
      title: plan.title,
      currency: plan.currency,
      start: plan.start,
      ...(plan.note === undefined ? {} : { note: plan.note }),
      ...(plan.statusDate === undefined ? {} : { statusDate: plan.statusDate }),
      approvalSha256: plan.approvalSha256,
    },
    today,
    stamp: explanation.stamp,
    confidence: forecast.committed.confidence,
    spends,
    decision: briefDecision(plan, forecast),
    recommendation: briefRecommendation(plan, forecast),
    commitment: briefCommitment(plan, answers),
    worth: briefWorth(plan, answers),
    scope: briefScope(plan),
    drivers: briefDrivers(explanation, spends),
    responses: briefResponses(plan, answers.responses),
    assumptions,
    objections: briefObjections(plan),
    triggers: briefTriggers(plan, { forecast, spends, assumptions }),
    outcome: briefOutcome(plan, forecast),
    warnings: forecast.warnings,
    ...(scenario.with === undefined && scenario.without === undefined
      ? {}
      : {
          scenario: {
            ...(scenario.with === undefined ? {} : { with: [...scenario.with] }),
            ...(scenario.without === undefined ? {} : { without: [...scenario.without] }),
          },
        }),
  };
  return { ...brief, trace: traceBrief(brief, answers) };
}
