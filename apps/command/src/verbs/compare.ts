import { type CompareAnswer, type Plan, readPlan } from "@leeway/core";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { computeComparison } from "../compute/computeComparison.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { compareText } from "../text/compareText.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan of a document; its problems are printed with the document's name. */
async function planOf(subject: string): Promise<{ plan?: Plan; name: string }> {
  const { name, text, problem } = await readDocument(subject);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return { name };
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  return plan === undefined ? { name } : { plan, name };
}

/** What moved between two plans, change by change. The problems of both are listed before anything is run. */
export async function compareVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const options = engineOptions(values);
  const workers = values.count("workers", 64);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const older = await planOf(call.subject ?? "-");
  // A file named twice is read, and what is wrong with it is said, once.
  const newer = call.second === call.subject ? older : await planOf(call.second ?? "-");
  if (older.plan === undefined || newer.plan === undefined) return exitCodes.invalid;
  const { comparison, problems } = await computeComparison({
    oldPlan: older.plan,
    newPlan: newer.plan,
    options,
    ...(workers === undefined ? {} : { workers }),
  });
  await hearStops();
  for (const problem of problems) printProblems([problem], problem.of === "old" ? older.name : newer.name);
  if (comparison === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("compare", comparison, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson<CompareAnswer>(comparison);
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(compareText(comparison, page, shellWord(newer.name)));
  }
  return exitCodes.done;
}
