import { createHash } from "node:crypto";
import {
  applyScenario,
  compile,
  type Plan,
  planAsWritten,
  planFromData,
  type SimulateOptions,
  type Simulation,
  simulate,
  summarise,
} from "@leeway/core";
import { describe, expect, it } from "vitest";
import type { Design } from "../../../packages/core/src/sampling/design.ts";
import { drawMemory } from "../../../packages/core/src/simulate/drawMemory.ts";
import { newKeptDraws } from "../../../packages/core/src/simulate/keptDraws.ts";
import { reachedTasks } from "../../../packages/core/src/simulate/reached.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { randomPair } from "../compare/randomEdits.ts";

// A simulation that takes over what did not change against one from scratch: the same bits in every row, sum and figure.

function hash(row: ArrayBufferView): string {
  return createHash("sha256")
    .update(new Uint8Array(row.buffer, row.byteOffset, row.byteLength))
    .digest("hex");
}

function bits(plan: Plan, { trials, asWritten, problems }: Simulation): unknown {
  if (trials === undefined || asWritten === undefined) return problems;
  const { finish, finishDay, cost, starts, finishes, intervals, sums, lateness, worth, unlimited } = trials;
  const rows = [finish, finishDay, cost, ...starts, ...finishes, ...intervals, lateness, worth?.net];
  return {
    rows: [...rows, unlimited?.finish, unlimited?.cost].map((row) => row && hash(row)),
    sums: Object.entries(sums).map(([name, row]) => [name, hash(row)]),
    forecast: hash(Buffer.from(JSON.stringify(summarise(compile(plan), trials, asWritten)))),
  };
}

function expectSame(before: Plan, after: Plan, options: SimulateOptions): void {
  const first = simulate(compile(before), { ...options, keep: true });
  const again = simulate(compile(after), { ...options, previous: first });
  expect(bits(after, again)).toEqual(bits(after, simulate(compile(after), options)));
  // And back: what was taken over is there for the next.
  const back = simulate(compile(before), { ...options, previous: again });
  expect(bits(before, back)).toEqual(bits(before, first));
}

function pairOf(seed: number): { before: Plan; after: Plan } {
  const { older, newer } = randomPair(seed, 3);
  const [before, after] = [older, newer].map((document) => planFromData(document).plan);
  if (before === undefined || after === undefined) throw new Error(`Seed ${seed} makes no pair of plans.`);
  return { before, after };
}

describe("simulate(model, { previous })", () => {
  it.each([
    ["latin-hypercube", 0, 30],
    ["plain", 1000, 10],
  ] as const)("%s: equals a simulation from scratch after any edits", (design: Design, from, count) => {
    for (let seed = from; seed < from + count; seed++) {
      const { before, after } = pairOf(seed);
      expectSame(before, after, { design, iterations: 1500 });
    }
  });

  it("equals one from scratch when a probability, a response or one estimate changes", () => {
    for (let seed = 0; seed < 15; seed++) {
      const document = randomPlanDocument(seededRng(seed));
      const { plan } = planFromData(document);
      if (plan === undefined) throw new Error(`Seed ${seed} makes no plan.`);
      const ids = plan.risks.map(({ id }) => id).slice(0, 1);
      const scenario = applyScenario(plan, { without: ids }).plan ?? plan;
      expectSame(plan, scenario, { iterations: 1100 });
      const changed: Plan = {
        ...plan,
        tasks: plan.tasks.map((task, i) =>
          i === 0 && task.duration?.kind === "range"
            ? { ...task, duration: { ...task.duration, high: 99 } }
            : task,
        ),
      };
      expectSame(plan, changed, { iterations: 1100 });
    }
  });

  it("samples nothing when a risk is switched, and one task's estimate when that changes", () => {
    const { plan } = planFromData({
      format: 1,
      title: "Jetty",
      start: "2027-03-01",
      tasks: [
        { id: "piles", name: "Piles", duration: [3, 5, 9], cost: [10, 20, 40] },
        { id: "deck", name: "Deck", duration: [4, 6, 11], after: "piles" },
        { id: "rails", name: "Rails", duration: [1, 2, 4] },
      ],
      risks: [
        {
          id: "storm",
          name: "Storm",
          probability: 0.3,
          impacts: { tasks: "deck", delay: [2, 4, 9], cost: [1, 2, 3] },
        },
      ],
    });
    if (plan === undefined) throw new Error("The jetty is no plan.");
    const edited = (storm: number, high: number): Plan => ({
      ...plan,
      risks: plan.risks.map((risk) => ({ ...risk, probability: storm })),
      tasks: plan.tasks.map((task) =>
        task.id === "deck" && task.duration?.kind === "range"
          ? { ...task, duration: { ...task.duration, high } }
          : task,
      ),
    });
    const first = simulate(compile(plan), { iterations: 2048, keep: true });
    const reuse = (after: Plan) => {
      const model = compile(after);
      const into = newKeptDraws("leeway", "latin-hypercube", 2048);
      const memory = drawMemory(model, into, first.kept?.draws);
      const written = { model: compile(plan), asWritten: planAsWritten(compile(plan)) };
      const reached = reachedTasks(written, { model, asWritten: planAsWritten(model) });
      return {
        drawn: model.slots.filter((_, s) => !memory.has(s)).map(({ key }) => key),
        storm: memory.takeUniforms("storm", "occurs", 0, 1024, new Float64Array(1024)),
        reached: model.tasks.filter((_, j) => reached?.[j] === 1).map(({ id }) => id),
      };
    };
    expect(reuse(edited(0.3, 11))).toEqual({ drawn: [], storm: true, reached: [] });
    expect(reuse(edited(0.9, 11))).toEqual({ drawn: [], storm: true, reached: ["deck"] });
    expect(reuse(edited(0.3, 12))).toEqual({ drawn: ["deck:duration"], storm: true, reached: ["deck"] });
  });

  it("takes nothing over from other dice", () => {
    const { before, after } = pairOf(7);
    const first = simulate(compile(before), { iterations: 1200, seed: "one", keep: true });
    for (const options of [
      { iterations: 1200, seed: "two" },
      { iterations: 1300, seed: "one" },
      { iterations: 1200, seed: "one", design: "plain" as const },
      { iterations: 700, seed: "one" },
      { iterations: 1024, seed: "one" },
    ]) {
      const again = simulate(compile(after), { ...options, previous: first });
      expect(bits(after, again)).toEqual(bits(after, simulate(compile(after), options)));
    }
  });
});
