import { compile, type Model, type Plan, planAsWritten, planFromData, simulate } from "@leeway/core";
import { describe, expect, it } from "vitest";
import type { Settings } from "../../../packages/core/src/explain/settings.ts";
import { type Outcome, runVariants, type Variant } from "../../../packages/core/src/explain/variants.ts";
import { newBlock } from "../../../packages/core/src/simulate/block.ts";
import { markFinish } from "../../../packages/core/src/simulate/critical.ts";
import { draws } from "../../../packages/core/src/simulate/draws.ts";
import { addMoney, newMoneySums } from "../../../packages/core/src/simulate/money.ts";
import { newCapacity } from "../../../packages/core/src/simulate/people.ts";
import { place } from "../../../packages/core/src/simulate/place.ts";
import { realise } from "../../../packages/core/src/simulate/realise.ts";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";

// Source of the expectation: none outside; both sides are ours. The slow side computes every task of the whole plan
// anew and knows nothing of what a setting can reach. Same draws, same sums: no chance of a false alarm.

interface Rows {
  finish: number[];
  finishDay: number[];
  cost: number[];
  lateness: number[] | undefined;
}

function copyOf({ finish, finishDay, cost, lateness }: Outcome): Rows {
  return {
    finish: [...finish],
    finishDay: [...finishDay],
    cost: [...cost],
    lateness: lateness && [...lateness],
  };
}

/** The whole model again with the settings: slow, and right by construction. */
function wholeAgain(model: Model, seed: string, n: number, settings: Settings): Omit<Rows, "lateness"> {
  const block = newBlock(model, n);
  const { slots, entries, needed, people } = settings;
  draws(model, seed, "latin-hypercube", {
    ...(slots === undefined ? {} : { slots }),
    ...(entries === undefined ? {} : { entries }),
  }).fill(0, block);
  for (const [task, is] of needed ?? []) block.needed[task]?.fill(is);
  realise(model, block);
  const limited = model.limitedPeople && people !== false;
  place(model, block, planAsWritten(model).starts, limited ? newCapacity(model) : undefined);
  markFinish(model, block);
  addMoney(model, block, newMoneySums(model));
  return { finish: [...block.planFinish], finishDay: [...block.planFinishDay], cost: [...block.cost] };
}

/** Settings that hold about a quarter, half or three quarters of everything, at likely and unlikely values. */
function randomSettings(model: Model, rng: () => number): Settings {
  const part = [0.1, 0.5, 0.9][Math.floor(3 * rng())] as number;
  const slots = new Map<number, number>();
  model.slots.forEach((slot, s) => {
    if (rng() < part) slots.set(s, rng() < 0.5 ? slot.asWritten : 3 * rng());
  });
  const entries = new Map<number, 0 | 1>();
  model.register.forEach((_, e) => {
    if (rng() < part) entries.set(e, rng() < 0.5 ? 0 : 1);
  });
  const needed = new Map<number, 0 | 1>();
  model.tasks.forEach((task, j) => {
    if (task.chance < 1 && rng() < part) needed.set(j, rng() < 0.5 ? 0 : 1);
  });
  return { slots, entries, needed, ...(rng() < 0.3 ? { people: false as const } : {}) };
}

function plans(seeds: number, options: Parameters<typeof randomPlanDocument>[1] = {}): Plan[] {
  return Array.from(
    { length: seeds },
    (_, seed) => planFromData(randomPlanDocument(seededRng(seed), options)).plan,
  )
    .filter((plan) => plan !== undefined)
    .filter((plan) => simulate(compile(plan), { iterations: 40 }).trials !== undefined);
}

/** Lists of variants over random plans with what `whole` says of each, compared to the bit. */
function differing(variants: Variant[], expected: Partial<Rows>[], draw = { seed: "s", n: 40 }): number[] {
  const design = "latin-hypercube" as const;
  const found = runVariants({ seed: draw.seed, design, iterations: draw.n }, variants, copyOf);
  return expected.flatMap((whole, i) => {
    const same = (Object.keys(whole) as (keyof Rows)[]).every((row) =>
      (whole[row] ?? []).every((value, k) => Object.is(value, found[i]?.[row]?.[k])),
    );
    return same ? [] : [i];
  });
}

describe("runVariants(draw, variants)", () => {
  it("equals the whole model run again with all that is held, to the bit", () => {
    let compared = 0;
    const wrong: number[][] = [];
    plans(36).forEach((plan, p) => {
      const model = compile(plan);
      const rng = seededRng(1000 + p);
      const settings = [{}, ...Array.from({ length: 12 }, () => randomSettings(model, rng)), {}];
      const variants = settings.map((own) => ({ model, settings: own }));
      const whole = settings.map((own) => wholeAgain(model, "s", 40, own));
      for (const i of differing(variants, whole)) wrong.push([p, i]);
      compared += variants.length;
    });
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(400);
  });

  it("equals a cold simulation of a plan with the entry closed, whatever else is asked for with it", () => {
    const wrong: number[][] = [];
    let compared = 0;
    plans(36).forEach((plan, p) => {
      const model = compile(plan);
      const open = model.register.flatMap((entry, e) => (entry.fact === undefined ? [e] : []));
      const shut = open.map((e) => compile(closed(plan, model.register[e]?.id ?? "")));
      const whole = shut.map((other) => cold(other));
      const held = open.map((e) => ({ model, settings: { entries: new Map([[e, 0 as const]]) } }));
      // Different models in one list keep to their own draws.
      const mixed = open.flatMap((_, i) => [held[i] as Variant, { model: shut[i] as Model }]);
      const twice = whole.flatMap((rows) => [rows, rows]);
      for (const i of differing(mixed, twice, { seed: plan.seed, n: 1100 })) wrong.push([p, i]);
      compared += mixed.length;
    });
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(40);
  });

  it("equals a cold simulation of a plan with the estimate fixed at its as-written value", () => {
    const wrong: number[][] = [];
    let compared = 0;
    plans(36, { progress: false }).forEach((plan, p) => {
      const model = compile(plan);
      // A correlated set without one of its members draws the others anew: those stay as they are.
      if (model.correlated !== undefined) return;
      const at = model.slots.flatMap((slot, s) => (slot.purpose === "duration" ? [s] : []));
      const variants = at.map((s) => ({
        model,
        settings: { slots: new Map([[s, model.slots[s]?.asWritten ?? 0]]) },
      }));
      const whole = at.map((s) => cold(compile(fixed(plan, s, model))));
      for (const i of differing(variants, whole, { seed: plan.seed, n: 1100 })) wrong.push([p, i]);
      compared += variants.length;
    });
    expect(wrong).toEqual([]);
    expect(compared).toBeGreaterThan(40);
  });

  it("equals a cold simulation of a plan that does not respect capacity, where none holds to the plan", () => {
    const wrong: number[][] = [];
    let limited = 0;
    plans(40, { capacity: true, holdToPlan: false }).forEach((plan, p) => {
      const model = compile(plan);
      if (!model.limitedPeople) return;
      limited++;
      const variants: Variant[] = [{ model, settings: { people: false } }, { model }];
      const whole = [cold(compile({ ...plan, respectCapacity: false })), cold(model)];
      for (const i of differing(variants, whole, { seed: plan.seed, n: 1100 })) wrong.push([p, i]);
    });
    expect(wrong).toEqual([]);
    expect(limited).toBeGreaterThan(6);
  });

  it("gives what the forecast calls people without limit, also where tasks hold to the plan", () => {
    const wrong: number[] = [];
    plans(30, { capacity: true, holdToPlan: true }).forEach((plan, p) => {
      const model = compile(plan);
      const unlimited = simulate(model, { iterations: 1100 }).trials?.unlimited;
      if (unlimited === undefined) return;
      const rows = { finish: [...unlimited.finish], cost: [...unlimited.cost] };
      const draw = { seed: plan.seed, n: 1100 };
      if (differing([{ model, settings: { people: false } }], [rows], draw).length > 0) wrong.push(p);
    });
    expect(wrong).toEqual([]);
  });
});

function cold(model: Model): Rows {
  const { trials } = simulate(model, { iterations: 1100 });
  if (trials === undefined) throw new Error("beyond its calendars");
  const { finish, finishDay, cost, lateness } = trials;
  return {
    finish: [...finish],
    finishDay: [...finishDay],
    cost: [...cost],
    lateness: lateness && [...lateness],
  };
}

function closed(plan: Plan, id: string): Plan {
  const shut = <T extends { id: string }>(entry: T) =>
    entry.id === id ? { ...entry, status: "closed" as const } : entry;
  return { ...plan, risks: plan.risks.map(shut), assumptions: plan.assumptions.map(shut) };
}

function fixed(plan: Plan, s: number, model: Model): Plan {
  const slot = model.slots[s];
  return {
    ...plan,
    tasks: plan.tasks.map((task) =>
      `${task.id}:duration` === slot?.key && task.duration !== undefined
        ? { ...task, duration: { kind: "fixed", value: slot.asWritten, unit: task.duration.unit } }
        : task,
    ),
  };
}
