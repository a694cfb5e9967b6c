import { describe, expect, it } from "vitest";
import { type Held, rerunner } from "../../../packages/core/src/explain/rerun.ts";
import { planFromData } from "../../../packages/core/src/index.ts";
import { planAsWritten } from "../../../packages/core/src/simulate/asWritten.ts";
import { newBlock } from "../../../packages/core/src/simulate/block.ts";
import { compile } from "../../../packages/core/src/simulate/compile.ts";
import { markFinish } from "../../../packages/core/src/simulate/critical.ts";
import { draws, type Overrides } from "../../../packages/core/src/simulate/draws.ts";
import type { Model } from "../../../packages/core/src/simulate/model.ts";
import { addMoney, newMoneySums } from "../../../packages/core/src/simulate/money.ts";
import { newCapacity } from "../../../packages/core/src/simulate/people.ts";
import { place } from "../../../packages/core/src/simulate/place.ts";
import { realise } from "../../../packages/core/src/simulate/realise.ts";
import { simulate } from "../../../packages/core/src/simulate/simulate.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** The whole model again with one thing held: slow, and right by construction. */
function fullRun(model: Model, planned: Float64Array, seed: string, n: number, overrides: Overrides) {
  const block = newBlock(model, n);
  draws(model, seed, "latin-hypercube", overrides).fill(0, block);
  realise(model, block);
  place(model, block, planned, model.limitedPeople ? newCapacity(model) : undefined);
  markFinish(model, block);
  addMoney(model, block, newMoneySums(model));
  return { finish: Array.from(block.planFinish), cost: Array.from(block.cost) };
}

describe("a re-run with one thing held", () => {
  // 120 random plans, every slot and entry of each; seeds 0 to 119, no chance of false alarm: same draws, same sums.
  it("equals the whole model run again with that thing held, to the bit", () => {
    const iterations = 40;
    let compared = 0;
    const differing: { seed: number; item: Held }[] = [];
    for (let seed = 0; seed < 120; seed++) {
      const { plan } = planFromData(randomPlanDocument(seededRng(seed)));
      if (plan === undefined) continue;
      const model = compile(plan);
      const { trials } = simulate(model, { iterations });
      if (trials === undefined) continue;
      const planned = planAsWritten(model).starts;
      const rerun = rerunner(model, trials, planned);
      rerun.load(0, iterations);
      const held = [
        ...model.slots.map((slot, s) => ({ slot: s, value: slot.asWritten })),
        ...model.register.flatMap((_, e) => [0, 1].map((value) => ({ entry: e, value }))),
      ];
      for (const item of held) {
        const overrides: Overrides =
          "slot" in item
            ? { slots: new Map([[item.slot, item.value]]) }
            : { entries: new Map([[item.entry, item.value as 0 | 1]]) };
        const expected = fullRun(model, planned, trials.seed, iterations, overrides);
        const { finish, cost } = rerun.with(item);
        const same = (a: Float64Array, b: readonly number[]) => b.every((value, k) => Object.is(a[k], value));
        if (!same(finish, expected.finish) || !same(cost, expected.cost)) differing.push({ seed, item });
        compared++;
      }
    }
    expect(differing).toEqual([]);
    expect(compared).toBeGreaterThan(1000);
  });
});
