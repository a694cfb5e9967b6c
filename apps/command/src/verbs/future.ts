import { type FutureOptions, type Problem, readPlan, scenarioNotes, type WhichFuture } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
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
import { futureText } from "../text/futureText.ts";
import { pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;
/** Rows of n values at once, counted in tasks as `memoryProblem` does. */
const ROWS_AS_TASKS = 4;

function readOptions(values: OptionValues): {
  which: WhichFuture | undefined;
  options: Omit<FutureOptions, "onProgress">;
  problems: Problem[];
} {
  const iterations = values.count("iterations", MOST_ITERATIONS);
  const seed = values.text("seed");
  const design = values.oneOf("design", ["latin-hypercube", "plain"]);
  const taken = values.ids("with");
  const left = values.ids("without");
  const iteration = values.count("iteration", MOST_ITERATIONS);
  const at = values.chance("at");
  const both = values.has("iteration") && values.has("at");
  const which = iteration !== undefined ? { iteration } : at !== undefined ? { at } : undefined;
  return {
    which,
    options: {
      ...(iterations === undefined ? {} : { iterations }),
      ...(seed === undefined ? {} : { seed }),
      ...(design === undefined ? {} : { design }),
      ...(taken === undefined ? {} : { with: taken }),
      ...(left === undefined ? {} : { without: left }),
    },
    problems: both
      ? [
          callProblem(
            "option-both",
            "--at",
            "It chooses a future, and so does --iteration.",
            "Keep one of them.",
          ),
        ]
      : [],
  };
}

/** One future replayed: what occurred, when each task ran and why, what it cost. */
export async function futureVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const { which, options, problems: wrong } = readOptions(values);
  if (values.problems.length + wrong.length > 0) {
    printProblems([...values.problems, ...wrong]);
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
  const asked = { ...options, which: which ?? { at: plan.commitment.confidence } };
  const result = await answerAside({ kind: "future", plan, options: asked }, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, options), ...result.problems];
  if (told.length > 0) printProblems(told, document.name);
  if (result.future === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("future", result.future, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(options), ...result.future });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(futureText(result.future, page, shellWord(document.name), options, values.has("draws")));
  }
  return exitCodes.done;
}
