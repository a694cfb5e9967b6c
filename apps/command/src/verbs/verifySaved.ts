import { readPlan, savedForecast, type VerifyAnswer, verifyForecast, version } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import type { Call } from "../call/parseCall.ts";
import { computeForecast } from "../compute/computeForecast.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { verifyText } from "../text/verifyText.ts";

/** What may stand beside `--verify`: all else is said by the saved forecast. */
const BESIDE: readonly string[] = ["verify", "json", "workers"];

/** Differences that are listed in JSON: the first says it, the others show how far it goes. */
const LISTED = 100;

/**
 * `forecast PLAN --verify FILE`: runs a saved forecast again. Code 0 where every figure is the same, 1 where one is not,
 * 2 where the two cannot be compared.
 */
export async function verifySaved(call: Call, file: string, workers: number | undefined): Promise<number> {
  const beside = [...call.options.keys()].filter((name) => !BESIDE.includes(name));
  if (beside.length > 0) {
    const rule = "What a forecast was run with is said by the saved one.";
    printProblems(beside.map((name) => callProblem("option-clash", `--${name}`, rule, "Leave it out.")));
    return exitCodes.invalid;
  }
  if (file === "-" && (call.subject ?? "-") === "-") {
    const rule = "Standard input cannot be the plan and the forecast.";
    printProblems([callProblem("option-clash", "- -", rule, "Name a file for one of them.")]);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  const kept = await readDocument(file);
  for (const { problem, name } of [document, kept]) if (problem !== undefined) printProblems([problem], name);
  if (document.text === undefined || kept.text === undefined) return exitCodes.invalid;
  const { plan, problems } = readPlan(document.text);
  if (problems.length > 0) printProblems(problems, document.name);
  if (plan === undefined) return exitCodes.invalid;
  const read = savedForecast(kept.text, plan);
  if (read.saved === undefined) {
    printProblems(read.problems, kept.name);
    return exitCodes.invalid;
  }
  const { saved } = read;
  const run = await computeForecast({
    text: document.text,
    options: saved.options,
    ...(workers === undefined ? {} : { workers }),
  });
  await hearStops();
  const { forecast } = run;
  if (forecast === undefined) {
    printProblems(run.problems, document.name);
    return exitCodes.invalid;
  }
  const { compared, differences } = verifyForecast(saved, forecast);
  const [first] = differences;
  const answer: VerifyAnswer = {
    same: first === undefined,
    plan: { title: plan.title, sha256: plan.sha256 },
    seed: forecast.seed,
    iterations: forecast.iterations,
    design: forecast.design,
    version,
    savedVersion: saved.version,
    compared,
    differing: differences.length,
    ...(first === undefined ? {} : { first }),
    differences: differences.slice(0, LISTED),
  };
  if (call.options.has("json")) printJson<VerifyAnswer>(answer);
  else printAnswer(verifyText(answer, kept.name, pageOf(process.env, process.stdout)));
  return answer.same ? exitCodes.done : exitCodes.found;
}
