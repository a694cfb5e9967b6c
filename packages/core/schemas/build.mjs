/**
 * Makes the JSON Schemas of what `--json` prints from the types: `node packages/core/schemas/build.mjs`. To be run when
 * a type of an answer changes; the tests hold every answer against its schema, which allows no other key.
 */
import { writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { createGenerator } from "ts-json-schema-generator";

const here = dirname(fileURLToPath(import.meta.url));
const folder = join(here, "../src/exchange/schemas");
const ANSWERS = {
  forecast: ["ForecastAnswer", "what `forecast --json` prints"],
  explain: ["ExplainAnswer", "what `explain --json` prints"],
  responses: ["ResponsesAnswer", "what `responses --json` prints"],
  reach: ["ReachAnswer", "what `reach --json` prints"],
  people: ["PeopleAnswer", "what `people --json` prints"],
  paths: ["PathsAnswer", "what `paths --json` prints"],
  confidence: ["ConfidenceAnswer", "what `confidence --json` prints"],
  money: ["MoneyAnswer", "what `money --json` prints"],
  future: ["FutureAnswer", "what `future --json` prints"],
  why: ["WhyAnswer", "what `why --json` prints"],
  compare: ["CompareAnswer", "what `compare --json` prints"],
  roles: ["RolesAnswer", "what `roles --json` prints"],
  inform: ["InformAnswer", "what `inform --json` prints"],
};

const generator = createGenerator({
  path: join(folder, "answers.ts"),
  tsconfig: join(here, "../tsconfig.json"),
  expose: "none",
  topRef: false,
  jsDoc: "basic",
  additionalProperties: false,
  skipTypeCheck: true,
});

/** The generator writes draft 7; what it writes of it reads the same in 2020-12 but for these two words and tuples. */
function modern(node) {
  if (Array.isArray(node)) return node.map(modern);
  if (typeof node !== "object" || node === null) return node;
  const entries = Object.entries(node).map(([key, value]) => [key, modern(value)]);
  const made = Object.fromEntries(entries);
  if (typeof made.$ref === "string") made.$ref = made.$ref.replace("#/definitions/", "#/$defs/");
  if (made.definitions !== undefined) {
    made.$defs = made.definitions;
    delete made.definitions;
  }
  if (Array.isArray(made.items)) {
    made.prefixItems = made.items;
    delete made.items;
    if (made.additionalItems !== undefined) {
      made.items = made.additionalItems;
      delete made.additionalItems;
    }
  }
  return made;
}

const schemas = {};
for (const [verb, [type, title]] of Object.entries(ANSWERS)) {
  const { $schema: _draft, ...schema } = modern(generator.createSchema(type));
  schemas[verb] = {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: `Leeway: ${title}`,
    ...schema,
  };
}
// As text: nothing of it is typed, and an editor need not look into it.
const text = `/** Made by \`packages/core/schemas/build.mjs\` from the types in \`answers.ts\`; do not edit. */
export const ANSWER_SCHEMAS = JSON.parse(
  ${JSON.stringify(JSON.stringify(schemas))},
) as Record<${Object.keys(ANSWERS)
  .map((verb) => `"${verb}"`)
  .join(" | ")}, Record<string, unknown>>;
`;
writeFileSync(join(folder, "answerSchemas.ts"), text);
