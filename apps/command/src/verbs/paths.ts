import { type DrivingPathsOptions, readPlan, scenarioNotes } from "@leeway/core";
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
import { pageOf } from "../text/page.ts";
import { pathsText } from "../text/pathsText.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
/** Rows of n values at once, counted in tasks as `memoryProblem` does. */
const ROWS_AS_TASKS = 16;
/** Every future may have a path of its own: 5 bytes a task against the 16 of `memoryProblem`. */
const PATH_PART = 1 / 3;

function readOptions(values: OptionValues): Omit<DrivingPathsOptions, "onProgress"> {
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const confidence = values.chance("confidence");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
  return {
    ...(iterations === undefined ? {} : { iterations }),
    ...(seed === undefined ? {} : { seed }),
    ...(confidence === undefined ? {} : { confidence }),
    ...(design === undefined ? {} : { design }),
    ...(taken === undefined ? {} : { with: taken }),
    ...(left === undefined ? {} : { without: left }),
  };
}

/** Which chains of tasks set the finish, how often, and what is at stake near them. */
export async function pathsVerb(call: Call): Promise<number> {
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
  const tooLarge = memoryProblem(
    Math.ceil(ROWS_AS_TASKS + PATH_PART * plan.tasks.length),
    options.iterations ?? plan.iterations,
  );
  if (tooLarge !== undefined) {
    printProblems([tooLarge], document.name);
    return exitCodes.invalid;
  }
  const line = progressLine();
  const result = await answerAside({ kind: "paths", plan, options }, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, options), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.paths === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("paths", result.paths, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(options), ...result.paths });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(pathsText(result.paths, page, shellWord(document.name), options, values.has("indices")));
  }
  return exitCodes.done;
}
