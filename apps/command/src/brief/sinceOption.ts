import { type Plan, readPlan } from "@leeway/core";
import { readDocument } from "../files/readDocument.ts";
import { printProblems } from "../output.ts";

/** The version that `--since` names; its problems are printed with its name. `wrong`: it cannot be read. */
export async function planSince(path: string | undefined): Promise<{ since?: Plan; wrong: boolean }> {
  if (path === undefined || path === "") return { wrong: false };
  const { name, text, problem } = await readDocument(path);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return { wrong: true };
  }
  const { plan, problems } = readPlan(text);
  if (problems.length > 0) printProblems(problems, name);
  return plan === undefined ? { wrong: true } : { since: plan, wrong: false };
}
