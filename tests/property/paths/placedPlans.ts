import { compile, type Model, planAsWritten, planFromData } from "@leeway/core";
import { type Placed, placedOf } from "../../../packages/core/src/explain/paths/placed.ts";
import { type Block, kernelFor, newBlock } from "../../../packages/core/src/simulate/block.ts";
import { markMoving } from "../../../packages/core/src/simulate/critical.ts";
import { draws } from "../../../packages/core/src/simulate/draws.ts";
import { newCapacity } from "../../../packages/core/src/simulate/people.ts";
import { place } from "../../../packages/core/src/simulate/place.ts";
import { realise } from "../../../packages/core/src/simulate/realise.ts";
import { type RandomPlanOptions, randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** A model with its first `n` iterations placed and marked; undefined past the calendars' end. */
export function placedModel(model: Model, n: number): (Placed & { planned: Float64Array }) | undefined {
  const asWritten = planAsWritten(model);
  if (asWritten.beyond >= 0) return undefined;
  const block: Block = newBlock(model, n, kernelFor(model, n));
  draws(model, model.plan.seed, "latin-hypercube").fill(0, block);
  realise(model, block);
  const capacity = model.limitedPeople ? newCapacity(model) : undefined;
  if (place(model, block, asWritten.starts, capacity) >= 0) return undefined;
  markMoving(model, block, model.limitedPeople);
  return { ...placedOf(model, block, asWritten.starts), planned: asWritten.starts };
}

/** Random plans, compiled and placed; those that run past the calendars' end are left out. */
export function* placedPlans(
  from: number,
  count: number,
  options: RandomPlanOptions,
  n = 8,
): Generator<{ seed: number; placed: Placed & { planned: Float64Array } }> {
  for (let seed = from; seed < from + count; seed++) {
    const { plan, problems } = planFromData(randomPlanDocument(seededRng(seed), options));
    if (plan === undefined) throw new Error(`seed ${seed}: ${JSON.stringify(problems[0])}`);
    const placed = placedModel(compile(plan), n);
    if (placed !== undefined) yield { seed, placed };
  }
}
