/**
 * Makes the JSON Schemas of what `--json` prints from the types: `node packages/core/schemas/build.mjs`. To be run when
 * a type of an answer changes; the tests hold every answer against its schema, which allows no other key. With `--check`
 * nothing is written, and the code is 1 where the schemas are not those of the types.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeSchemas } from "./makeSchemas.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const file = join(here, "../src/exchange/schemas/answerSchemas.ts");
const text = makeSchemas();
if (!process.argv.includes("--check")) writeFileSync(file, text);
else if (readFileSync(file, "utf8") !== text) {
  console.error("The schemas are not those of the types: run `node packages/core/schemas/build.mjs`.");
  process.exitCode = 1;
}
