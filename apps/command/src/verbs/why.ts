import { readPlan, scenarioNotes, type WhyOptions } from "@leeway/core";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { progressLine } from "../compute/progressLine.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";
import { whyText } from "../text/whyText.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
/** Rows of n values at once, counted in tasks as `memoryProblem` does. */
const ROWS_AS_TASKS = 2;

function readOptions(values: OptionValues): Omit<WhyOptions, "onProgress"> {
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
  return {
    ...(iterations === undefined ? {} : { iterations }),
    ...(seed === undefined ? {} : { seed }),
    ...(design === undefined ? {} : { design }),
    ...(taken === undefined ? {} : { with: taken }),
    ...(left === undefined ? {} : { without: left }),
  };
}

/** What holds a task's start, link by link and person by person. */
export async function whyVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
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
  const asked = { ...options, task: call.second ?? "" };
  const result = await answerAside({ kind: "why", plan, options: asked }, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, options), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.why === undefined) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(options), ...result.why });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(whyText(result.why, page, shellWord(document.name), options));
  }
  return exitCodes.done;
}
