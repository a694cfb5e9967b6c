// Laws of the check on random plans. No outside figure: what must hold of any findings whatever the plan.
import { checkRules, planFindings, planFromData, planMeasures } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { richDocument } from "../laws/richDocument.ts";

const codes = new Set<string>(checkRules.map(({ code }) => code));
const seeds = fc.integer({ min: 0, max: 1e6 });
const options = { numRuns: 20, seed: 20271116 };

function read(data: unknown) {
  const { plan, problems } = planFromData(data);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

/** Whether a path leads anywhere; a lone item of a list counts as its first. */
function leadsSomewhere(document: unknown, path: string): boolean {
  let at = document;
  for (const key of path.match(/[^.[\]]+/g) ?? []) {
    if (/^\d+$/.test(key)) at = Array.isArray(at) ? at[Number(key)] : key === "0" ? at : undefined;
    else at = typeof at === "object" && at !== null ? Reflect.get(at, key) : undefined;
    if (at === undefined) return false;
  }
  return true;
}

function idsOf(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value !== "object" || value === null) return found;
  if (!Array.isArray(value) && typeof Reflect.get(value, "id") === "string")
    found.add(Reflect.get(value, "id"));
  for (const each of Object.values(value)) idsOf(each, found);
  return found;
}

describe("planFindings(plan)", () => {
  it("names codes of the table, places and ids of the document, and is plain JSON", () => {
    fc.assert(
      fc.property(
        seeds,
        fc.constantFrom(undefined, "2027-01-01", "2027-06-15", "2030-01-01"),
        (seed, today) => {
          const document = richDocument(seed);
          const ids = idsOf(document);
          const findings = planFindings(read(document), today === undefined ? {} : { today });
          for (const { code, path, ids: named } of findings) {
            expect(codes).toContain(code);
            expect({ path, leads: leadsSomewhere(document, path) }).toEqual({ path, leads: true });
            expect(named.filter((id) => !ids.has(id))).toEqual([]);
          }
          expect(JSON.parse(JSON.stringify(findings))).toEqual(findings);
        },
      ),
      options,
    );
  });

  it("finds the same, in whatever order the document stands", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const document = richDocument(seed);
        const turned: unknown = { ...document, tasks: [document.tasks].flat().reverse() };
        const said = (data: unknown) =>
          planFindings(read(data), { today: "2027-06-15" })
            .map(({ code, severity, ids }) => `${severity} ${code} ${[...ids].sort().join()}`)
            .sort();
        expect(said(turned)).toEqual(said(document));
        const twice = planFindings(read(document), { today: "2027-06-15" });
        expect(planFindings(read(document), { today: "2027-06-15" })).toEqual(twice);
      }),
      options,
    );
  });

  it("changes nothing but `accepted` where findings are accepted", () => {
    fc.assert(
      fc.property(seeds, fc.nat(), (seed, which) => {
        const document = richDocument(seed);
        const plain = planFindings(read(document));
        const chosen = plain[which % plain.length];
        if (chosen === undefined) return;
        const acceptance = {
          finding: chosen.code,
          ...(chosen.ids.length > 0 ? { ids: chosen.ids } : {}),
          who: "approver-of-it",
          date: "2027-01-01",
          why: "It may stay.",
        };
        const marked = planFindings(
          read({
            ...document,
            stakeholders: [{ id: "approver-of-it", name: "Approver" }],
            acceptedFindings: acceptance,
          }),
        );
        expect(marked.map(({ accepted: _, ...rest }) => rest)).toEqual(plain);
        expect(marked[which % plain.length]?.accepted).toEqual({
          who: "approver-of-it",
          date: "2027-01-01",
          why: "It may stay.",
        });
      }),
      options,
    );
  });
});

describe("planMeasures(plan)", () => {
  it("gives each measure a value within its unit, or the reason why not", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        for (const { value, reason, unit, within, count, of } of planMeasures(read(richDocument(seed)))) {
          expect((value === undefined) !== (reason === undefined)).toBe(true);
          expect(within === undefined).toBe(value === undefined);
          if (value === undefined) continue;
          expect(Number.isFinite(value)).toBe(true);
          if (unit === "share") expect(value).toBeGreaterThanOrEqual(0);
          if (unit === "share") expect(value).toBeLessThanOrEqual(1);
          if (count !== undefined && of !== undefined) expect(value).toBe(count / of);
        }
      }),
      options,
    );
  });
});
