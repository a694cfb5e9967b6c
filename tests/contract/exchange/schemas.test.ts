// The published JSON Schemas (draft 2020-12) against Ajv, an independent validator: every answer of the example plans
// and of random plans is what its schema says, and no schema allows a key that it does not name.
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { schemaVerb } from "../../../apps/command/src/verbs/schema.ts";
import {
  budget,
  compare,
  drivingPaths,
  dueList,
  explain,
  forecast,
  future,
  jsonSchemaOf,
  type Plan,
  peopleLoad,
  planFromData,
  planJsonSchema,
  reach,
  readPlan,
  responses,
  roleMatrix,
  SCHEMA_NAMES,
  type SchemaName,
  why,
  whyConfidence,
} from "../../../packages/core/src/index.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, formats: { date: true } });
const valid = Object.fromEntries(SCHEMA_NAMES.map((name) => [name, ajv.compile(jsonSchemaOf(name))]));

function expectFits(name: SchemaName, answer: unknown): void {
  expect(answer, name).toBeDefined();
  const check = valid[name];
  // As it is printed: a key without a value is no key.
  const fits = check?.(JSON.parse(JSON.stringify(answer)));
  expect(fits ? "" : `${name}: ${JSON.stringify(check?.errors?.slice(0, 3))}`).toBe("");
}

const EXAMPLES = ["quillmarsh-clinic", "brackenford-food-bank", "ostrel-ferry-ticketing"];
function example(name: string): Plan {
  const text = readFileSync(new URL(`../../../examples/${name}.plan.yaml`, import.meta.url), "utf8");
  const { plan } = readPlan(text);
  if (plan === undefined) throw new Error(name);
  return plan;
}

describe("the schemas of answers", () => {
  it.each(EXAMPLES)("hold for every answer about %s", (name) => {
    const plan = example(name);
    const options = { iterations: 64 };
    const run = forecast(plan, { ...options, tornado: true }).forecast;
    expectFits("forecast", run);
    expectFits("explain", explain(plan, options).explanation);
    expectFits("responses", responses(plan, { ...options, sum: 5000 }).responses);
    expectFits("reach", reach(plan, { ...options, sum: plan.commitment.budget ?? 500_000 }).reach);
    const lose = { person: plan.people[0]?.id ?? "", days: 5 };
    expectFits("people", peopleLoad(plan, { ...options, lose }).people);
    expectFits("paths", drivingPaths(plan, options).paths);
    expectFits("confidence", whyConfidence(plan, options).confidence);
    expectFits("money", budget(plan, options).budget);
    expectFits("future", future(plan, { iteration: 7 }, options).future);
    expectFits("why", why(plan, plan.tasks[5]?.id ?? "", options).why);
    expectFits("roles", roleMatrix(plan));
    if (run === undefined) throw new Error("it runs");
    const { seed, iterations, version, design } = run;
    expectFits("inform", { plan: run.plan, seed, iterations, version, design, ...dueList(plan, run) });
  });

  it("holds for a comparison", () => {
    const plan = example("brackenford-food-bank");
    const later = { ...plan, start: "2027-06-01" };
    expectFits("compare", compare(plan, later, { iterations: 128 }).comparison);
  });

  it("hold for forecasts and documents of random plans", () => {
    const isPlan = ajv.compile({ ...planJsonSchema(), $id: "again" });
    for (let seed = 1; seed <= 12; seed++) {
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
    const run = forecast(example("brackenford-food-bank"), { iterations: 64 }).forecast;
    if (run === undefined) throw new Error("it runs");
    const { seed: _seed, ...without } = run;
    const check = valid.forecast;
    expect(check?.(JSON.parse(JSON.stringify(run)))).toBe(true);
    expect(check?.(JSON.parse(JSON.stringify(without)))).toBe(false);
    expect(check?.(JSON.parse(JSON.stringify({ ...run, more: 1 })))).toBe(false);
    expect(check?.(JSON.parse(JSON.stringify({ ...run, iterations: "64" })))).toBe(false);
  });

  it("say which draft they are of, and their verb", () => {
    for (const name of SCHEMA_NAMES) {
      expect(jsonSchemaOf(name).$schema).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(ajv.validateSchema(jsonSchemaOf(name)), name).toBe(true);
    }
    expect(schemaVerb("forcast")).toBe(2);
  });
});
