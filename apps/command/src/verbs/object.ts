import {
  acceptObjection,
  answerObjection,
  type Logged,
  logObjection,
  type ObjectionsAnswer,
  type Plan,
  reopenObjection,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { type PlanFile, planFile } from "../history/planFile.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { refusalProblem } from "../signing/refusalProblem.ts";
import { writeEntry } from "../signing/writeEntry.ts";
import { objectionsText } from "../text/objectionsText.ts";
import { pageOf } from "../text/page.ts";

/** Objections: logged, answered, accepted by name, opened again; without any of these, listed. */
export async function objectVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const said = {
    who: values.text("as"),
    text: values.text("text"),
    answer: values.text("answer"),
    accept: values.text("accept"),
    reopen: values.text("reopen"),
    evidence: values.text("evidence"),
  };
  const today = dateOption(values, "today", todayOf(new Date()));
  const problems = [...values.problems, ...today.problems];
  const [deed, ...more] = (["answer", "accept", "reopen"] as const).filter((key) => said[key] !== undefined);
  if (more.length > 0) {
    const rule = "An objection is answered, accepted or opened again, one at a time.";
    problems.push(callProblem("option-clash", `--${more[0]}`, rule, "Call it once for each."));
  }
  const missing = (name: string, rule: string, example: string): void => {
    problems.push(callProblem("option-missing", `--${name}`, rule, `Write e.g. --${name} ${example}.`));
  };
  const logs = deed === undefined && (said.text !== undefined || said.who !== undefined);
  if ((logs || deed === "answer") && said.text === undefined)
    missing("text", "It needs the words.", '"The weeks look like padding"');
  if ((logs || deed === "accept" || deed === "reopen") && said.who === undefined)
    missing("as", "It needs to know who says so.", "finance-director");
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const file = await planFile(call.subject ?? "-", "object");
  if (file === undefined) return exitCodes.invalid;
  if (deed === undefined && !logs) return tell(file, values.has("json"));
  const logged = enter(file, deed, said, today.value, values.has("changed-plan"));
  if (logged.text === undefined) {
    printProblems([...logged.refusals.map(refusalProblem), ...logged.problems]);
    printNote("Nothing was written.");
    return exitCodes.invalid;
  }
  if (!(await writeEntry(file, logged.text))) return exitCodes.invalid;
  const now = await planFile(file.path, "object");
  if (now === undefined) return exitCodes.invalid;
  const { id } = logged;
  return tell({ ...now, plan: only(now.plan, id) }, values.has("json"));
}

function enter(
  { text, plan }: PlanFile,
  deed: "answer" | "accept" | "reopen" | undefined,
  said: Record<"who" | "text" | "answer" | "accept" | "reopen" | "evidence", string | undefined>,
  date: string,
  changedPlan: boolean,
): Logged {
  const { who = "", text: words = "", evidence } = said;
  switch (deed) {
    case undefined:
      return logObjection(text, plan, { who, text: words, date });
    case "answer": {
      const proof = evidence === undefined ? {} : { evidence };
      return answerObjection(text, plan, { id: said.answer ?? "", answer: words, changedPlan, ...proof });
    }
    case "accept":
      return acceptObjection(text, plan, { id: said.accept ?? "", who });
    case "reopen":
      return reopenObjection(text, plan, { id: said.reopen ?? "", who });
  }
}

function only(plan: Plan, id: string | undefined): Plan {
  return { ...plan, objections: plan.objections.filter((one) => one.id === id) };
}

function tell({ plan }: PlanFile, json: boolean): number {
  if (json)
    printJson<ObjectionsAnswer>({
      plan: { title: plan.title, sha256: plan.sha256 },
      objections: plan.objections,
    });
  else printAnswer(objectionsText(plan, pageOf(process.env, process.stdout)));
  return exitCodes.done;
}
