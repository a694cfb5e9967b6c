import { type DetailAnswer, type Plan, version, waveCompare } from "@leeway/core";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { givenPlan } from "../estimating/givenPlan.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { explanationStamp } from "../text/confidenceHead.ts";
import { detailText } from "../text/detailText.ts";
import { pageOf } from "../text/page.ts";

const ROWS_AS_TASKS = 8;

/** Outline tasks of an old plan beside the detail that replaced them in a new one. */
export async function detailVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const older = await givenPlan(call.subject ?? "-");
  const newer = await givenPlan(call.second ?? "-");
  if (older === undefined || newer === undefined) return exitCodes.invalid;
  const stamp = stampOf(newer.plan, options);
  const tooLarge = memoryProblem(ROWS_AS_TASKS + newer.plan.tasks.length, stamp.iterations);
  const comparison = tooLarge === undefined ? waveCompare(older.plan, newer.plan, options) : undefined;
  await hearStops();
  const problems = [...(tooLarge === undefined ? [] : [tooLarge]), ...(comparison?.problems ?? [])];
  if (problems.length > 0) printProblems(problems, newer.name);
  if (comparison === undefined || problems.some(({ severity }) => severity === "error"))
    return exitCodes.invalid;
  if (values.has("json")) {
    const { problems: _problems, ...told } = comparison;
    printJson<DetailAnswer>({ plan: { title: newer.plan.title, sha256: newer.plan.sha256 }, stamp, ...told });
  } else {
    const { title, currency } = newer.plan;
    const about = { title, currency, stamp: explanationStamp(stamp) };
    printAnswer(detailText(comparison, about, pageOf(process.env, process.stdout)));
  }
  return exitCodes.done;
}

function stampOf(plan: Plan, options: ReturnType<typeof engineOptions>) {
  return {
    seed: options.seed ?? plan.seed,
    iterations: options.iterations ?? plan.iterations,
    version,
    design: options.design ?? ("latin-hypercube" as const),
    sha256: plan.sha256,
  };
}
