import { type Id, type Plan, type Problem, readPlan, type Task } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";
import { readDocument } from "../files/readDocument.ts";
import { printProblems } from "../output.ts";

/** A plan with the text and the name it came from. */
export interface GivenPlan {
  plan: Plan;
  text: string;
  name: string;
}

/** Reads a plan document; its problems are printed with its name. Undefined where there is no plan to work on. */
export async function givenPlan(subject: string): Promise<GivenPlan | undefined> {
  const { name, text, problem } = await readDocument(subject);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return undefined;
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  return plan === undefined ? undefined : { plan, text, name };
}

/** The task of that id, or what is wrong. */
export function taskOf(plan: Plan, id: Id): Task | Problem {
  const found = plan.tasks.find((task) => task.id === id);
  return found ?? unknown(id, "The plan has no such task.", plan.tasks);
}

/** A person or stakeholder of the plan by id, or what is wrong. */
export function speakerOf(plan: Plan, option: string, id: Id): { id: Id; name: string } | Problem {
  const known = [...plan.people, ...plan.stakeholders];
  const found = known.find((each) => each.id === id);
  if (found !== undefined) return found;
  const rule = "The plan has no person or stakeholder of this id.";
  return unknown(`--${option} ${id}`, rule, known, id);
}

function unknown(word: string, rule: string, known: readonly { id: Id }[], id = word): Problem {
  const ids = known.map((each) => each.id);
  const near = nearest(id, ids);
  const listed = `${ids.slice(0, 6).join(", ")}${ids.length > 6 ? ", ..." : ""}`;
  const remedy =
    near !== undefined
      ? `Did you mean ${near}?`
      : ids.length === 0
        ? "Add it to the plan first."
        : `Known: ${listed}.`;
  return callProblem("unknown-id", word, rule, remedy);
}

export function isProblem(value: object): value is Problem {
  return "rule" in value && "remedy" in value;
}

/** The name of a person or stakeholder; the id where the plan has none. */
export function nameIn(plan: Plan): (id: Id) => string {
  const names = new Map([...plan.stakeholders, ...plan.people].map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? id;
}
