import { type Approval, errorsInTheWay, type SignAnswer, type Signature, signPlan } from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { computeForecast } from "../compute/computeForecast.ts";
import { exitCodes } from "../exitCodes.ts";
import { planFile } from "../history/planFile.ts";
import { keepPlan } from "../history/versionsBeside.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { refusalProblem } from "../signing/refusalProblem.ts";
import { sayConditionsMet } from "../signing/sayConditionsMet.ts";
import { writeEntry } from "../signing/writeEntry.ts";
import { hearStops } from "../stopping.ts";
import { pageOf } from "../text/page.ts";
import { shellWord } from "../text/shellWord.ts";
import { signText } from "../text/signText.ts";

const DECISIONS = ["approve", "approve-subject-to", "rework"] as const satisfies Approval["decision"][];

/** Binds a decision to the plan as it is: the version is kept first, then the signature is written into the plan. */
export async function signVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const who = values.text("as");
  const by = values.text("by");
  const decision = values.oneOf("decision", DECISIONS) ?? "approve";
  const conditions = values.text("conditions");
  const conditionsBy = values.text("conditions-by");
  const accepts = values.ids("accept") ?? [];
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [
    ...values.problems,
    ...today.problems,
    ...dateOption(values, "conditions-by", today.value).problems,
  ];
  const meets = values.has("conditions-met");
  for (const name of ["decision", "conditions", "conditions-by", "accept", "despite-errors", "dry-run"]) {
    if (!meets || !values.has(name)) continue;
    const rule = "--conditions-met says something of a decision that stands; it is no new one.";
    problems.push(callProblem("option-clash", `--${name}`, rule, "Leave one of the two out."));
  }
  if (who === undefined) {
    const rule = "It needs to know who signs.";
    problems.push(callProblem("option-missing", "--as", rule, "Write e.g. --as board-chair."));
  }
  if (problems.length > 0 || who === undefined) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const file = await planFile(call.subject ?? "-", "sign");
  if (file === undefined) return exitCodes.invalid;
  if (meets) {
    const met = { who, date: today.value, ...(by === undefined ? {} : { by }) };
    return sayConditionsMet(file, met, values.has("json"));
  }
  // What is signed is what the forecast says now: the limit of the signer is held against the committed sum.
  const computed = await computeForecast({ text: file.text, options: {} });
  await hearStops();
  const { forecast } = computed;
  if (forecast === undefined) {
    printProblems(computed.problems, file.path);
    return exitCodes.invalid;
  }
  const errors = errorsInTheWay(file.plan, { today: today.value, forecast });
  const despite = values.has("despite-errors");
  const signature: Signature = {
    who,
    decision,
    accepts,
    date: today.value,
    sum: forecast.committed.cost,
    ...(by === undefined ? {} : { by }),
    ...(conditions === undefined ? {} : { conditions }),
    ...(conditionsBy === undefined ? {} : { conditionsBy }),
  };
  const signed = signPlan(file.text, file.plan, despite ? signature : { ...signature, errors });
  if (signed.text === undefined) {
    printProblems([...signed.refusals.map(refusalProblem), ...signed.problems]);
    if (signed.refusals.some(({ code }) => code === "error-found")) printNote(mendSentence(file.path));
    printNote("Nothing was signed.");
    return exitCodes.invalid;
  }
  const dry = values.has("dry-run");
  if (!dry) {
    const written = await writeEntry(file, signed.text, () => keepPlan(file.path, file.text));
    if (!written) return exitCodes.invalid;
  }
  if (values.has("json")) {
    const { seed, iterations, design, version, committed, chance } = forecast;
    printJson<SignAnswer>({
      plan: { title: file.plan.title, sha256: file.plan.sha256, approvalSha256: file.plan.approvalSha256 },
      signature,
      written: !dry,
      ...(errors.length === 0 ? {} : { errors }),
      ...{ seed, iterations, design, version, committed, chance },
    });
  } else {
    const words = shellWord(file.path);
    const said = { plan: file.plan, signature, forecast, errors, dry };
    printAnswer(signText(said, pageOf(process.env, process.stdout), words));
  }
  return exitCodes.done;
}

function mendSentence(path: string): string {
  return `Mend what leeway check ${shellWord(path)} calls an error, accept it there by name, or sign with --despite-errors.`;
}
