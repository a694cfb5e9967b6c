// The published JSON Schema against an independent validator (Ajv, draft 2020-12), and against the reader.

import { planFromData, planJsonSchema, readPlan, STRUCTURAL_CODES, starterPlan } from "@leeway/core";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { BROKEN } from "./brokenPlans.ts";
import { fixture, HEAD, TASK } from "./plans.ts";

const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, formats: { date: true } });
const valid = ajv.compile(planJsonSchema());
const SEED = 20270104;

/** Whether the reader objects to the form alone, which is all a schema can see. */
function refusesForm(data: unknown): boolean {
  return planFromData(data).problems.some(({ code }) => STRUCTURAL_CODES.has(code));
}

describe("planJsonSchema()", () => {
  it("is a valid schema of draft 2020-12", () => {
    expect(ajv.validateSchema(planJsonSchema())).toBe(true);
    expect(planJsonSchema().$schema).toBe("https://json-schema.org/draft/2020-12/schema");
  });

  it("describes every key in a sentence", () => {
    const { $defs } = planJsonSchema() as {
      $defs: Record<string, { properties?: Record<string, { description?: string }> }>;
    };
    const silent = Object.entries($defs).flatMap(([name, { properties = {} }]) =>
      Object.keys(properties)
        .filter((key) => !/[\w`]\.$/.test(properties[key]?.description ?? ""))
        .map((key) => `${name}.${key}`),
    );
    expect(silent).toEqual([]);
  });

  it.each([
    ["the least plan", HEAD + TASK],
    ["every key", fixture("complete.plan.yaml")],
    ["the starter", starterPlan({ title: "New", start: "2027-01-04", currency: "EUR" })],
  ])("accepts %s", (_name, text) => {
    expect(valid(parse(text)), JSON.stringify(valid.errors)).toBe(true);
  });

  it("refuses each broken plan whose form is at fault, and only those", () => {
    for (const { name, text, code } of BROKEN) {
      // These are about the text, not about the values in it.
      if (["colon-in-text", "repeated-key", "number-as-text"].includes(code)) continue;
      expect({ name, valid: valid(parse(text)) }).toEqual({ name, valid: !STRUCTURAL_CODES.has(code) });
    }
  });
});

// The keys as the project's published format lists them; `note` and `was` belong to every object.
const KEYS: Record<string, string> = {
  plan: `format title currency start statusDate seed iterations commitment lateness estimates calendars calendar
    purpose benefits appraisal people respectCapacity stakeholders phases tasks intervals assumptions risks
    correlations overheads approvals objections changes decision acceptedFindings returnTriggers texts`,
  commitment: "finishOf confidence finishBy budget reserve holder releaseRule funds",
  "page-text": "after text",
  decision: "ask by recommend doNothing alternatives",
  alternative: "name text",
  lateness: "after perWeek once",
  estimates: "shape bounds",
  calendar: "like workdays holidays",
  purpose: "problem goals scope constraints quality",
  quality: "id statement atLeast atMost unit expected measured on owner",
  goal: "id statement measure target by owner",
  "scope-item": "id name optional lost",
  stakeholder: "id name role interest stance inform approvesUpTo delegate",
  inform: "how every owner what from",
  phase: "name responsible accountable consulted informed calendar",
  task: `id name phase scope duration effort milestone target after notBefore holdToPlan calendar unbroken people
    cost due costPerDay priority detail chance onlyIf responsible accountable consulted informed estimatedBy basis
    enteredBy started finished remaining spent opinions detailOf`,
  link: "task link lag",
  "task-person": "id share along",
  interval: "id name from to atMost",
  person: "id name role rate share capacity calendar away couldAdd",
  "could-add": "capacity cost from",
  absence: "from to share why",
  risk: "id name cause owner probability impacts responses group status actual expires onlyIf",
  actual: "cost days",
  assumption: `id statement owner reviewBy signpost tripped chanceWrong cause impacts responses group status actual
    expires onlyIf`,
  impact: "tasks phase delay factor wait cost",
  response: "id action owner due cost adopted probability scale",
  correlation: "between coefficient cause",
  overhead: "id name perDay from to",
  benefit:
    "id kind name goal owner baseline target amount per starts lag ramp lasts until quantity unit worth",
  appraisal: "years discountRate",
  approval: "who decision date conditions conditionsBy conditionsMet plan by",
  objection: "id who date text answer evidence state changedPlan acceptedBy reopenedBy",
  change: "date who what why approvedBy",
  "return-trigger":
    "id name chanceOfDateBelow chanceOfBudgetBelow contingencyCoverBelow signpost finishLaterThan costAbove",
  "accepted-finding": "finding ids who date why",
};

describe("planJsonSchema() keys", () => {
  const { $defs } = planJsonSchema() as { $defs: Record<string, { properties?: object }> };
  it.each(Object.entries(KEYS))("of %s are those of the format", (name, keys) => {
    const known = Object.keys($defs[name]?.properties ?? {}).sort();
    expect(known).toEqual([...keys.split(/\s+/), "note", "was"].sort());
  });
});

describe("reader and schema", () => {
  const base: unknown = parse(fixture("complete.plan.yaml"));
  const places = allPlaces(base);
  const leaf = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      true,
      false,
      0,
      1,
      -1,
      0.5,
      7,
      1e16,
      "a",
      "",
      " ",
      "2027-01-01",
      "2027-1-1",
      "weeks",
      "pert",
      "mon",
    ),
    fc.constantFrom<unknown>(
      [],
      {},
      [1, 2, 3],
      [1, 2],
      [1, 2, 3, 4],
      ["a"],
      { low: 1, high: 2 },
      { days: 1 },
      { id: "a" },
    ),
    fc.constantFrom<unknown>(
      { outcomes: [] },
      { outcomes: { value: 1, chance: 1 } },
      { outcomes: [], low: 1 },
      { note: "n", was: "w" },
    ),
    fc.jsonValue({ maxDepth: 2 }),
  );
  const change = fc.record({
    place: fc.constantFrom(...places),
    what: fc.constantFrom("replace", "remove", "add", "wrap"),
    value: leaf,
    key: fc.constantFrom(
      "note",
      "was",
      "id",
      "name",
      "low",
      "shape",
      "calendar",
      "outcomes",
      "zzz",
      "tasks",
      "__proto__",
    ),
  });

  it("agree on the form of documents changed at random", () => {
    let refused = 0;
    let runs = 0;
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
        const data = changes.reduce(
          (document, one) => mutate(document, one.place, one),
          structuredClone(base),
        );
        const bad = refusesForm(data);
        runs++;
        if (bad) refused++;
        expect(valid(data), JSON.stringify({ changes, errors: valid.errors?.slice(0, 3) })).toBe(!bad);
      }),
      { numRuns: 3000, seed: SEED },
    );
    // Both answers must come up, or the agreement would say nothing.
    expect(refused).toBeGreaterThan(runs / 10);
    expect(refused).toBeLessThan((runs * 19) / 20);
  });

  it("agree on JSON made at random", () => {
    const keys = ["format", "title", "start", "tasks", "seed", "people", "calendars"];
    const some = fc.dictionary(fc.constantFrom(...keys), fc.oneof(leaf, fc.jsonValue({ maxDepth: 3 })));
    fc.assert(
      fc.property(fc.oneof(some, fc.jsonValue()), (data) => {
        expect(valid(data)).toBe(!refusesForm(data));
      }),
      { numRuns: 1000, seed: SEED },
    );
  });

  it("accept the same least plan in YAML and in memory", () => {
    expect(readPlan(HEAD + TASK).plan).toEqual(planFromData(parse(HEAD + TASK)).plan);
  });
});

type Step = string | number;
function allPlaces(value: unknown, path: Step[] = []): Step[][] {
  if (typeof value !== "object" || value === null) return [path];
  const steps = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [
    path,
    ...steps.flatMap((step) => allPlaces((value as Record<Step, unknown>)[step], [...path, step])),
  ];
}

function mutate(
  value: unknown,
  [step, ...rest]: Step[],
  one: { what: string; value: unknown; key: string },
): unknown {
  if (step !== undefined) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return value;
    const holder = value as Record<Step, unknown>;
    if (rest.length === 0 && one.what === "remove") {
      if (Array.isArray(value)) value.splice(Number(step), 1);
      else delete holder[step];
    } else holder[step] = mutate(holder[step], rest, one);
    return value;
  }
  if (one.what === "wrap") return [value];
  if (one.what === "add" && typeof value === "object" && value !== null && !Array.isArray(value)) {
    return Object.fromEntries([...Object.entries(value), [one.key, one.value]]);
  }
  return one.what === "replace" ? structuredClone(one.value) : value;
}
