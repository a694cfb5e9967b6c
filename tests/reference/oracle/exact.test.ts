/**
 * Exact distributions by the reference enumeration, against answers worked out elsewhere by enumeration in
 * another program. The cases are own constructions; the methods behind them are named at each.
 */
import { describe, expect, it } from "vitest";
import type { PlanDocument, RiskDocument, TaskDocument } from "../../oracle/document.ts";
import { type ExactOutcome, enumerateExactly } from "../../oracle/enumerate.ts";
import { planOf } from "../../oracle/planOf.ts";

const either = (a: number, pA: number, b: number) => ({
  outcomes: [
    { value: a, chance: pA },
    { value: b, chance: 1 - pA },
  ],
});

/** Five tasks with two durations each; a, b first, c after a, d after both, e last. */
const five: TaskDocument[] = [
  { id: "a", name: "A", duration: either(3, 0.5, 5) },
  { id: "b", name: "B", duration: either(4, 0.7, 6) },
  { id: "c", name: "C", duration: either(2, 0.6, 5), after: "a" },
  { id: "d", name: "D", duration: either(3, 0.5, 4), after: ["a", "b"] },
  { id: "e", name: "E", duration: either(1, 0.8, 2), after: ["c", "d"] },
];

function plan(keys: Partial<PlanDocument>): PlanDocument {
  return { format: 1, title: "Exact", start: "2027-02-01", calendar: "every-day", tasks: five, ...keys };
}

/** Probability that `test` holds. */
function chance(outcomes: ExactOutcome[], test: (o: ExactOutcome) => boolean): number {
  return outcomes.reduce((sum, o) => (test(o) ? sum + o.probability : sum), 0);
}

function mean(outcomes: ExactOutcome[], of: (o: ExactOutcome) => number): number {
  return outcomes.reduce((sum, o) => sum + of(o) * o.probability, 0);
}

/** The smallest value v such that at least `p` of the probability lies at or below it. */
function percentile(outcomes: ExactOutcome[], of: (o: ExactOutcome) => number, p: number): number {
  const values = outcomes.map(of).sort((a, b) => a - b);
  return values.find((v) => chance(outcomes, (o) => of(o) <= v + 1e-9) >= p - 1e-9) ?? Number.NaN;
}

const finish = (o: ExactOutcome) => o.finish;
const cost = (o: ExactOutcome) => o.cost;

describe("enumerateExactly(small network)", () => {
  // Enumeration in the spirit of Van Slyke (1963) and MacCrimmon & Ryavec (1964); criticality index with ties
  // critical on every path. Constructed; finish distribution and indices enumerated in another program.
  it("gives the exact finish distribution and criticality of five two-valued tasks", () => {
    const exact = enumerateExactly(planOf(plan({})));
    expect(exact.combinations).toBe(32);
    const expected = { 8: 0.084, 9: 0.301, 10: 0.25, 11: 0.301, 12: 0.064 };
    expect(exact.outcomes.map((o) => o.finish)).toEqual([8, 9, 10, 11, 12]);
    for (const [day, p] of Object.entries(expected)) {
      expect(chance(exact.outcomes, (o) => o.finish === Number(day))).toBeCloseTo(p, 12);
    }
    const indices = { a: 0.55, b: 0.55, c: 0.34, d: 0.76, e: 1 };
    for (const [id, index] of Object.entries(indices)) {
      expect(exact.criticality.get(id)).toBeCloseTo(index, 12);
    }
  });

  // Constructed: the same network with two register risks, a fixed cost of 200 and 10 a day. Joint confidence
  // is finish <= 11 and cost <= 320 (as in NASA's joint confidence level). Enumerated in another program.
  it.each([
    [0.3, { meanFinish: 10.565, p80: 12, meanCost: 318.15, costP80: 340, joint: 0.56952, onTime: 0.75796 }],
    [0.1, { meanFinish: 10.235, p80: 11, meanCost: 311.85, costP80: 335, joint: 0.70024, onTime: 0.85252 }],
  ])("joins days and money with the first risk at %s", (probability, expected) => {
    const document = plan({
      tasks: five.map((task) => (task.id === "e" ? { ...task, cost: 200 } : task)),
      risks: [
        { id: "k1", name: "K1", probability, impacts: { tasks: "d", delay: 2, cost: 15 } },
        { id: "k2", name: "K2", probability: 0.2, impacts: { tasks: "a", delay: 1, cost: 40 } },
      ],
      overheads: [{ id: "burn", name: "Burn", perDay: 10 }],
    });
    const { outcomes } = enumerateExactly(planOf(document));
    expect(mean(outcomes, finish)).toBeCloseTo(expected.meanFinish, 10);
    expect(percentile(outcomes, finish, 0.8)).toBe(expected.p80);
    expect(mean(outcomes, cost)).toBeCloseTo(expected.meanCost, 10);
    expect(percentile(outcomes, cost, 0.8)).toBeCloseTo(expected.costP80, 10);
    expect(chance(outcomes, (o) => o.finish <= 11)).toBeCloseTo(expected.onTime, 10);
    expect(chance(outcomes, (o) => o.finish <= 11 && o.cost <= 320 + 1e-9)).toBeCloseTo(expected.joint, 10);
  });

  // Constructed: four independent risks of fixed cost, every sum enumerated in another program. The removal
  // of one risk at a time follows GAO-16-89G best practice 8, "Prioritizing Risks" (read).
  const register = { r1: [0.3, 10], r2: [0.5, 6], r3: [0.1, 40], r4: [0.25, 15] } as const;
  const risks = (without?: string): RiskDocument[] =>
    Object.entries(register)
      .filter(([id]) => id !== without)
      .map(([id, [probability, money]]) => ({ id, name: id, probability, impacts: { cost: money } }));
  const registerPlan = (without?: string) =>
    planOf(plan({ tasks: { id: "work", name: "Work", duration: 5 }, risks: risks(without) }));

  it("adds up a register of four costs exactly", () => {
    const { outcomes } = enumerateExactly(registerPlan());
    expect(outcomes).toHaveLength(16);
    expect(mean(outcomes, cost)).toBeCloseTo(13.75, 12);
    expect([0.5, 0.8, 0.9, 0.95].map((p) => percentile(outcomes, cost, p))).toEqual([10, 21, 31, 46]);
    expect(chance(outcomes, (o) => o.cost === 0)).toBeCloseTo(0.23625, 12);
    expect(chance(outcomes, (o) => o.cost === 71)).toBeCloseTo(0.00375, 12);
  });

  it.each([
    ["r1", 0],
    ["r2", 6],
    ["r3", 5],
    ["r4", 5],
  ])("lowers the 80 %% sum by removing %s by %s", (id, reduction) => {
    const all = percentile(enumerateExactly(registerPlan()).outcomes, cost, 0.8);
    const without = percentile(enumerateExactly(registerPlan(id)).outcomes, cost, 0.8);
    expect(all - without).toBe(reduction);
  });

  // Plan format 1, "The register": one draw serves a group, so its entries exclude each other. By hand.
  it("lets at most one of a group occur, and none of the others once one has", () => {
    const group = (status: "open" | "occurred") =>
      planOf(
        plan({
          tasks: { id: "work", name: "Work", duration: 5 },
          risks: [
            { id: "x", name: "X", probability: 0.3, group: "g", impacts: { cost: 1 } },
            { id: "y", name: "Y", probability: 0.6, group: "g", status, impacts: { cost: 10 } },
          ],
        }),
      );
    const open = enumerateExactly(group("open")).outcomes;
    expect(open.map((o) => o.cost)).toEqual([0, 1, 10]);
    for (const [k, p] of [0.1, 0.3, 0.6].entries()) expect(open[k]?.probability).toBeCloseTo(p, 12);
    expect(enumerateExactly(group("occurred")).outcomes).toEqual([{ finish: 5, cost: 10, probability: 1 }]);
  });

  // Plan format 1, "The register": facts, then `expires` before `statusDate`, then `onlyIf`. By hand.
  it.each([
    ["expired the day before", { expires: "2027-02-04" }, 0],
    ["expiring on the status date", { expires: "2027-02-05" }, 0.5],
    ["hanging on a response not adopted", { onlyIf: "not-done" }, 0],
    ["hanging on an adopted response", { onlyIf: "done" }, 0.5],
    ["closed", { status: "closed" as const }, 0],
    ["occurred, though expired", { status: "occurred" as const, expires: "2027-02-01" }, 1],
  ])("gives a risk %s its chance", (_, keys, expected) => {
    const responses = [
      { id: "done", action: "A", adopted: true },
      { id: "not-done", action: "B" },
    ];
    const document = plan({
      statusDate: "2027-02-05",
      tasks: { id: "work", name: "Work", duration: 5 },
      risks: [
        { id: "x", name: "X", probability: 0.5, impacts: { cost: 1 }, ...keys },
        { id: "y", name: "Y", probability: 0.5, impacts: { cost: 0 }, responses },
      ],
    });
    const { outcomes } = enumerateExactly(planOf(document));
    expect(chance(outcomes, (o) => o.cost === 1)).toBeCloseTo(expected, 12);
  });

  // Plan format 1, "The register": probability = own times each response's ratio, scales multiply, costs add.
  it("combines adopted responses", () => {
    const document = plan({
      tasks: { id: "work", name: "Work", duration: 5 },
      risks: {
        id: "x",
        name: "X",
        probability: 0.5,
        impacts: { tasks: "work", delay: 4, cost: 100 },
        responses: [
          { id: "ra", action: "A", adopted: true, probability: 0.25, scale: 0.5, cost: 7 },
          { id: "rb", action: "B", adopted: true, probability: 0.4, scale: 0.5, cost: 8 },
          { id: "rc", action: "C", probability: 0.1, scale: 0, cost: 1000 },
        ],
      },
    });
    const [without, withIt] = enumerateExactly(planOf(document)).outcomes;
    expect(without).toMatchObject({ finish: 5, cost: 15 });
    expect(without?.probability).toBeCloseTo(0.8, 12);
    expect(withIt).toMatchObject({ finish: 6, cost: 40 });
  });
});
