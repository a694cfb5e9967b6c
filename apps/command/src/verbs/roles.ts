import { type RolesAnswer, roleMatrix } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { givenPlan } from "../estimating/givenPlan.ts";
import { csvText } from "../exchange/csvText.ts";
import { putOut } from "../exchange/putOut.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { pageOf } from "../text/page.ts";
import { rolesMarkdown, rolesSheet } from "../text/rolesSheet.ts";
import { rolesText } from "../text/rolesText.ts";

/** Who does what, answers for it, is asked and is told. */
export async function rolesVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const format = values.oneOf("format", ["csv", "markdown"]);
  const out = values.text("out");
  const problems = [...values.problems];
  if (values.has("json") && format !== undefined) {
    const remedy = "Leave one of them out.";
    problems.push(callProblem("call", `--format ${format}`, "It is JSON or a table, not both.", remedy));
  }
  if (out !== undefined && format === undefined) {
    const remedy = "Add --format csv or --format markdown.";
    problems.push(callProblem("call", `--out ${out}`, "A file needs its format.", remedy));
  }
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const matrix = roleMatrix(given.plan, { rows: values.has("phases") ? "phases" : "tasks" });
  if (format !== undefined) {
    const text = format === "csv" ? csvText(rolesSheet(matrix)) : rolesMarkdown(matrix);
    return putOut(text, out, values.has("force"), `${matrix.rows.length} rows`);
  }
  if (values.has("json")) printJson<RolesAnswer>(matrix);
  else printAnswer(rolesText(matrix, pageOf(process.env, process.stdout)));
  return exitCodes.done;
}
