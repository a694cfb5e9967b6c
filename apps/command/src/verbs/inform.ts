import { dueEvents, dueList, type InformAnswer, writeCalendar } from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { forecastEach } from "../estimating/forecastBoth.ts";
import { givenPlan, isProblem, speakerOf } from "../estimating/givenPlan.ts";
import { putOut } from "../exchange/putOut.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { informText } from "../text/informText.ts";
import { pageOf } from "../text/page.ts";

/** Who has to be told of what, how and when; with `--out` also as a calendar. */
export async function informVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const [ownerId, out] = [values.text("owner"), values.text("out")];
  const options = engineOptions(values);
  const today = dateOption(values, "today", todayOf(new Date()));
  const from = dateOption(values, "from", "");
  const problems = [...values.problems, ...today.problems, ...from.problems];
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const { plan } = given;
  const owner = ownerId === undefined ? undefined : speakerOf(plan, "owner", ownerId);
  if (owner !== undefined && isProblem(owner)) {
    printProblems([owner], given.name);
    return exitCodes.invalid;
  }
  const { forecasts, problems: found } = await forecastEach([plan], options);
  await hearStops();
  if (found.length > 0) printProblems(found, given.name);
  const [forecast] = forecasts ?? [];
  if (forecast === undefined) return exitCodes.invalid;
  const list = dueList(plan, forecast, {
    ...(owner !== undefined && { owner: owner.id }),
    ...(from.value !== "" && { from: from.value }),
  });
  if (out !== undefined) {
    const name = `${plan.title}: communication${owner === undefined ? "" : ` of ${owner.name}`}`;
    const events = dueEvents(plan, list);
    const text = writeCalendar(events, { name, stamp: `${today.value}T00:00:00Z` });
    const said = `${list.due.length} occasions in ${events.length} events`;
    const code = putOut(text, out, values.has("force"), said);
    if (code !== exitCodes.done) return code;
  }
  const { seed, iterations, version, design } = forecast;
  if (values.has("json"))
    printJson<InformAnswer>({ plan: forecast.plan, seed, iterations, version, design, ...list });
  else printAnswer(informText(list, forecast, pageOf(process.env, process.stdout)));
  return exitCodes.done;
}
