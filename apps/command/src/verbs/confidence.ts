import { readPlan, scenarioNotes, type WhyConfidenceOptions } from "@leeway/core";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { answerAside } from "../compute/answerAside.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { progressLine } from "../compute/progressLine.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { confidenceText } from "../text/confidenceText.ts";
import { pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
/** Rows of n values at once: outcomes, prices of lateness, sorted copies; counted in tasks, as `memoryProblem` does. */
const ROWS_AS_TASKS = 8;

function readOptions(values: OptionValues): WhyConfidenceOptions {
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const confidence = values.chance("confidence");
  const joint = values.chance("joint");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
  return {
    ...(iterations === undefined ? {} : { iterations }),
    ...(seed === undefined ? {} : { seed }),
    ...(confidence === undefined ? {} : { confidence }),
    ...(joint === undefined ? {} : { joint }),
    ...(design === undefined ? {} : { design }),
    ...(taken === undefined ? {} : { with: taken }),
    ...(left === undefined ? {} : { without: left }),
  };
}

/** Why this confidence and not another: levels side by side, where to stop, date and money together. */
export async function confidenceVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const options = readOptions(values);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const { plan, problems } = readPlan(document.text);
  if (problems.length > 0) printProblems(problems, document.name);
  if (plan === undefined) return exitCodes.invalid;
  const tooLarge = memoryProblem(ROWS_AS_TASKS, options.iterations ?? plan.iterations);
  if (tooLarge !== undefined) {
    printProblems([tooLarge], document.name);
    return exitCodes.invalid;
  }
  const line = progressLine();
  const result = await answerAside({ kind: "confidence", plan, options }, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, options), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.confidence === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("confidence", result.confidence, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(options), ...result.confidence });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(confidenceText(result.confidence, page, shellWord(document.name), options));
  }
  return exitCodes.done;
}
