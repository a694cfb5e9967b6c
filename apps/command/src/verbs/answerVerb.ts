import { type AnswersByVerb, type Plan, type Problem, readPlan, scenarioNotes } from "@leeway/core";
import type { EngineOptions } from "../call/engineOptions.ts";
import type { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { chartsWritten } from "../charts/chartsWritten.ts";
import type { Drawn } from "../charts/figureLists.ts";
import { memoryProblem } from "../compute/memoryProblem.ts";
import { progressLine } from "../compute/progressLine.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";
import { hearStops } from "../stopping.ts";
import { type Page, pageOf } from "../text/page.ts";
import { scenarioKey } from "../text/scenarioLines.ts";
import { shellWord } from "../text/shellWord.ts";

/** What the verbs that come through here print as JSON. */
type OfOnePlan = AnswersByVerb[
  | "explain"
  | "confidence"
  | "responses"
  | "reach"
  | "assumptions"
  | "people"
  | "paths"
  | "why"
  | "future"
  | "money"
  | "brief"
  | "uplift"];

/** What one verb asks of a plan, and how its answer reads. */
export interface Question<A extends object> {
  options: EngineOptions;
  /** Problems of the call besides those of `values`. */
  problems?: readonly Problem[];
  /** Rows of n values that are held at once, two of them counted as one task: see `memoryProblem`. */
  rowsAsTasks: (plan: Plan) => number;
  /** What is wrong with the call for this plan. */
  unfit?: (plan: Plan) => readonly Problem[];
  ask: (plan: Plan, onProgress: (done: number, total: number) => void) => Promise<Answered<A>>;
  text: (answer: A, page: Page, planWord: string) => string;
  /** Writes the charts of the answer, when asked for; false: it could not. */
  draw?: (answer: A) => Promise<boolean>;
}
export interface Answered<A> {
  answer?: A | undefined;
  problems: readonly Problem[];
}

/** The charts of a verb, into the folder that `--charts` names. */
export function drawing<V extends keyof Drawn>(
  verb: V,
  values: OptionValues,
): (answer: Drawn[V]) => Promise<boolean> {
  const folder = values.text("charts");
  return (answer) => chartsWritten(verb, answer, folder);
}

/**
 * What every verb about one plan does: all problems of the call at once, the plan and its problems, whether there is
 * memory, the answer, its charts, and then text or JSON. Answers the exit code.
 */
export async function answerVerb<A extends OfOnePlan>(
  call: Call,
  values: OptionValues,
  question: Question<A>,
): Promise<number> {
  const { options, problems: wrong = [] } = question;
  if (values.problems.length + wrong.length > 0) {
    printProblems([...values.problems, ...wrong]);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const { plan, problems } = readPlan(document.text);
  if (problems.length > 0) printProblems(problems, document.name);
  if (plan === undefined) return exitCodes.invalid;
  const tooLarge = memoryProblem(question.rowsAsTasks(plan), options.iterations ?? plan.iterations);
  const unfit = [...(question.unfit?.(plan) ?? []), ...(tooLarge === undefined ? [] : [tooLarge])];
  if (unfit.length > 0) {
    printProblems(unfit, document.name);
    return exitCodes.invalid;
  }
  const line = progressLine();
  const { answer, problems: found } = await question.ask(plan, line.show);
  line.clear();
  await hearStops();
  const told = [...scenarioNotes(plan, options), ...found];
  if (told.length > 0) printProblems(told, document.name);
  if (answer === undefined) return exitCodes.invalid;
  if (question.draw !== undefined && !(await question.draw(answer))) return exitCodes.invalid;
  if (values.has("json")) printJson<OfOnePlan>({ ...scenarioKey(options), ...answer });
  else {
    const page = pageOf(process.env, process.stdout);
    printAnswer(question.text(answer, page, shellWord(document.name)));
  }
  return exitCodes.done;
}
