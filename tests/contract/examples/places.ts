import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** The checkout, with a slash at its end. */
export const root = fileURLToPath(new URL("../../../", import.meta.url));
export const examples = `${root}examples/`;

/** Names in `examples/` with that ending, in code-unit order. */
export function examplesEnding(ending: string): string[] {
  return readdirSync(examples)
    .filter((name) => name.endsWith(ending))
    .sort();
}

/** `LEEWAY_WRITE_OUTPUT=1` writes printed output into programs and READMEs instead of comparing it. */
export const writing = process.env.LEEWAY_WRITE_OUTPUT === "1";
