import { readdirSync, readFileSync } from "node:fs";

const examples = new URL("../../../examples/", import.meta.url);

/** The example plans: name of the file and text. */
export const exampleTexts = readdirSync(examples)
  .filter((name) => name.endsWith(".plan.yaml"))
  .map((name): [string, string] => [name, readFileSync(new URL(name, examples), "utf8")]);
