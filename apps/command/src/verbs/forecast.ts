import type { ForecastAnswer, ForecastOptions } from "@leeway/core";
import { engineOptions, given } from "../call/engineOptions.ts";
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
import { verifySaved } from "./verifySaved.ts";

interface Wanted {
  engine: ForecastOptions;
  workers?: number;
  json: boolean;
  timing: boolean;
  charts?: string;
}

function readOptions(values: OptionValues): Wanted {
  const charts = values.text("charts");
  const workers = values.count("workers", 64);
  return {
    engine: {
      ...engineOptions(values),
      ...given({ withinDays: values.days("within") }),
      ...(values.has("tornado") ? { tornado: true } : {}),
    },
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
  const saved = values.text("verify");
  if (saved !== undefined) return verifySaved(call, saved, wanted.workers);
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
  if (wanted.json) printJson<ForecastAnswer>({ ...scenarioKey(wanted.engine), ...result.forecast });
  else {
    const page = pageOf(process.env, process.stdout);
    const next = { planName: shellWord(document.name), responses: result.responses };
    printAnswer(forecastText(result.forecast, page, next, wanted.engine));
  }
  if (wanted.timing) printNote(JSON.stringify(result.timing));
  return exitCodes.done;
}
