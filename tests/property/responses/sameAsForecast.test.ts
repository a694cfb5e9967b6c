/**
 * Decisions taken one way or the other are the plan with these decisions, to the bit: what the explanations run is
 * what `forecast` runs with `with` and `without`. Random plans from printed seeds, everything in them.
 */
import { applyScenario, compile, forecast, reach, responses, simulate } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { runSets } from "../../../packages/core/src/explain/responses/runSets.ts";
import { scenariosOf } from "../../../packages/core/src/explain/responses/scenarios.ts";
import {
  capacitySwitches,
  responseSwitches,
  scopeSwitches,
} from "../../../packages/core/src/explain/responses/switches.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { decidedPlan, scenarioOf } from "./decidedPlan.ts";

const seeds = Array.from({ length: 18 }, (_, k) => 1000 + k);
const iterations = 1100; // a whole block and a part of one

describe("runSets(scenarios, draw, sets, measure)", () => {
  it("gives each set the rows of the plan compiled and simulated with these decisions", () => {
    const rng = seededRng(5);
    let compared = 0;
    for (const seed of seeds) {
      const plan = decidedPlan(seed);
      if (plan === undefined) continue;
      const switches = [responseSwitches(plan), scopeSwitches(plan), capacitySwitches(plan)].flatMap(
        ({ list }) => list,
      );
      if (switches.length === 0) continue;
      const scenarios = scenariosOf(plan, switches);
      const sets = Array.from({ length: 4 }, () =>
        switches.reduce((set, _, i) => (rng() < 0.5 ? set | (1n << BigInt(i)) : set), 0n),
      );
      for (const design of [seed % 3 === 0 ? ("plain" as const) : ("latin-hypercube" as const)]) {
        let rows: (number[] | undefined)[][];
        try {
          rows = runSets(scenarios, { seed: "bits", design, iterations }, sets, (outcome) => [
            [...outcome.finish],
            [...outcome.finishDay],
            [...outcome.cost],
            outcome.lateness && [...outcome.lateness],
          ]);
        } catch {
          continue; // beyond the calendars' end
        }
        sets.forEach((set, at) => {
          const { plan: decided, problems } = applyScenario(plan, scenarioOf(switches, set));
          expect(problems).toEqual([]);
          const { trials } = simulate(compile(decided), { seed: "bits", design, iterations });
          if (trials === undefined) return;
          compared++;
          const { finish, finishDay, cost, lateness } = trials;
          const cold = [[...finish], [...finishDay], [...cost], lateness && [...lateness]];
          expect(`${seed} ${set} ${JSON.stringify(rows[at])}`).toBe(`${seed} ${set} ${JSON.stringify(cold)}`);
        });
      }
    }
    expect(compared).toBeGreaterThan(40);
  });
});

describe("responses(plan)", () => {
  it("tells the differences of the forecasts with and without a response", () => {
    let compared = 0;
    for (const seed of seeds) {
      const plan = decidedPlan(seed);
      const found = plan && responses(plan, { iterations }).responses;
      if (plan === undefined || found === undefined) continue;
      const every = found.responses.map(({ id }) => id);
      for (const { id, alone, given } of found.responses) {
        const others = every.filter((other) => other !== id);
        const pairs = [
          [alone, { without: every }, { with: [id], without: others }],
          [given, { without: [id] }, { with: [id] }],
        ] as const;
        for (const [effect, less, more] of pairs) {
          const [a, b] = [less, more].map((choice) => forecast(plan, { iterations, ...choice }).forecast);
          if (a === undefined || b === undefined) continue;
          compared++;
          const lateness = (a.lateness?.mean ?? 0) - (b.lateness?.mean ?? 0);
          expect([seed, id, effect.workingDays, effect.money]).toEqual([
            seed,
            id,
            b.committed.workingDays - a.committed.workingDays,
            b.committed.cost - a.committed.cost,
          ]);
          expect(effect.finishBy).toBeCloseTo((b.chance.finishBy ?? 0) - (a.chance.finishBy ?? 0), 12);
          expect(effect.both).toBeCloseTo((b.chance.both ?? 0) - (a.chance.both ?? 0), 12);
          expect(effect.latenessAvoided).toBe(lateness);
          expect(effect.netWorth).toBeCloseTo(a.cost.mean - b.cost.mean + lateness, 6);
        }
      }
    }
    expect(compared).toBeGreaterThan(40);
  });
});

describe("reach(plan, options)", () => {
  const asks = [{}, { finishBy: "2027-03-20", confidence: 0.6 }, { sum: 900, confidence: 0.55 }];

  it("tells the chance a forecast of the plan with these steps has, to the bit", () => {
    let ways = 0;
    for (const seed of seeds) {
      const plan = decidedPlan(seed);
      if (plan === undefined) continue;
      const size = [responseSwitches(plan), scopeSwitches(plan), capacitySwitches(plan)];
      if (size.reduce((sum, { list }) => sum + list.length, 0) > 7) continue;
      for (const ask of asks) {
        const found = reach(plan, { iterations, ...ask }).reach;
        if (found === undefined) continue;
        const { finishBy, sum } = found.asked;
        const { finishBy: _date, budget: _budget, ...rest } = plan.commitment;
        const asked = {
          ...plan,
          commitment: {
            ...rest,
            ...(finishBy === undefined ? {} : { finishBy }),
            ...(sum === undefined ? {} : { budget: sum }),
          },
        };
        for (const way of [...found.ways, ...(found.best === undefined ? [] : [found.best])]) {
          const steps = (scope: boolean) =>
            way.steps.filter(({ kind }) => (kind === "scope") === scope).map(({ id }) => id);
          const cold = forecast(asked, {
            iterations,
            confidence: found.asked.confidence,
            with: steps(false),
            without: steps(true),
          }).forecast;
          if (cold === undefined) continue;
          ways++;
          const { chance } = cold;
          const told =
            finishBy === undefined ? chance.budget : sum === undefined ? chance.finishBy : chance.both;
          expect([seed, ask, way.chance]).toEqual([seed, ask, told]);
          expect(way.outlook.day).toBe(cold.committed.day);
          expect(way.outlook.date).toBe(cold.committed.date);
          expect(way.outlook.cost).toBe(cold.committed.cost);
          expect(way.outlook.mean.cost).toBe(cold.cost.mean);
          expect(way.outlook.mean.lateness).toBe(cold.lateness?.mean);
        }
      }
    }
    expect(ways).toBeGreaterThan(12);
  });
});
