/**
 * Makes the JSON Schemas of what `--json` prints from the types: `node packages/core/schemas/build.mjs`. To be run when
 * a type of an answer changes; the tests hold every answer against its schema, which allows no other key.
 */
import { writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { makeSchemas } from "./makeSchemas.mjs";

const here = dirname(fileURLToPath(import.meta.url));
writeFileSync(join(here, "../src/exchange/schemas/answerSchemas.ts"), makeSchemas());
