import { compile, type Explanation, explain, measureVariants, type Plan, planAsWritten } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { causesOf, settingsWith } from "../../../packages/core/src/explain/contingency/causes.ts";
import { freeOffset } from "../../../packages/core/src/explain/contingency/freeOffset.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { differences } from "../laws/differences.ts";
import { richDocument } from "../laws/richDocument.ts";
import { forecastOf, planOfDocument } from "../laws/runPlan.ts";

// Laws of an explanation over random plans with calendars, limited people, all kinds of links, progress, registers,
// correlations and money; seeds 0 to 59. Exact sums and exact differences: no chance of a false alarm.

const iterations = 200;

interface Case {
  seed: number;
  document: ReturnType<typeof richDocument>;
  plan: Plan;
  explanation: Explanation;
}

const cases = Array.from({ length: 60 }, (_, seed): Case[] => {
  const document = richDocument(seed);
  const plan = planOfDocument(document);
  const { explanation } = explain(plan, { iterations });
  return explanation === undefined ? [] : [{ seed, document, plan, explanation }];
}).flat();

/** Whether parts add up to the whole to 1e-9 of it; of nothing, to 1e-9 of the amounts that cancel. */
function addsUp(parts: readonly number[], whole: number, size: number): boolean {
  const sum = parts.reduce((total, part) => total + part, 0);
  return Math.abs(sum - whole) <= 1e-9 * (Math.abs(whole) > 1e-6 ? Math.abs(whole) : Math.max(1, size));
}

describe("explain(random plans)", () => {
  it("explains most of them, each from several causes", () => {
    expect(cases.length).toBeGreaterThan(45);
    const kinds = new Set(cases.flatMap(({ explanation }) => explanation.shares.map(({ kind }) => kind)));
    expect([...kinds].sort()).toEqual(["assumption", "cause", "people", "risk", "spread"]);
    expect(cases.filter(({ explanation }) => explanation.orders.all).length).toBeGreaterThan(5);
    expect(cases.filter(({ explanation }) => !explanation.orders.all).length).toBeGreaterThan(5);
  });

  it("shares and walk each add up to the contingency, in days and in money", () => {
    const wrong = cases.filter(({ explanation: { shares, walk, contingency, committed, asWritten } }) =>
      (["workingDays", "money"] as const).some((unit) => {
        const size = Math.abs(committed[unit]);
        const whole = committed[unit] - asWritten[unit];
        return (
          contingency[unit] !== whole ||
          !addsUp(
            shares.map((share) => share[unit]),
            whole,
            size,
          ) ||
          !addsUp(
            walk.map((step) => step[unit]),
            whole,
            size,
          )
        );
      }),
    );
    expect(wrong.map(({ seed }) => seed)).toEqual([]);
  });

  it("starts at the forecast's plan as written and ends at its commitment", () => {
    for (const { document, explanation } of cases) {
      const { asWritten, committed, contingency } = forecastOf(document, { iterations });
      expect(explanation.asWritten.date).toBe(asWritten.finish);
      expect(explanation.asWritten.workingDays).toBe(asWritten.workingDays);
      expect(explanation.asWritten.cost).toBe(asWritten.cost);
      for (const key of ["date", "day", "workingDays", "cost"] as const) {
        expect(explanation.committed[key]).toBe(committed[key]);
      }
      expect(explanation.contingency).toEqual({
        workingDays: contingency.workingDays,
        money: contingency.money,
      });
    }
  });

  it("is the plan as written with every cause off: nothing that varies is forgotten", () => {
    const draw = { seed: "off", design: "latin-hypercube" as const, iterations: 40 };
    for (const { seed, plan } of cases) {
      const model = compile(plan);
      const asWritten = planAsWritten(model);
      const off = settingsWith(model, causesOf(model), () => false);
      const [days, money] = freeOffset(model, asWritten);
      const levels = [0.1, 0.9].map((level) => measureVariants(model, draw, level, [off])[0]?.level ?? []);
      for (const level of levels) {
        expect((level[0] ?? Number.NaN) + days, `seed ${seed}`).toBeCloseTo(asWritten.workingDays, 8);
        expect((level[1] ?? Number.NaN) + money, `seed ${seed}`).toBeCloseTo(asWritten.cost, 6);
      }
    }
  });

  it("says of a risk removed what the forecast of the plan without it says", () => {
    let compared = 0;
    for (const { document, explanation } of cases.slice(0, 30)) {
      for (const { id, kind, gathers, ifRemoved } of explanation.shares) {
        if (gathers !== undefined || (kind !== "risk" && kind !== "assumption")) continue;
        const without = forecastOf(document, { iterations, without: [id] }).committed;
        const { committed } = explanation;
        expect(ifRemoved.workingDays).toBe(without.workingDays - committed.workingDays);
        expect(ifRemoved.money).toBe(without.cost - committed.cost);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(30);
  });

  it("has the bars of the forecast's tornado for the items it names", () => {
    for (const { document, explanation } of cases.slice(0, 20)) {
      const all = forecastOf(document, { iterations, tornado: true }).tornado ?? [];
      const kept = new Set(explanation.tornado?.map(({ id }) => id));
      expect(explanation.tornado).toEqual(all.filter(({ id }) => kept.has(id)));
    }
  });

  it("is the same whatever the order of the file, and the same twice", () => {
    for (const { document, plan, explanation } of cases.slice(0, 6)) {
      const rng = seededRng(7);
      const mixed = { ...document, tasks: mix(document.tasks, rng), risks: mix(document.risks, rng) };
      const { explanation: other } = explain(planOfDocument(mixed), { iterations });
      const bare = (each: Explanation | undefined) => ({ ...each, stamp: { ...each?.stamp, sha256: "" } });
      expect(differences(bare(other), bare(explanation))).toEqual([]);
      expect(explain(plan, { iterations }).explanation).toEqual(explanation);
    }
  });
});

function mix<T>(list: T, rng: () => number): T {
  if (!Array.isArray(list)) return list;
  const placed = list.map((item: unknown) => ({ item, at: rng() })).sort((a, b) => a.at - b.at);
  return placed.map(({ item }) => item) as T; // the same items
}
