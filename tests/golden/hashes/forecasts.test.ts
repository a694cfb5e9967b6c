// The figures of the example plans, pinned: the hash of each forecast's JSON. A change of any figure changes a hash, and a
// hash that CHANGELOG.md does not name fails: nobody changes results without saying so to those who have made promises by
// them. Own expectation of the house, no outside source. After a change that is meant:
// LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/hashes, then a line with the new hash in CHANGELOG.md.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";

const root = new URL("../../../", import.meta.url);
const plans = readdirSync(new URL("examples/", root)).filter((name) => name.endsWith(".plan.yaml"));
const file = new URL("forecasts.json", import.meta.url);
const changes = readFileSync(new URL("CHANGELOG.md", root), "utf8");

/** The figures alone: what the plan is called and which version made them may change. */
function hashOf(name: string): string {
  const { plan } = readPlan(readFileSync(new URL(`examples/${name}`, root), "utf8"));
  const found = plan && forecast(plan, { iterations: 3000 }).forecast;
  if (found === undefined) throw new Error(`${name} has no forecast`);
  const { plan: _, version: __, ...figures } = found;
  return createHash("sha256").update(JSON.stringify(figures)).digest("hex").slice(0, 16);
}

describe("the forecasts of the examples", () => {
  if (process.env.LEEWAY_WRITE_GOLDEN === "1") {
    const hashes = Object.fromEntries(plans.map((name) => [name, hashOf(name)]));
    writeFileSync(file, `${JSON.stringify(hashes, undefined, 2)}\n`);
  }
  const pinned = JSON.parse(readFileSync(file, "utf8")) as Record<string, string>;

  it("are pinned, every one", () => {
    expect(Object.keys(pinned).sort()).toEqual([...plans].sort());
  });

  it.each(plans)("of %s are the ones pinned, and CHANGELOG.md names them", (name) => {
    expect(hashOf(name)).toBe(pinned[name]);
    expect(changes).toContain(`${name.replace(".plan.yaml", "")} ${pinned[name]}`);
  });
});
