// The published JSON Schemas (draft 2020-12) against Ajv, an independent validator: forecasts and documents of random
// plans are what their schema says, no schema allows a key that it does not name, and every number has its unit. What
// the verbs print is held against them in answersOfVerbs.test.ts.
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { schemaVerb } from "../../../apps/command/src/verbs/schema.ts";
import {
  forecast,
  jsonSchemaOf,
  planFromData,
  planJsonSchema,
  readPlan,
  roleMatrix,
  SCHEMA_NAMES,
  type SchemaName,
} from "../../../packages/core/src/index.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { documentOf } from "../../property/engine/programPlans.ts";

const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, formats: { date: true } });
const valid = Object.fromEntries(SCHEMA_NAMES.map((name) => [name, ajv.compile(jsonSchemaOf(name))]));

function expectFits(name: SchemaName, answer: unknown): void {
  if (answer === undefined) throw new Error(`There is no ${name}.`);
  const check = valid[name];
  // As it is printed: a key without a value is no key.
  const fits = check?.(JSON.parse(JSON.stringify(answer)));
  expect(fits ? "" : `${name}: ${JSON.stringify(check?.errors?.slice(0, 3))}`).toBe("");
}

const EXAMPLES = new URL("../../../examples/", import.meta.url);

/** Everything in a schema that holds a number, with its place. */
function numbersIn(node: unknown, place: string): { place: string; said: unknown }[] {
  if (typeof node !== "object" || node === null) return [];
  const { type, enum: values, const: value, description } = node as Record<string, unknown>;
  const isNumber = [type].flat().some((each) => each === "number" || each === "integer");
  const here = isNumber && values === undefined && value === undefined ? [{ place, said: description }] : [];
  return [...here, ...Object.entries(node).flatMap(([key, item]) => numbersIn(item, `${place}/${key}`))];
}
/** A value quoted as the plan writes it has the plan's unit. */
const QUOTED = /\$defs\/(Json|TableRow)\//;
const UNIT =
  /days|weeks|years|money|rate|0 to 1|-1 to 1|whole number|per cent|ratio, without a unit|the unit that stands|unit of the estimate/i;

describe("the schemas of answers", () => {
  it("hold for forecasts and documents of random plans", () => {
    const isPlan = ajv.compile({ ...planJsonSchema(), $id: "again" });
    for (let seed = 1; seed <= 12; seed++) {
      expect([seed, isPlan(documentOf(seededRng(seed))), isPlan.errors]).toEqual([seed, true, null]);
      const document = JSON.parse(JSON.stringify(randomPlanDocument(seededRng(seed))));
      expect(isPlan(document), `seed ${seed}: ${JSON.stringify(isPlan.errors)}`).toBe(true);
      const { plan } = planFromData(document);
      if (plan === undefined) throw new Error(`seed ${seed} is a plan`);
      const run = forecast(plan, { iterations: 16 });
      if (run.forecast !== undefined) expectFits("forecast", run.forecast);
      expectFits("roles", roleMatrix(plan));
      // Form that a schema can see: an unknown key, a wrong type, a missing key.
      for (const broken of [
        { ...document, tsks: [] },
        { ...document, start: 20270101 },
        { ...document, tasks: undefined },
        { ...document, iterations: "many" },
      ]) {
        expect(isPlan(JSON.parse(JSON.stringify(broken)))).toBe(false);
      }
    }
  });

  it("refuse what is no answer: a key missing, one too many, another type", () => {
    const { plan } = readPlan(readFileSync(new URL("minimal.plan.yaml", EXAMPLES), "utf8"));
    const run = plan && forecast(plan, { iterations: 64 }).forecast;
    if (run === undefined) throw new Error("it runs");
    const { seed: _seed, ...without } = run;
    const check = valid.forecast;
    expect(check?.(JSON.parse(JSON.stringify(run)))).toBe(true);
    expect(check?.(JSON.parse(JSON.stringify(without)))).toBe(false);
    expect(check?.(JSON.parse(JSON.stringify({ ...run, more: 1 })))).toBe(false);
    expect(check?.(JSON.parse(JSON.stringify({ ...run, iterations: "64" })))).toBe(false);
  });

  it("say the unit of every number", () => {
    const answers = SCHEMA_NAMES.filter((name) => name !== "plan");
    const numbers = answers.flatMap((name) => numbersIn(jsonSchemaOf(name), name));
    expect(numbers.length).toBeGreaterThan(800);
    const without = numbers.filter(
      ({ place, said }) => !QUOTED.test(place) && !(typeof said === "string" && UNIT.test(said)),
    );
    expect(without).toEqual([]);
  });

  it("hold for every example document", () => {
    const documents = readdirSync(EXAMPLES).filter((name) => name.endsWith(".plan.yaml"));
    expect(documents.length).toBeGreaterThan(3);
    for (const name of documents) {
      const document: unknown = parse(readFileSync(new URL(name, EXAMPLES), "utf8"));
      expect([name, valid.plan?.(document), valid.plan?.errors]).toEqual([name, true, null]);
    }
  });

  it("are made from the types as they are now", () => {
    const build = fileURLToPath(new URL("../../../packages/core/schemas/build.mjs", import.meta.url));
    const { status, stderr } = spawnSync(process.execPath, [build, "--check"], { encoding: "utf8" });
    expect([status, stderr]).toEqual([0, ""]);
  });

  it("say which draft they are of, and their verb", () => {
    for (const name of SCHEMA_NAMES) {
      expect(jsonSchemaOf(name).$schema).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(ajv.validateSchema(jsonSchemaOf(name)), name).toBe(true);
    }
    expect(schemaVerb("forcast")).toBe(2);
  });
});
