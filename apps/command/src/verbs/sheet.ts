import {
  addOpinion,
  type Id,
  type Problem,
  readCsv,
  readSheet,
  type SheetAnswer,
  sheetCells,
  sheetOf,
  writeCsv,
} from "@leeway/core";

import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { type GivenPlan, givenPlan, isProblem, speakerOf } from "../estimating/givenPlan.ts";
import { outputClash, writeBack, writtenTo } from "../estimating/writeBack.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { changedLines } from "../text/changedLines.ts";
import { shellWord } from "../text/shellWord.ts";

function refuse(problems: readonly Problem[], name?: string): number {
  printProblems(problems, name);
  return exitCodes.invalid;
}

/** A sheet of questions for one person, out (`--for`) as comma-separated values, and back in (`--read`). */
export async function sheetVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const [to, read, by, out] = ["for", "read", "by", "out"].map((name) => values.text(name));
  const date = dateOption(values, "date", todayOf(new Date()));
  const clash = read === undefined ? [] : outputClash(call, values);
  const problems = [
    ...values.problems,
    ...date.problems,
    ...clash,
    ...clashes({ to, read, by, out }, call, values),
  ];
  if (problems.length > 0) return refuse(problems);
  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const as = values.text("as");
  const writer = as === undefined ? undefined : speakerOf(given.plan, "as", as);
  if (writer !== undefined && isProblem(writer)) return refuse([writer], given.name);
  const person = speakerOf(given.plan, to === undefined ? "by" : "for", to ?? by ?? "");
  if (isProblem(person)) return refuse([person], given.name);
  if (read !== undefined)
    return takeIn(given, { path: read, by: person.id, date: date.value, writer: writer?.id }, values);
  const rows = sheetOf(given.plan, person.id, { all: values.has("all") });
  if (rows.length === 0) {
    const rule = `${person.name} has no task that could be asked for.`;
    return refuse([callProblem("no-rows", `--for ${person.id}`, rule, "Add --all to ask about every task.")]);
  }
  const [header = [], ...cells] = sheetCells(rows);
  return putOut(writeCsv(header, cells), out, values.has("force"), rows.length);
}

interface Words {
  to: string | undefined;
  read: string | undefined;
  by: string | undefined;
  out: string | undefined;
}

function clashes({ to, read, by, out }: Words, call: Call, values: OptionValues): Problem[] {
  const problem = (word: string, rule: string, remedy: string) => callProblem("call", word, rule, remedy);
  if (to === undefined && read === undefined) {
    return [problem("sheet", "Out or in?", "Add --for PERSON to write one, or --read FILE --by PERSON.")];
  }
  return [
    ...(to !== undefined && read !== undefined
      ? [problem("--for --read", "One at a time: out or in.", "Leave one of them out.")]
      : []),
    ...(read !== undefined && by === undefined
      ? [problem("--read", "A sheet is somebody's.", "Add --by and the id of who filled it.")]
      : []),
    ...(read !== undefined && (out !== undefined || values.has("all"))
      ? [problem("--read", "--out and --all are for a sheet that goes out.", "Leave them out.")]
      : []),
    ...(read === undefined && values.has("as")
      ? [problem("--as", "It says who takes a sheet in.", "Add --read FILE, or leave it out.")]
      : []),
    ...(read === "-" && call.subject === "-"
      ? [problem("- -", "Standard input cannot be the plan and the sheet.", "Name a file for one of them.")]
      : []),
  ];
}

function putOut(text: string, out: string | undefined, force: boolean, rows: number): number {
  if (out === undefined) {
    printAnswer(text);
    return exitCodes.done;
  }
  try {
    writeWhole(out, text, force);
  } catch (error) {
    const rule = "There is such a file already; it may be filled in.";
    return refuse([whyNotWritten(out, error, [rule, "Add --force to overwrite it."])]);
  }
  printNote(`Wrote ${out}: ${rows === 1 ? "1 estimate" : `${rows} estimates`} to ask for.`);
  return exitCodes.done;
}

async function takeIn(
  given: GivenPlan,
  { path, by, date, writer }: { path: string; by: Id; date: string; writer: Id | undefined },
  values: OptionValues,
): Promise<number> {
  const document = await readDocument(path);
  if (document.text === undefined) {
    return refuse(document.problem === undefined ? [] : [ofSheet(document.problem)], document.name);
  }
  const table = readCsv(document.text);
  const bad = table.problems.some(({ severity }) => severity === "error");
  const { decimalComma } = table;
  const reading = bad ? undefined : readSheet(given.plan, table.cells, { by, date, decimalComma });
  const problems = [...table.problems, ...(reading?.problems ?? [])];
  if (problems.length > 0) printProblems(problems, document.name);
  if (reading === undefined || problems.some(({ severity }) => severity === "error"))
    return exitCodes.invalid;

  let { text } = given;
  const entered = writer === undefined || writer === by ? {} : { enteredBy: [writer] };
  const taken = reading.opinions.map(({ task, opinion }) => ({ task, opinion: { ...opinion, ...entered } }));
  for (const { task: id, opinion } of taken) {
    const task = given.plan.tasks.find((each) => each.id === id);
    if (task === undefined) continue; // the reading names tasks of this plan only
    const edit = addOpinion(text, task, opinion);
    if (edit.problems.length > 0) return refuse(edit.problems, given.name);
    ({ text } = edit);
  }
  const { unchanged, empty } = reading;
  const opinions = taken;
  const dry = values.has("dry-run");
  const write = !dry && (opinions.length > 0 || given.name === "standard input");
  if (write && !(await writeBack(given, text))) return exitCodes.invalid;
  const counts = { taken: opinions.length, unchanged, empty, written: write };
  if (values.has("json")) {
    printJson<SheetAnswer>({ ...counts, opinions });
    return exitCodes.done;
  }
  const said = `${opinions.length} new, ${unchanged} as before, ${empty} without an answer.`;
  const lines = dry
    ? [...changedLines(given.text, text), said, "Nothing is written."]
    : [said, ...next(given, opinions.length)];
  const answer = `${lines.join("\n")}\n`;
  if (given.name === "standard input" && !dry) printNote(answer);
  else printAnswer(answer);
  return exitCodes.done;
}

/** What is wrong with a file, in words for a sheet. */
function ofSheet(problem: Problem): Problem {
  if (problem.code === "not-text") {
    return { ...problem, remedy: "Save the sheet as comma-separated values, encoded as UTF-8." };
  }
  if (problem.code !== "empty") return problem;
  return { ...problem, rule: "It is empty: there is no sheet to read.", remedy: "Begin with --for PERSON." };
}

function next({ name }: GivenPlan, taken: number): string[] {
  return taken === 0
    ? ["The plan is as it was."]
    : [`${writtenTo(name)}; estimates are as they were. Next: leeway pool ${shellWord(name)}`];
}
