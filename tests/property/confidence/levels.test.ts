/** Laws of the levels side by side, on random plans with people, risks and prices of lateness. */
import { describe, expect, it } from "vitest";
import { forecast, whyConfidence } from "../../../packages/core/src/index.ts";
import { richDocument } from "../laws/richDocument.ts";
import { planOfDocument } from "../laws/runPlan.ts";

const iterations = 1500;
const lateness = {
  perWeek: [300, 500, 1200],
  once: {
    outcomes: [
      { value: 0, chance: 0.4 },
      { value: 900, chance: 0.6 },
    ],
  },
};
const seeds = Array.from({ length: 30 }, (_, k) => k + 1);

function answerOf(seed: number, after = "2028-08-01") {
  const plan = planOfDocument({ ...richDocument(seed), lateness: { ...lateness, after } });
  const { confidence } = whyConfidence(plan, { iterations });
  const run = forecast(plan, { iterations }).forecast;
  return { plan, confidence, run };
}

describe.each(seeds)("plan %i", (seed) => {
  const { plan, confidence, run } = answerOf(seed);

  it("answers where the forecast answers, and with its figures to the bit", () => {
    expect(confidence === undefined).toBe(run === undefined);
    if (confidence === undefined || run === undefined) return;
    const { committed, asWritten } = confidence;
    expect([committed.date, committed.day, committed.workingDays, committed.cost]).toEqual([
      run.committed.date,
      run.committed.day,
      run.committed.workingDays,
      run.committed.cost,
    ]);
    expect([asWritten.date, asWritten.day, asWritten.cost]).toEqual([
      run.asWritten.finish,
      run.asWritten.day,
      run.asWritten.cost,
    ]);
    for (const p of [0.5, 0.8, 0.9, 0.95]) {
      const step = confidence.steps.find((each) => each.p === p);
      const finish = run.finish.percentiles.find((each) => each.p === p);
      const cost = run.cost.percentiles.find((each) => each.p === p);
      expect([step?.date, step?.day, step?.lowDate, step?.highDate, step?.cost, step?.costLow]).toEqual([
        finish?.date,
        finish?.day,
        finish?.lowDate,
        finish?.highDate,
        cost?.value,
        cost?.low,
      ]);
    }
    expect(confidence.joint.atCommitted).toBe(run.committed.both);
    expect(confidence.joint.asked?.both).toBe(run.chance.both);
  });

  it("ascends in date, sum and days bought, descends in what is left; steps add up", () => {
    if (confidence === undefined) return;
    const { steps } = confidence;
    expect(steps.map(({ p }) => p)).toEqual([0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95]);
    let days = 0;
    let money = 0;
    let avoided = 0;
    steps.forEach((step, l) => {
      const before = steps[l - 1];
      if (before === undefined) return;
      expect(step.date >= before.date).toBe(true);
      expect(step.cost).toBeGreaterThanOrEqual(before.cost);
      expect(step.latenessLeft ?? Number.NaN).toBeLessThanOrEqual((before.latenessLeft ?? 0) + 1e-9);
      expect(step.late.chance).toBeLessThanOrEqual(1 - step.p + 1e-12);
      expect(step.over.chance).toBeLessThanOrEqual(1 - step.p + 1e-12);
      days += step.bought?.workingDays ?? Number.NaN;
      money += step.bought?.money ?? Number.NaN;
      avoided += step.avoided ?? Number.NaN;
    });
    const [first, last] = [steps[0], steps[steps.length - 1]];
    if (first === undefined || last === undefined) throw new Error("no steps");
    expect(days).toBeCloseTo(last.workingDays - first.workingDays, 9);
    expect(Math.abs(money - (last.cost - first.cost))).toBeLessThanOrEqual(1e-9 * Math.abs(last.cost));
    expect(avoided).toBeCloseTo((first.latenessLeft ?? 0) - (last.latenessLeft ?? 0), 6);
  });

  it("stops where sum held and lateness left are least together", () => {
    if (confidence === undefined) return;
    const outlay = confidence.steps.map(({ cost, latenessLeft = Number.NaN }) => cost + latenessLeft);
    const best = confidence.steps.findIndex(({ p }) => p === confidence.stop?.p);
    expect(best).toBe(outlay.indexOf(Math.min(...outlay)));
  });

  it("leaves the lateness that the simulation itself reports when that date is the one to be late after", () => {
    if (confidence === undefined) return;
    for (const step of [confidence.steps[0], confidence.steps[5]]) {
      if (step === undefined) throw new Error("no step");
      const priced = { ...plan, lateness: { ...plan.lateness, after: step.date } };
      const mean = forecast(priced, { iterations }).forecast?.lateness?.mean ?? Number.NaN;
      expect(step.latenessLeft ?? Number.NaN).toBeCloseTo(mean, 6);
    }
  });

  it("pairs of equal chance reach the level and no smaller pair does; the equal level reaches it too", () => {
    if (confidence === undefined) return;
    const { frontier, equal, committed } = confidence.joint;
    const wanted = Math.ceil(0.7 * iterations - 1e-9) / iterations;
    for (const pair of frontier.pairs) expect(pair.both).toBeGreaterThanOrEqual(wanted - 1e-12);
    frontier.pairs.slice(1).forEach((pair, k) => {
      expect(pair.day).toBeGreaterThan(frontier.pairs[k]?.day ?? Number.NaN);
      expect(pair.cost).toBeLessThan(frontier.pairs[k]?.cost ?? Number.NaN);
    });
    expect(equal.both).toBeGreaterThanOrEqual(wanted - 1e-12);
    expect(committed.both).toBeLessThanOrEqual(Math.min(committed.finishLevel, committed.costLevel));
    expect(committed.both).toBeGreaterThanOrEqual(committed.finishLevel + committed.costLevel - 1 - 1e-12);
  });
});
