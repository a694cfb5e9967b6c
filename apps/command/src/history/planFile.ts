import { type Plan, type Problem, readPlan } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";
import { readDocument } from "../files/readDocument.ts";
import { printProblems } from "../output.ts";

/** A plan that stands in a file, and the text it was read from. */
export interface PlanFile {
  path: string;
  text: string;
  plan: Plan;
}

/** Reads a plan that something stands beside; its problems are printed. Standard input has no beside. */
export async function planFile(subject: string, verb: string): Promise<PlanFile | undefined> {
  if (subject === "-") {
    const rule = `${verb} keeps files beside the plan, and standard input has no place.`;
    printProblems([callProblem("needs-file", "-", rule, "Name the plan's file.")]);
    return undefined;
  }
  const { name, text, problem } = await readDocument(subject);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return undefined;
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  return plan === undefined ? undefined : { path: subject, text, plan };
}

/** What is wrong with `--as WHO`: nobody of that id is in the plan. */
export function whoProblems({ people, stakeholders }: Plan, who: string | undefined): Problem[] {
  const ids = [...people, ...stakeholders].map(({ id }) => id).sort();
  if (who === undefined || ids.includes(who)) return [];
  const near = nearest(who, ids);
  const known =
    ids.length === 0 ? "This plan names nobody: leave it out." : `Name one of: ${ids.join(", ")}.`;
  const remedy = near === undefined ? known : `Did you mean ${near}?`;
  return [callProblem("unknown-id", `--as ${who}`, "There is nobody of that id in the plan.", remedy)];
}
