import { type Plan, type Problem, readPlan } from "@leeway/core";
import { dateOption } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { engineOptions, given } from "../call/engineOptions.ts";
import { moneyOption } from "../call/moneyOption.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answerAside } from "../compute/answerAside.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { signedVersion } from "../history/versionsBeside.ts";
import { printProblems } from "../output.ts";
import { budgetText } from "../text/budgetText.ts";
import { answerVerb, drawing } from "./answerVerb.ts";

/** Rows by month: some twenty, with what they are taken from. */
const ROWS_AS_TASKS = 64;

/** What the money is for and when it is needed, contingency left, benefit against cost, what delay costs. */
export async function moneyVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const sum = moneyOption(values, "sum");
  const by = dateOption(values, "by", "");
  const today = dateOption(values, "today", "");
  const signed = await signedPlan(values);
  if (signed.failed) return exitCodes.invalid;
  const options = engineOptions(values);
  const agreed = given({ money: sum.value, date: by.value === "" ? undefined : by.value });
  return answerVerb(call, values, {
    options,
    problems: [...sum.problems, ...by.problems, ...today.problems, ...signed.problems],
    rowsAsTasks: () => ROWS_AS_TASKS,
    async ask(plan, onProgress) {
      const kept =
        call.subject === undefined || call.subject === "-" ? undefined : signedVersion(call.subject, plan);
      const asked = {
        ...options,
        agreed,
        ...given({ today: today.value === "" ? undefined : today.value, signed: signed.plan ?? kept }),
      };
      const found = await answerAside({ kind: "money", plan, options: asked }, onProgress);
      return { answer: found.budget, problems: found.problems };
    },
    text: (answer, page, plan) => budgetText(answer, page, plan, options),
    draw: drawing("money", values),
  });
}

/** The version that `--signed` names; what is wrong with that document is printed under its own name. */
async function signedPlan(
  values: OptionValues,
): Promise<{ plan?: Plan; problems: Problem[]; failed?: true }> {
  const path = values.text("signed");
  if (path === undefined || path === "") return { problems: [] };
  if (path === "-") {
    const rule = "The version that was signed is read from a file.";
    return { problems: [callProblem("needs-file", "--signed -", rule, "Name the file.")] };
  }
  const { name, text, problem } = await readDocument(path);
  const { plan, problems } = text === undefined ? { plan: undefined, problems: [] } : readPlan(text);
  const all = problem === undefined ? problems : [problem];
  if (all.length > 0) printProblems(all, name);
  return plan === undefined ? { problems: [], failed: true } : { plan, problems: [] };
}
