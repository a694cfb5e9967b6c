import {
  addOpinion,
  askableOf,
  beginInterview,
  type InterviewAnswer,
  type InterviewSubject,
  impliedBy,
  type Opinion,
  type Problem,
} from "@leeway/core";
import { dateOption, todayOf } from "../brief/dateOption.ts";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { answersFromFile } from "../estimating/answersFile.ts";
import { askPerson } from "../estimating/askPerson.ts";
import { givenPlan, isProblem, nameIn, speakerOf, taskOf } from "../estimating/givenPlan.ts";
import { outputClash, writeBack, writtenTo } from "../estimating/writeBack.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printJson, printNote, printProblems } from "../output.ts";
import { changedLines } from "../text/changedLines.ts";
import { impliedSentences, opinionSentence } from "../text/interviewText.ts";
import { pageOf, wrap } from "../text/page.ts";
import { plainText } from "../text/plainText.ts";
import { shellWord } from "../text/shellWord.ts";

function refuse(problems: readonly Problem[], name?: string): number {
  printProblems(problems, name);
  return exitCodes.invalid;
}

/** Asks one person about one task and writes what they said into the plan. */
export async function interviewVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const by = values.text("by");
  const of = values.oneOf("of", ["duration", "effort", "cost"]);
  const file = values.text("answers");
  const date = dateOption(values, "date", todayOf(new Date()));
  const problems = [...values.problems, ...date.problems, ...outputClash(call, values)];
  if (by === undefined) {
    const rule = "An opinion is somebody's.";
    problems.push(callProblem("missing-option", "--by", rule, "Add --by and the id of who is asked."));
  }
  if (call.subject === "-" && file === undefined) {
    const rule = "Standard input cannot be the plan and the answers.";
    problems.push(callProblem("repeated-input", "-", rule, "Name the plan's file, or give --answers."));
  }
  if (problems.length > 0 || by === undefined) return refuse(problems);

  const given = await givenPlan(call.subject ?? "-");
  if (given === undefined) return exitCodes.invalid;
  const { plan, name } = given;
  const task = taskOf(plan, call.second ?? "");
  const speaker = speakerOf(plan, "by", by);
  const as = values.text("as");
  const writer = as === undefined ? speaker : speakerOf(plan, "as", as);
  if (isProblem(task) || isProblem(speaker) || isProblem(writer))
    return refuse([task, speaker, ...(writer === speaker ? [] : [writer])].filter(isProblem), name);
  const askable = askableOf(plan, task);
  const asked = askable.find((each) => each.of === of) ?? (of === undefined ? askable[0] : undefined);
  if (asked === undefined) {
    const rule =
      of === undefined
        ? "There is nothing to ask about a milestone, or about what is finished."
        : `The task has no ${of} to ask about.`;
    const has = askable.map((each) => each.of).join(", ");
    return refuse(
      [callProblem("nothing-to-ask", task.id, rule, has === "" ? "Name another." : `It has: ${has}.`)],
      name,
    );
  }
  const subject: InterviewSubject = { ...asked, by, date: date.value };

  const found = file === undefined ? await fromPerson(subject) : await answersFromFile(subject, file);
  if (found.opinion === undefined) return refuse(found.problems);
  const entered = writer.id === by ? {} : { enteredBy: [writer.id] };
  const opinion = { ...found.opinion, ...entered };
  const edit = addOpinion(given.text, task, opinion);
  if (edit.problems.length > 0) return refuse(edit.problems, name);
  const dry = values.has("dry-run");
  if (!dry && !(await writeBack(given, edit.text))) return exitCodes.invalid;
  const implied = impliedBy(opinion.estimate);
  if (values.has("json")) {
    printJson<InterviewAnswer>({ task: task.id, opinion, implied, written: !dry });
    return exitCodes.done;
  }
  const { width } = pageOf(process.env, process.stdout);
  const saying = `${nameIn(plan)(by)} on ${subject.name}: ${opinionSentence(opinion, subject.unitWords)}.`;
  const text = [
    ...wrap(plainText(saying), width),
    ...wrap(plainText(impliedSentences({ ...beginInterview(subject), answers: {} }, implied)), width),
    ...(dry ? ["", "Would be written:", ...changedLines(given.text, edit.text)] : []),
    "",
    dry
      ? "Nothing is written."
      : `${writtenTo(name)}; the task's estimate is as it was. Next: leeway pool ${shellWord(name)} ${task.id}`,
    "",
  ].join("\n");
  if (name === "standard input" && !dry) printNote(text);
  else printAnswer(text);
  return exitCodes.done;
}

async function fromPerson(subject: InterviewSubject): Promise<{ opinion?: Opinion; problems: Problem[] }> {
  const { width } = pageOf(process.env, process.stderr);
  const channels = { input: process.stdin, output: process.stderr, width };
  const { opinion, question } = await askPerson(beginInterview(subject), channels);
  if (opinion !== undefined) return { opinion, problems: [] };
  const rule = `The answers ended at the question about ${question?.key ?? "it"}; nothing is written.`;
  return { problems: [callProblem("unfinished", subject.task, rule, "Answer all of it, or use --answers.")] };
}
