import type { ForecastOptions } from "@leeway/core";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import { computeForecast } from "../compute/computeForecast.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { forecastText } from "../text/forecastText.ts";
import { pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** The plan format's own limit. */
const MOST_ITERATIONS = 10_000_000;

interface Wanted {
  engine: ForecastOptions;
  workers?: number;
  json: boolean;
  timing: boolean;
  charts?: string;
}

/** Leaves out what was not given: an absent key and an undefined one are not the same to the engine. */
function given<T extends object>(options: { [K in keyof T]: T[K] | undefined }): Partial<T> {
  const kept = Object.entries(options).filter(([, value]) => value !== undefined);
  return Object.fromEntries(kept) as Partial<T>; // what is left has the types it came with
}

function readOptions(values: OptionValues): Wanted {
  const charts = values.text("charts");
  const workers = values.count("workers", 64);
  return {
    engine: given<ForecastOptions>({
      iterations: values.count("iterations", MOST_ITERATIONS),
      withinDays: values.days("within"),
      seed: values.text("seed"),
      confidence: values.chance("confidence"),
      design: values.oneOf("design", ["latin-hypercube", "plain"]),
      without: values.ids("without"),
      with: values.ids("with"),
      tornado: values.has("tornado") ? true : undefined,
    } as { [K in keyof ForecastOptions]: ForecastOptions[K] | undefined }),
    json: values.has("json"),
    timing: values.has("timing"),
    ...(workers === undefined ? {} : { workers }),
    ...(charts === undefined ? {} : { charts }),
  };
}

/** Prints the forecast of one plan, as text or as JSON; with `--charts` also writes its pictures. */
export async function forecastVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const wanted = readOptions(values);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const result = await computeForecast({
    text: document.text,
    options: wanted.engine,
    ...(wanted.workers === undefined ? {} : { workers: wanted.workers }),
  });
  await hearStops();
  if (result.problems.length > 0) printProblems(result.problems, document.name);
  if (result.forecast === undefined) return exitCodes.invalid;
  if (!(await chartsWritten("forecast", result.forecast, wanted.charts))) return exitCodes.invalid;
  if (wanted.json) printJson({ ...scenarioKey(wanted.engine), ...result.forecast });
  else {
    const page = pageOf(process.env, process.stdout);
    const next = { planName: shellWord(document.name), responses: result.responses };
    printAnswer(forecastText(result.forecast, page, next, wanted.engine));
  }
  if (wanted.timing) printNote(JSON.stringify(result.timing));
  return exitCodes.done;
}
