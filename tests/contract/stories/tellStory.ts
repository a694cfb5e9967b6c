import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setInPlan } from "@leeway/core";
import { parse } from "yaml";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { type Ended, examplePlan, leeway } from "../command/leeway.ts";
import { commandWords, type Step, shownLines, storySteps } from "./storyPage.ts";

export interface Told {
  /** The page as it reads when every command is run anew. */
  page: string;
  /** Every command in order, with how it ended. */
  runs: (Ended & { command: string })[];
  /** The folder the story happened in. */
  folder: string;
}

/**
 * Acts a story out in an empty folder that holds the files beside the page and what it takes over: files of examples/,
 * by the name they have in the story. Throws where a command ends otherwise than told.
 */
export async function tellStory(
  pageFile: string,
  beside: string,
  takenOver: Record<string, string> = {},
): Promise<Told> {
  const folder = temporaryFolder();
  cpSync(beside, folder, { recursive: true });
  for (const [name, example] of Object.entries(takenOver))
    cpSync(join(dirname(examplePlan), example), join(folder, name));
  const runs: Told["runs"] = [];
  let page = "";
  for (const step of storySteps(readFileSync(pageFile, "utf8"))) page += await act(step, folder, runs);
  return { page, runs, folder };
}

async function act(step: Step, folder: string, runs: Told["runs"]): Promise<string> {
  switch (step.kind) {
    case "told":
      return step.text;
    case "write":
      writeFileSync(join(folder, step.file), step.text);
      return fenced(step.info, step.text);
    case "put": {
      const file = join(folder, step.plan);
      const { text, problems } = setInPlan(readFileSync(file, "utf8"), step.path, valueToPut(step));
      if (problems.length > 0)
        throw new Error(`${step.path.join(".")}: ${problems.map(({ rule }) => rule).join(" ")}`);
      writeFileSync(file, text);
      return fenced(step.info, step.text);
    }
    case "run": {
      const [program, ...words] = commandWords(step.command);
      if (program !== "leeway") throw new Error(`Only leeway is run in a story, not: ${step.command}`);
      const ended = await leeway(words, { cwd: folder, env: { COLUMNS: "100" } });
      runs.push({ command: step.command, ...ended });
      if (ended.code !== step.exit)
        throw new Error(
          `$ ${step.command}\nended with ${ended.code}, not ${step.exit}:\n${ended.err}${ended.out}`,
        );
      const output = shownLines(ended.err + ended.out, step.lines);
      return fenced(step.info, `$ ${step.command}\n${output}${output === "" ? "" : "\n"}`);
    }
  }
}

/** What a block puts into the plan: itself, or what the example says at that path, of which it shows some lines. */
function valueToPut({ text, path, from }: Extract<Step, { kind: "put" }>): unknown {
  if (from === undefined) return parse(text);
  const example = readFileSync(join(dirname(examplePlan), from), "utf8");
  const known = new Set(example.split("\n").map((line) => line.trim()));
  for (const line of text.split("\n").map((each) => each.trim())) {
    if (line !== "..." && !known.has(line)) throw new Error(`${from} has no such line: ${line}`);
  }
  let value: unknown = parse(example);
  for (const step of path) {
    value = Array.isArray(value)
      ? value.find((one) => (one as { id?: unknown }).id === step)
      : (value as Record<string, unknown>)[step];
  }
  return value;
}

function fenced(info: string, body: string): string {
  return `\`\`\`${info}\n${body}\`\`\``;
}
