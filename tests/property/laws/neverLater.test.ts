import { describe, expect, it } from "vitest";
import type { PlanDocument } from "../../oracle/document.ts";
import { type RandomPlanOptions, randomPlanDocument } from "../../oracle/randomPlan.ts";
import { Dice } from "../../oracle/randomValues.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { runOf } from "./runPlan.ts";

/**
 * Less work never takes longer: with people unlimited, an earlier `notBefore`, a shorter duration, a lower
 * probability of a threat or a smaller impact make no single iteration later. (With limited people they may: the
 * anomalies of R. L. Graham, 1969, "Bounds on multiprocessing timing anomalies", SIAM J. Appl. Math. 17(2),
 * 416-429, recalled.) Links are finish-to-start and start-to-start: a task that has to finish at a moment starts
 * later when it is shorter, and what hangs on that start with it.
 *
 * Same draws on both sides, so the comparison is exact, iteration by iteration; random plans from printed seeds.
 */
const options: RandomPlanOptions = { tasks: [4, 10], capacity: false, links: false, finishOf: true };
const list = <T>(value: T | T[] | undefined): T[] =>
  value === undefined ? [] : Array.isArray(value) ? value : [value];

interface Knob {
  notBefore: string;
  duration: [number, number, number];
  probability: number;
  impact: { delay: number; factor: number; wait: number };
}
const heavy: Knob = {
  notBefore: "2027-02-13",
  duration: [4, 6, 11],
  probability: 0.6,
  impact: { delay: 3, factor: 1.5, wait: 2 },
};

/** A random plan with one task and one threat set by `knob`; some of the other tasks wait for that task. */
function planWith(seed: number, knob: Knob): PlanDocument {
  const rng = seededRng(seed);
  const document = randomPlanDocument(rng, options);
  const dice = new Dice(rng, {});
  const waiting = new Set(
    dice
      .shuffle(list(document.tasks))
      .slice(0, 3)
      .map(({ id }) => id),
  );
  const task = { id: "knob", name: "Knob", notBefore: knob.notBefore, duration: knob.duration };
  const after = dice.chance(0.5) ? "knob" : { task: "knob", link: "start-to-start" as const, lag: -1 };
  const tasks = list(document.tasks).map((t) =>
    waiting.has(t.id) ? { ...t, after: [...list(t.after), after] } : t,
  );
  return {
    ...document,
    start: "2027-02-01",
    tasks: [...tasks, dice.chance(0.3) ? { ...task, unbroken: "every-day" } : task],
    risks: [
      ...list(document.risks),
      {
        id: "threat",
        name: "Threat",
        probability: knob.probability,
        impacts: { tasks: "knob", ...knob.impact },
      },
    ],
  };
}

const lighter: [string, Partial<Knob>][] = [
  ["an earlier notBefore", { notBefore: "2027-02-06" }],
  ["a notBefore on the day before", { notBefore: "2027-02-12" }],
  ["a shorter duration", { duration: [3, 5, 10] }],
  ["a lower probability of the threat", { probability: 0.3 }],
  ["a smaller delay", { impact: { delay: 1, factor: 1.5, wait: 2 } }],
  ["a smaller factor", { impact: { delay: 3, factor: 1.1, wait: 2 } }],
  ["a shorter wait", { impact: { delay: 3, factor: 1.5, wait: 0.5 } }],
];

describe("with people unlimited, less never takes longer", () => {
  it.each(lighter)("%s", (_, change) => {
    const later: string[] = [];
    let earlier = 0;
    let compared = 0;
    for (let seed = 700; seed < 740; seed++) {
      const before = runOf(planWith(seed, heavy), { iterations: 250 });
      const after = runOf(planWith(seed, { ...heavy, ...change }), { iterations: 250 });
      if (before === undefined || after === undefined) continue;
      compared++;
      before.trials.finish.forEach((finish, k) => {
        const now = after.trials.finish[k] ?? Number.NaN;
        if (!(now <= finish + 1e-9)) later.push(`seed ${seed} #${k}: ${finish} became ${now}`);
        if (now < finish - 1e-9) earlier++;
      });
    }
    expect(later.slice(0, 6)).toEqual([]);
    expect(compared).toBeGreaterThan(30);
    // And it does make some earlier, or the law would hold of nothing.
    expect(earlier).toBeGreaterThan(20);
  });
});
