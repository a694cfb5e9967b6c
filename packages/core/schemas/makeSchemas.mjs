import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { createGenerator } from "ts-json-schema-generator";
import { ANSWERS } from "./answers.mjs";
import { modern } from "./modern.mjs";
import { withUnits } from "./withUnits.mjs";

const here = dirname(fileURLToPath(import.meta.url));

/**
 * The text of `answerSchemas.ts`: the schemas of all answers, made from their types and the comments on them.
 *
 * @throws where a number of an answer has no unit.
 */
export function makeSchemas() {
  const generator = createGenerator({
    path: join(here, "../src/exchange/schemas/answers.ts"),
    tsconfig: join(here, "../tsconfig.json"),
    expose: "export",
    topRef: false,
    jsDoc: "extended",
    encodeRefs: false,
    additionalProperties: false,
    skipTypeCheck: true,
  });
  const schemas = {};
  for (const [verb, [type, call]] of Object.entries(ANSWERS)) {
    const { $schema: _draft, ...schema } = withUnits(verb, modern(generator.createSchema(type)));
    schemas[verb] = {
      $schema: "https://json-schema.org/draft/2020-12/schema",
      title: `Leeway: what \`${call}\` prints`,
      ...schema,
    };
  }
  const texts = Object.entries(schemas).map(
    ([verb, schema]) => `  ${verb}:\n    ${JSON.stringify(JSON.stringify(schema))},`,
  );
  // As text: nothing of it is typed, an editor need not look into it, and only what is asked for is read.
  return `/** Made by \`packages/core/schemas/build.mjs\` from the types in \`answers.ts\`; do not edit. */
import type { AnswersByVerb } from "./answers.ts";

export const ANSWER_SCHEMAS: Readonly<Record<keyof AnswersByVerb, string>> = {
${texts.join("\n")}
};
`;
}
