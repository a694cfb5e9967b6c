import {
  type ApprovalsAnswer,
  approvalsState,
  type Comparison,
  errorsInTheWay,
  type Plan,
  readPlan,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { computeComparison } from "../compute/computeComparison.ts";
import { computeForecast } from "../compute/computeForecast.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { signedVersion } from "../history/versionsBeside.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { approvalsText } from "../text/approvalsText.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";

/** Who has signed, whether it covers the plan as it is, and what moved since. */
export async function approvalsVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const signedFile = values.text("signed");
  const workers = values.count("workers", 64);
  const today = dateOption(values, "today", todayOf(new Date()));
  const wrong = [...values.problems, ...today.problems];
  if (wrong.length > 0) {
    printProblems(wrong);
    return exitCodes.invalid;
  }
  const subject = call.subject ?? "-";
  const { name, text, problem } = await readDocument(subject);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return exitCodes.invalid;
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  if (plan === undefined) return exitCodes.invalid;
  const old = signedFile === undefined ? keptBeside(subject, plan) : await planOf(signedFile);
  if (old === "unreadable") return exitCodes.invalid;
  const computed = await computeForecast({
    text,
    options: {},
    ...(workers === undefined ? {} : { workers }),
  });
  const { forecast } = computed;
  if (forecast === undefined) {
    printProblems(computed.problems, name);
    return exitCodes.invalid;
  }
  let moved: Comparison | undefined;
  if (old !== undefined && old.sha256 !== plan.sha256) {
    const compared = await computeComparison({
      oldPlan: old,
      newPlan: plan,
      options: {},
      ...(workers === undefined ? {} : { workers }),
    });
    if (compared.problems.length > 0) printProblems(compared.problems);
    moved = compared.comparison;
  }
  await hearStops();
  const state = approvalsState(plan, forecast.committed.cost, today.value);
  const errors = errorsInTheWay(plan, { today: today.value, forecast });
  if (values.has("json")) {
    const { seed, iterations, design, version } = forecast;
    printJson<ApprovalsAnswer>({
      ...state,
      errors,
      ...{ seed, iterations, design, version },
      ...(old === undefined ? {} : { signedVersion: old.sha256 }),
      ...(moved === undefined
        ? {}
        : { moved: { from: moved.from, to: moved.to, difference: moved.difference, moves: moved.moves } }),
    });
  } else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(
      approvalsText(
        { plan, state, errors, forecast, moved, found: old !== undefined },
        page,
        shellWord(name),
      ),
    );
  }
  return exitCodes.done;
}

function keptBeside(subject: string, plan: Plan): Plan | undefined {
  return subject === "-" ? undefined : signedVersion(subject, plan);
}

async function planOf(file: string): Promise<Plan | "unreadable"> {
  const { name, text, problem } = await readDocument(file);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return "unreadable";
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  return plan ?? "unreadable";
}
