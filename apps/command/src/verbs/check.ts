import {
  type CheckAnswer,
  type CheckedAnswer,
  checkPlan,
  type Finding,
  type Plan,
  type Problem,
  readPlan,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { computeForecast } from "../compute/computeForecast.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { checkText } from "../text/checkText.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";

const SEVERITIES = ["error", "warning", "note"] as const;

/** What reading the document already found, as findings. */
function findingOf(problem: Problem): Finding {
  const { code, severity, path, received, rule, remedy } = problem;
  const message = received === "" ? rule : `${received}: ${rule}`;
  return { code, severity, path, ids: [], message, advice: remedy, source: "The plan format." };
}

/** Lists findings; code 1 when one is as severe as `--fail-on` asks, code 2 when there is no plan to check. */
export async function checkVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const failOn = values.oneOf("fail-on", SEVERITIES);
  const today = dateOption(values, "today", todayOf(new Date()));
  const options = engineOptions(values);
  const workers = values.count("workers", 64);
  const wrong = [...values.problems, ...today.problems];
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
  const read = problems.map(findingOf);
  if (plan === undefined) {
    if (values.has("json")) printJson<CheckedAnswer>({ findings: read });
    return exitCodes.invalid;
  }
  const ran = values.has("as-written")
    ? undefined
    : await computeForecast({ text: document.text, options, ...(workers === undefined ? {} : { workers }) });
  await hearStops();
  const unrun = ran?.forecast === undefined ? (ran?.problems.slice(problems.length) ?? []) : [];
  // A plan that some future takes past its calendars is itself at fault; anything else is the call's.
  if (unrun.some(({ code }) => code !== "beyond-calendar")) {
    printProblems(unrun, document.name);
    return exitCodes.invalid;
  }
  const answer = answerOf(plan, today.value, [...read, ...unrun.map(findingOf)], ran?.forecast);
  if (values.has("json")) printJson<CheckedAnswer>(answer);
  else printAnswer(checkText(answer, pageOf(process.env, process.stdout), shellWord(document.name)));
  const worst = failOn === undefined ? -1 : SEVERITIES.indexOf(failOn);
  const found = answer.findings.some(
    ({ severity, accepted }) => accepted === undefined && SEVERITIES.indexOf(severity) <= worst,
  );
  return found ? exitCodes.found : exitCodes.done;
}

type Ran = Awaited<ReturnType<typeof computeForecast>>["forecast"];

function answerOf(plan: Plan, today: string, read: readonly Finding[], forecast: Ran): CheckAnswer {
  const found = checkPlan(plan, { today, ...(forecast === undefined ? {} : { forecast }) });
  // The plan as written names the task and its place, so the forecast's own word for the same is left out.
  const past = found.findings.some(({ code }) => code === "runs-past-calendar");
  const first = past ? read.filter(({ code }) => code !== "beyond-calendar") : read;
  return {
    plan: { title: plan.title, sha256: plan.sha256 },
    today,
    ...(forecast === undefined
      ? {}
      : {
          run: {
            seed: forecast.seed,
            iterations: forecast.iterations,
            version: forecast.version,
            design: forecast.design,
            sha256: forecast.plan.sha256,
          },
        }),
    findings: [...first, ...found.findings].sort(
      (a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity),
    ),
    measures: found.measures,
  };
}
