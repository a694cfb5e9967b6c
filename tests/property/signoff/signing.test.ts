// Random plans, signed. What must hold is the plan format, "The plan's hash": approvals are part of no hash, and progress
// is not part of the one that approvals are bound to.
import {
  approvalsState,
  forecast,
  logChange,
  logObjection,
  readPlan,
  type Signature,
  setInPlan,
  signPlan,
} from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

const SEED = 20270119;
const seeds = fc.integer({ min: 1, max: 1_000_000 });
const signature: Signature = { who: "the-chair", decision: "approve", accepts: [], date: "2027-01-20" };

function textOf(seed: number): string {
  const document = randomPlanDocument(seededRng(seed), { progress: false });
  const stakeholders = [{ id: "the-chair", name: "The chair", approvesUpTo: 1e12 }];
  return `# Kept\n${stringify({ ...document, stakeholders, approvals: [{ who: "the-chair" }] })}# to the end\n`;
}
function planOf(text: string) {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
function signed(text: string): string {
  const result = signPlan(text, planOf(text), signature);
  if (result.text === undefined) throw new Error(JSON.stringify(result));
  return result.text;
}
const stateIn = (text: string) => approvalsState(planOf(text)).approvers[0]?.state;

describe("signPlan(text, plan, signature) on random plans", () => {
  it("reads back, covers the plan, keeps every other line, and forecasts the same to the bit", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const before = textOf(seed);
        const after = signed(before);
        expect(stateIn(after)).toBe("covers");
        const lines = after.split("\n");
        expect(before.split("\n").filter((line) => !lines.includes(line))).toEqual([]);
        const run = (text: string) => forecast(planOf(text), { iterations: 32 }).forecast;
        expect(run(before)?.iterations).toBe(32);
        expect(run(after)).toEqual(run(before));
        expect(signed(after)).toBe(after);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("goes on covering what is talked about or done, and no longer what is changed", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const after = signed(textOf(seed));
        const said = { who: "the-chair", date: "2027-01-21" };
        const objected = logObjection(after, planOf(after), { ...said, text: "Too late" }).text ?? "";
        const logged =
          logChange(objected, planOf(objected), {
            ...said,
            what: "Talk",
            why: "Asked",
            approvedBy: "the-chair",
          }).text ?? "";
        expect(stateIn(logged)).toBe("covers");
        const { start } = planOf(after);
        const begun = setInPlan(logged, ["statusDate"], String(start));
        expect(begun.problems).toEqual([]);
        expect(stateIn(begun.text)).toBe("covers");
        const retitled = setInPlan(logged, ["title"], "Another plan");
        expect(stateIn(retitled.text)).toBe("stale");
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});
