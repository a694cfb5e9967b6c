import { formatDate, plainName } from "@leeway/charts";
import { meetConditions, type SignAnswer } from "@leeway/core";
import { exitCodes } from "../exitCodes.ts";
import type { PlanFile } from "../history/planFile.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { pageOf, wrap } from "../text/page.ts";
import { nameOf } from "../text/signNames.ts";
import { refusalProblem } from "./refusalProblem.ts";
import { writeEntry } from "./writeEntry.ts";

/** Writes into the plan that an approver's conditions were met; what was signed stays signed. */
export async function sayConditionsMet(
  file: PlanFile,
  met: { who: string; by?: string; date: string },
  json: boolean,
): Promise<number> {
  const { plan } = file;
  const result = meetConditions(file.text, plan, met);
  if (result.text === undefined) {
    printProblems([...result.refusals.map(refusalProblem), ...result.problems]);
    printNote("Nothing was written.");
    return exitCodes.invalid;
  }
  if (!(await writeEntry(file, result.text))) return exitCodes.invalid;
  const { who, date } = met;
  const conditions = plan.approvals.findLast((one) => one.who === who)?.conditions ?? "";
  if (json) {
    const { title, sha256, approvalSha256 } = plan;
    printJson<SignAnswer>({ plan: { title, sha256, approvalSha256 }, conditionsMet: { ...met, conditions } });
  } else {
    const text = `${formatDate(date, "long")}: the condition of ${nameOf(plan, who)} is met: ${plainName(conditions)}`;
    printAnswer(`${wrap(text, pageOf(process.env, process.stdout).width).join("\n")}\n`);
  }
  return exitCodes.done;
}
