import { formatDate, plainName } from "@leeway/charts";
import { type Change, type ChangeAnswer, logChange } from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { planFile } from "../history/planFile.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { refusalProblem } from "../signing/refusalProblem.ts";
import { writeEntry } from "../signing/writeEntry.ts";
import { pageOf, wrap } from "../text/page.ts";
import { nameOf } from "../text/signNames.ts";

/** Adds an entry to the plan's change log: what changed, why, who decided it and who agreed. */
export async function changeVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const [who, what, why] = [values.text("as"), values.text("what"), values.text("why")];
  const approvedBy = values.text("approved-by");
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [...values.problems, ...today.problems];
  for (const [name, value, example] of [
    ["what", what, '"Mock inspection adopted"'],
    ["why", why, '"Four first inspections in ten fail"'],
    ["as", who, "project-lead"],
    ["approved-by", approvedBy, "board-chair"],
  ] as const) {
    if (value !== undefined) continue;
    const rule = "A change is logged with what, why, who decided it and who agreed.";
    problems.push(callProblem("option-missing", `--${name}`, rule, `Write e.g. --${name} ${example}.`));
  }
  if (
    problems.length > 0 ||
    who === undefined ||
    what === undefined ||
    why === undefined ||
    approvedBy === undefined
  ) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const file = await planFile(call.subject ?? "-", "change");
  if (file === undefined) return exitCodes.invalid;
  const entry = { date: today.value, who, what, why, approvedBy } satisfies Change;
  const logged = logChange(file.text, file.plan, entry);
  if (logged.text === undefined) {
    printProblems([...logged.refusals.map(refusalProblem), ...logged.problems]);
    printNote("Nothing was written.");
    return exitCodes.invalid;
  }
  if (!(await writeEntry(file, logged.text))) return exitCodes.invalid;
  if (values.has("json")) printJson<ChangeAnswer>({ plan: { title: file.plan.title }, change: entry });
  else {
    const agreed = `${nameOf(file.plan, approvedBy)} agreed.`;
    const text = `${formatDate(today.value, "long")}, ${nameOf(file.plan, who)}: ${sentence(what)} Why: ${sentence(why)} ${agreed}`;
    printAnswer(`${wrap(text, pageOf(process.env, process.stdout).width).join("\n")}\n`);
  }
  return exitCodes.done;
}

/** A remark as a sentence among others: people end it with a full stop or not. */
function sentence(remark: string): string {
  const text = plainName(remark);
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
