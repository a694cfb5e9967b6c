import { factsOfCsv, factsOfJson, type ProgressFact } from "@leeway/core";
import { readDocument } from "../files/readDocument.ts";
import { printProblems } from "../output.ts";

/** What a file of progress reports, JSON by its name or else a table; its problems are printed. None without a file. */
export async function factsOfFile(path: string | undefined): Promise<ProgressFact[] | undefined> {
  if (path === undefined) return [];
  const { name, text, problem } = await readDocument(path);
  if (text === undefined) {
    if (problem !== undefined) printProblems([problem], name);
    return undefined;
  }
  const read = /\.json$/i.test(path) ? factsOfJson : factsOfCsv;
  const { facts, problems } = read(text, name);
  if (problems.length > 0) printProblems(problems);
  return problems.some(({ severity }) => severity === "error") ? undefined : facts;
}
