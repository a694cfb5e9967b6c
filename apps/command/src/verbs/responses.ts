import { type Problem, type ResponsesOptions, readPlan, scenarioNotes } from "@leeway/core";
import { responsesInParallel } from "@leeway/parallel";
import { moneyOption } from "../call/moneyOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { progressLine } from "../compute/progressLine.ts";
import { threadsOf } from "../compute/threadsOf.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { responsesText } from "../text/responsesText.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
/** Rows of n values at once: outcomes of sets and what is read from them; counted in tasks, as `memoryProblem` does. */
const ROWS_AS_TASKS = 16;

function readOptions(values: OptionValues): { engine: ResponsesOptions; problems: Problem[] } {
  const sum = moneyOption(values, "sum");
  const objective = values.oneOf("aim", ["date", "chance", "worth"]);
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const confidence = values.chance("confidence");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
  return {
    problems: [...values.problems, ...sum.problems],
    engine: {
      ...(sum.value === undefined ? {} : { sum: sum.value }),
      ...(objective === undefined ? {} : { objective }),
      ...(iterations === undefined ? {} : { iterations }),
      ...(seed === undefined ? {} : { seed }),
      ...(confidence === undefined ? {} : { confidence }),
      ...(design === undefined ? {} : { design }),
      ...(taken === undefined ? {} : { with: taken }),
      ...(left === undefined ? {} : { without: left }),
    },
  };
}

/** What each response costs and buys, alone and given the others; with `--sum` the best set for that much money. */
export async function responsesVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const workers = values.count("workers", 64);
  const { engine, problems: wrong } = readOptions(values);
  if (wrong.length > 0) {
    printProblems(wrong);
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
  const tooLarge = memoryProblem(ROWS_AS_TASKS, engine.iterations ?? plan.iterations);
  if (tooLarge !== undefined) {
    printProblems([tooLarge], document.name);
    return exitCodes.invalid;
  }
  const line = progressLine();
  const result = await responsesInParallel(plan, { ...engine, ...threadsOf(workers), onProgress: line.show });
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, engine), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.responses === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("responses", result.responses, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(engine), ...result.responses });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(responsesText(result.responses, page, shellWord(document.name), engine));
  }
  return exitCodes.done;
}
