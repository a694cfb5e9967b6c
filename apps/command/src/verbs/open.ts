import { existsSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { boundFile } from "../open/boundFile.ts";
import { serveNotebook } from "../open/serveNotebook.ts";
import { printAnswer, printProblems } from "../output.ts";

/** The built notebook: beside the built command, or beside the sources. */
const pages = ["../../notebook/dist", "../../../notebook/dist"].map((path) =>
  join(import.meta.dirname, path),
);

/** Serves the notebook bound to one plan file until it is stopped. */
export async function openVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const port = values.count("port", 65_535);
  const problems = [...values.problems];
  if (call.subject === "-")
    problems.push(
      callProblem("no-file", "-", "The notebook is bound to a file.", "Name the file of the plan."),
    );
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  const subject = call.subject ?? "-";
  // A plan with problems opens all the same: the page is where they are put right.
  const document = await readDocument(subject);
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const page = pages.find((path) => existsSync(join(path, "index.html")));
  if (page === undefined) {
    printProblems([
      callProblem("no-notebook", "", "The notebook has not been built.", "Run `npm run setup` once."),
    ]);
    return exitCodes.invalid;
  }
  try {
    const file = boundFile(resolve(subject));
    const { address } = await serveNotebook(page, file, basename(subject), port ?? 0);
    printAnswer(
      `${basename(subject)} is open at ${address}\nEvery change is saved to the file. The address is for you alone; Ctrl+C ends it.\n`,
    );
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    printProblems([
      callProblem("not-served", "", `It could not be served on 127.0.0.1: ${words}.`, "Name another --port."),
    ]);
    return exitCodes.invalid;
  }
  // Until a signal ends the process.
  return new Promise<number>(() => {});
}
