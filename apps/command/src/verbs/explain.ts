import type { ExplainOptions } from "@leeway/core";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { computeExplanation } from "../compute/computeExplanation.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { explainText } from "../text/explainText.ts";
import { pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;

function readOptions(values: OptionValues): ExplainOptions {
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

/** Why this much contingency: its causes with their shares, the way there step by step, and one item at a time. */
export async function explainVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const charts = values.text("charts");
  const options = readOptions(values);
  const workers = values.count("workers", 64);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const { explanation, problems } = await computeExplanation({
    text: document.text,
    options,
    ...(workers === undefined ? {} : { workers }),
  });
  await hearStops();
  if (problems.length > 0) printProblems(problems, document.name);
  if (explanation === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("explain", explanation, charts))) return exitCodes.invalid;
  if (values.has("json")) printJson({ ...scenarioKey(options), ...explanation });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(explainText(explanation, page, shellWord(document.name), options));
  }
  return exitCodes.done;
}
