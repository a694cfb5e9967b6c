import { enteredIn, type ImportAnswer, importEstimates, importTable, type Problem } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { givenPlan, isProblem, speakerOf } from "../estimating/givenPlan.ts";
import { writeBack } from "../estimating/writeBack.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { importLines } from "../text/importText.ts";

/** Keys that are an estimate or part of one. */
const OF_ESTIMATES = /^(duration|effort|cost|costPerDay|remaining)\b/;
const WHAT = ["tasks", "estimates", "register", "people"] as const;

/** A table back into the text of a plan. */
export async function importVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const what = values.oneOf("what", WHAT);
  const read = values.text("read");
  const removeMissing = values.has("remove-missing");
  const problems = [...values.problems, ...clashes(values, call.subject)];
  if (problems.length > 0 || what === undefined || read === undefined) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const writer = values.has("as") ? speakerOf(given.plan, "as", values.text("as") ?? "") : undefined;
  if (writer !== undefined && isProblem(writer)) {
    printProblems([writer], given.name);
    return exitCodes.invalid;
  }
  const document = await readDocument(read);
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const result =
    what === "estimates"
      ? importEstimates(given.text, document.text)
      : importTable(given.text, document.text, what, { removeMissing });
  const ofTable = (problem: Problem) => problem.path.startsWith("row ") || problem.line === undefined;
  for (const [ours, name] of [
    [true, document.name],
    [false, given.name],
  ] as const) {
    const listed = result.problems.filter((problem) => ofTable(problem) === ours);
    if (listed.length > 0) printProblems(listed, name);
  }
  if (result.problems.some(({ severity }) => severity === "error")) return exitCodes.invalid;
  const as = values.text("as");
  if (as !== undefined && what === "tasks") {
    const ids = result.changes.flatMap(({ kind, of, key = "" }) =>
      kind === "added" || (kind === "changed" && OF_ESTIMATES.test(key)) ? [of] : [],
    );
    const entered = enteredIn(result.text, ids, as);
    if (entered.problems.length > 0) {
      printProblems(entered.problems, given.name);
      return exitCodes.invalid;
    }
    result.text = entered.text;
  }
  const dry = values.has("dry-run");
  const streamed = given.name === "standard input";
  const write = !dry && (result.changes.length > 0 || streamed);
  if (write && !(await writeBack(given, result.text))) return exitCodes.invalid;
  const { changes, unchanged } = result;
  if (values.has("json")) {
    if (!streamed || dry) printJson<ImportAnswer>({ changes, unchanged, written: write });
    return exitCodes.done;
  }
  const end = dry
    ? "Nothing is written."
    : streamed
      ? "The plan is on standard output."
      : write
        ? `Written to ${given.name}.`
        : "The plan is as it was.";
  const said = [...importLines(result), end].join("\n");
  if (streamed && !dry) printNote(said);
  else printAnswer(`${said}\n`);
  return exitCodes.done;
}

function clashes(values: OptionValues, subject: string | undefined): Problem[] {
  const problem = (word: string, rule: string, remedy: string) =>
    callProblem("option-missing", word, rule, remedy);
  return [
    ...(values.has("what")
      ? []
      : [problem("--what", "What is in the table?", `Write one of: ${WHAT.join(", ")}.`)]),
    ...(values.has("as") && values.text("what") !== "tasks"
      ? [problem("--as", "Who entered what is kept of tasks.", "Add --what tasks, or leave it out.")]
      : []),
    ...(values.has("read") ? [] : [problem("--read", "Which table?", "Add --read FILE.csv.")]),
    ...(values.text("read") === "-" && (subject ?? "-") === "-"
      ? [problem("- -", "Standard input cannot be the plan and the table.", "Name a file for one of them.")]
      : []),
    ...(values.has("remove-missing") && values.text("what") === "estimates"
      ? [problem("--remove-missing", "A table of estimates takes nothing out.", "Leave it out.")]
      : []),
  ];
}
