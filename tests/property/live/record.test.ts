// Progress written into random plans. What must hold is the plan format, "Progress": what is recorded has happened, and
// a finished plan has no uncertainty in its date.
import {
  changedLines,
  type FactKind,
  forecast,
  type ProgressFact,
  readPlan,
  recordProgress,
} from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import type { PlanDocument } from "../../oracle/document.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

const SEED = 20270104;
const seeds = fc.integer({ min: 1, max: 1_000_000 });
const dayAfter = (iso: string, days: number) =>
  new Date(Date.parse(`${iso}T00:00:00Z`) + 86_400_000 * days).toISOString().slice(0, 10);
const textOf = (document: PlanDocument) => `# Kept\n${stringify(document)}# to the end\n`;
const fact = (what: FactKind, id: string, value?: string): ProgressFact => ({
  what,
  id,
  said: `${what} ${id}`,
  ...(value === undefined ? {} : { value }),
});

const tasksOf = ({ tasks }: PlanDocument) => (Array.isArray(tasks) ? tasks : [tasks]);

/** Every task of a plan started and finished on some day within ten weeks. */
function finishedFacts(
  document: PlanDocument,
  rng: () => number,
): { facts: ProgressFact[]; last: Map<string, string> } {
  const last = new Map<string, string>();
  const facts = tasksOf(document).flatMap(({ id, milestone }) => {
    const started = dayAfter(document.start, Math.floor(rng() * 40));
    const finished = dayAfter(started, Math.floor(rng() * 30));
    last.set(id, finished);
    const point = milestone !== undefined;
    return [...(point ? [] : [fact("started", id, started)]), fact("finished", id, finished)];
  });
  return { facts, last };
}

describe("recordProgress(text, report)", () => {
  it("of a plan that is finished gives the actual finish, without any spread", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rng = seededRng(seed);
        const document = randomPlanDocument(rng, { progress: false });
        const { facts, last } = finishedFacts(document, rng);
        const statusDate = [...last.values()].reduce((a, b) => (a > b ? a : b));
        const { after, problems } = recordProgress(textOf(document), { statusDate, facts });
        expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
        if (after === undefined) throw new Error("not recorded");
        const { finishOf } = after.commitment;
        const actual = finishOf === undefined ? statusDate : last.get(finishOf);
        const result = forecast(after, { iterations: 16 }).forecast;
        const dates = result?.finish.percentiles.flatMap(({ date, lowDate, highDate }) => [
          date,
          lowDate,
          highDate,
        ]);
        expect(new Set([...(dates ?? []), result?.asWritten.finish, result?.committed.date])).toEqual(
          new Set([actual]),
        );
        expect(result?.finish.sd).toBe(0);
        expect(result?.contingency.workingDays).toBe(0);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });

  it("writes what was reported and nothing else, in a plan that reads", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rng = seededRng(seed);
        const document = randomPlanDocument(rng, { progress: false });
        const text = textOf(document);
        const { facts, last } = finishedFacts(document, rng);
        const told = new Set(
          tasksOf(document)
            .filter(() => rng() < 0.5)
            .map(({ id }) => id),
        );
        const some = facts.filter(({ id }) => told.has(id));
        const statusDate = [...last.values()].reduce((a, b) => (a > b ? a : b));
        const recorded = recordProgress(text, { statusDate, facts: some });
        const { plan } = readPlan(recorded.text);
        expect(plan?.statusDate).toBe(statusDate);
        expect(plan?.tasks.length).toBe(tasksOf(document).length);
        for (const { id, milestone, started, finished } of plan?.tasks ?? []) {
          const day = (what: FactKind) => some.find((each) => each.id === id && each.what === what)?.value;
          expect({ id, started, finished }).toEqual({
            id,
            started: day("started"),
            finished: day("finished"),
          });
          expect(milestone === false || started === undefined).toBe(true);
        }
        // No line of the plan went: keys came in between them.
        const before = readPlan(text).plan;
        expect(plan?.approvalSha256).toBe(before?.approvalSha256);
        const flow = (line: string) => /[{[]/.test(line);
        for (const { removed } of changedLines(text, recorded.text))
          expect(removed.filter((line) => !flow(line))).toEqual([]);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });

  it("leaves the text as it came where one thing is wrong, and names it", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rng = seededRng(seed);
        const document = randomPlanDocument(rng, { progress: false });
        const text = textOf(document);
        const { facts, last } = finishedFacts(document, rng);
        const statusDate = [...last.values()].reduce((a, b) => (a > b ? a : b));
        const wrong = [
          fact("started", "nobody-of-this-name"),
          fact("spent", tasksOf(document)[0]?.id ?? "", "1.200"),
          fact("finished", tasksOf(document)[0]?.id ?? "", dayAfter(statusDate, 1)),
        ][Math.floor(rng() * 3)] as ProgressFact;
        const others = facts.filter(({ id, what }) => id !== wrong.id || what !== wrong.what);
        const recorded = recordProgress(text, { statusDate, facts: [...others, wrong] });
        expect(recorded.text).toBe(text);
        expect(recorded.after).toBeUndefined();
        expect(recorded.problems.filter(({ path }) => path === wrong.said).length).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });

  it("recorded twice changes nothing the second time", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const rng = seededRng(seed);
        const document = randomPlanDocument(rng, { progress: false });
        const { facts, last } = finishedFacts(document, rng);
        const statusDate = [...last.values()].reduce((a, b) => (a > b ? a : b));
        const once = recordProgress(textOf(document), { statusDate, facts });
        expect(recordProgress(once.text, { statusDate, facts }).text).toBe(once.text);
      }),
      { seed: SEED, numRuns: 15 },
    );
  });
});
