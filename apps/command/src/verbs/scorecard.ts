import {
  type Adjustment,
  applyAdjustment,
  type Forecast,
  type ForecastInShort,
  type Plan,
  type ScorecardAnswer,
  scorecard,
} from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { forecastEach } from "../estimating/forecastBoth.ts";
import { givenPlan } from "../estimating/givenPlan.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { scorecardText } from "../text/scorecardText.ts";

/** What a plan would say if its ranges leaned and missed as the scored ones did, beside what it says. */
export interface AdjustedScenario {
  adjustment: Adjustment;
  plain: Forecast;
  adjusted: Forecast;
}

/** Past estimates against what happened; with `--apply-to` what a forecast would be with the same leaning. */
export async function scorecardVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  const applyTo = values.text("apply-to");
  const charts = values.text("charts");
  const words = [call.subject ?? "-", ...(call.rest ?? [])];
  const problems = [...values.problems];
  if ([...words, ...(applyTo === undefined ? [] : [applyTo])].filter((word) => word === "-").length > 1) {
    const rule = "Standard input can be one of the plans only.";
    problems.push(callProblem("repeated-plan", "-", rule, "Name files for the others."));
  }
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const plans: Plan[] = [];
  for (const word of words) {
    const given = await givenPlan(word);
    if (given !== undefined) plans.push(given.plan);
  }
  const target = applyTo === undefined ? undefined : await givenPlan(applyTo);
  const [plan, ...past] = plans;
  if (plan === undefined || plans.length < words.length || (applyTo !== undefined && target === undefined)) {
    return exitCodes.invalid;
  }
  const card = scorecard(plan, ...past);
  let scenario: AdjustedScenario | undefined;
  if (target !== undefined) {
    const adjustment = card.overall?.adjustment;
    if (adjustment === undefined) {
      const rule = "There are too few finished tasks with ranges to adjust anything by.";
      printProblems([callProblem("too-few", "--apply-to", rule, "Name more past plans, or leave it out.")]);
      return exitCodes.invalid;
    }
    const both = [target.plan, applyAdjustment(target.plan, adjustment)];
    const { forecasts, problems: found } = await forecastEach(both, options);
    await hearStops();
    if (found.length > 0) printProblems(found, target.name);
    const [plain, adjusted] = forecasts ?? [];
    if (plain === undefined || adjusted === undefined) return exitCodes.invalid;
    scenario = { adjustment, plain, adjusted };
  }
  if (!(await chartsWritten("scorecard", card, charts))) return exitCodes.invalid;
  if (values.has("json"))
    printJson<ScorecardAnswer>({ ...card, ...(scenario && { scenario: brief(scenario) }) });
  else printAnswer(scorecardText(card, scenario, pageOf(process.env, process.stdout)));
  return exitCodes.done;
}

/** Of two forecasts what the scenario is about. */
function brief({ adjustment, plain, adjusted }: AdjustedScenario): NonNullable<ScorecardAnswer["scenario"]> {
  const of = ({
    plan,
    seed,
    iterations,
    version,
    design,
    committed,
    asWritten,
  }: Forecast): ForecastInShort => ({
    plan,
    seed,
    iterations,
    version,
    design,
    asWritten,
    committed,
  });
  return { adjustment, plain: of(plain), adjusted: of(adjusted) };
}
