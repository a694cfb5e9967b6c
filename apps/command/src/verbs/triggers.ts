import { readPlan, type TriggersAnswer } from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { engineOptions } from "../call/engineOptions.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { computeStanding } from "../history/computeStanding.ts";
import { signedVersion } from "../history/versionsBeside.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";
import { triggersText } from "../text/triggersText.ts";

/** Where every agreed return trigger stands; code 1 with `--fail` when one has tripped. */
export async function triggersVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const options = engineOptions(values);
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
  // Of a plan from standard input no signed version can stand beside it.
  const signed = subject === "-" ? undefined : signedVersion(subject, plan);
  const { standing, problems: found } = await computeStanding({
    ...{ text, plan, options, workers, signed },
    today: today.value,
  });
  await hearStops();
  if (found.length > 0) printProblems(found, name);
  if (standing === undefined) return exitCodes.invalid;
  if (values.has("json")) {
    const { seed, iterations, design, version } = standing.forecast;
    const { confidence, currency, triggers } = standing.triggers;
    const { title, sha256, approvalSha256, statusDate } = plan;
    printJson<TriggersAnswer>({
      plan: { title, sha256, approvalSha256, ...(statusDate === undefined ? {} : { statusDate }) },
      ...{ seed, iterations, design, version, confidence, currency, triggers },
    });
  } else {
    printAnswer(triggersText(plan, standing, pageOf(process.env, process.stdout), shellWord(name)));
  }
  const tripped = standing.triggers.triggers.some(({ state }) => state === "tripped");
  return tripped && values.has("fail") ? exitCodes.found : exitCodes.done;
}
