import type { Problem } from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { forecastEach } from "../estimating/forecastBoth.ts";
import { givenPlan } from "../estimating/givenPlan.ts";
import { putOut } from "../exchange/putOut.ts";
import {
  exportOfForecast,
  exportOfPlan,
  FORMATS,
  type Format,
  OF_FORECAST,
  OF_PLAN,
  type What,
} from "../exchange/whatToExport.ts";
import { exitCodes } from "../exitCodes.ts";
import { printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";

/** Part of a plan or of its forecast in an open format: a table, a calendar, JSON. */
export async function exportVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const what = values.oneOf("what", [...OF_PLAN, ...OF_FORECAST]);
  const format = values.oneOf("format", ["csv", "json", "ics"]);
  const out = values.text("out");
  const options = engineOptions(values);
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [...values.problems, ...today.problems, ...clashes(values, what, format)];
  if (problems.length > 0 || what === undefined) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const as = format ?? FORMATS[what][0] ?? "csv";
  const force = values.has("force");
  const ofPlan = OF_PLAN.find((each) => each === what);
  if (ofPlan !== undefined) {
    const { text, said } = exportOfPlan(given.text, given.plan, ofPlan, as);
    return putOut(text, out, force, said);
  }
  const ofForecast = OF_FORECAST.find((each) => each === what) ?? "forecast";
  const { forecasts, problems: found } = await forecastEach([given.plan], options);
  await hearStops();
  if (found.length > 0) printProblems(found, given.name);
  const [forecast] = forecasts ?? [];
  if (forecast === undefined) return exitCodes.invalid;
  const stamp = `${today.value}T00:00:00Z`;
  const { text, said } = exportOfForecast(given.plan, forecast, ofForecast, as, stamp);
  return putOut(text, out, force, said);
}

function clashes(values: OptionValues, what: What | undefined, format: Format | undefined): Problem[] {
  if (!values.has("what")) {
    const choices = [...OF_PLAN, ...OF_FORECAST].join(", ");
    return [callProblem("option-missing", "--what", "What is to go out?", `Write one of: ${choices}.`)];
  }
  if (what === undefined || format === undefined || FORMATS[what].includes(format)) return [];
  const rule = `There is no ${format} of ${what}.`;
  return [
    callProblem("option-value", `--format ${format}`, rule, `Write one of: ${FORMATS[what].join(", ")}.`),
  ];
}
