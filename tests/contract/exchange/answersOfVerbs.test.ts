// What the verbs print with --json against their published schemas and Ajv, an independent validator: every verb about
// every example plan and a least one, called as the command calls it. Common practice, no source.
import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { verbs } from "../../../apps/command/src/call/verbs.ts";
import { main } from "../../../apps/command/src/main.ts";
import { jsonSchemaOf, SCHEMA_NAMES, type SchemaName } from "../../../packages/core/src/index.ts";
import { temporaryFolder } from "../../support/temporaryFolder.ts";
import { brokenCopies } from "./support/brokenCopies.ts";
import { everyCall } from "./support/everyCall.ts";

// The command listens for signals, once in its life; here it is begun many times over in one process.
vi.mock("../../../apps/command/src/stopping.ts", async (original) => ({
  ...(await original<typeof import("../../../apps/command/src/stopping.ts")>()),
  handleStops: () => {},
}));

const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, formats: { date: true } });
const checks = new Map(SCHEMA_NAMES.map((name) => [name, ajv.compile(jsonSchemaOf(name))]));
const NAMES = ["minimal", "quillmarsh-clinic", "brackenford-food-bank", "ostrel-ferry-ticketing"];
const WITH_CODE_2 = /broken\.plan\.yaml/;

let out = "";
let err = "";
beforeEach(() => {
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

/** What is wrong with an answer by its schema; nothing: it fits. */
function faults(name: SchemaName, answer: unknown): string {
  const check = checks.get(name);
  return check?.(answer) === true ? "" : JSON.stringify(check?.errors?.slice(0, 3));
}

describe("what --json prints", { timeout: 240_000 }, () => {
  it.each(NAMES)("is what its schema says, for every verb about %s", async (name) => {
    const text = readFileSync(new URL(`../../../examples/${name}.plan.yaml`, import.meta.url), "utf8");
    const folder = temporaryFolder();
    const told = new Set<SchemaName>();
    // Little is drawn: what is checked is the form of the answers.
    for (const [schema, ...words] of everyCall(`${text}\niterations: 48\n`, folder)) {
      out = "";
      err = "";
      const asJson = schema === "export" ? words : [...words, "--json"];
      const code = await main(asJson);
      const call = words.join(" ");
      expect([code, call, code === 0 ? "" : err]).toEqual(
        WITH_CODE_2.test(call) ? [2, call, expect.stringContaining("tsks")] : [0, call, ""],
      );
      const answer: unknown = JSON.parse(out);
      expect([call, faults(schema, answer)]).toEqual([call, ""]);
      if (name === "minimal") {
        const copies = brokenCopies(
          answer,
          jsonSchemaOf(schema),
          (path) => schema === "export" && path.length === 2,
        );
        expect(copies.length, call).toBeGreaterThan(0);
        const passed = copies.filter(({ copy }) => faults(schema, copy) === "").map(({ how }) => how);
        expect([call, passed]).toEqual([call, []]);
      }
      told.add(schema);
    }
    const printed = verbs.filter(({ options }) => options.some((option) => option.name === "json"));
    expect([...told].sort()).toEqual([...printed.map((verb) => verb.name), "export", "verify"].sort());
    expect(["plan", ...told].sort()).toEqual([...SCHEMA_NAMES].sort());
  });
});
