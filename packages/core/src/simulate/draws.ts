import type { Design } from "../sampling/design.ts";
import {
  fillFromOutcomes,
  fillFromTable,
  fillUniforms,
  normalCdf,
  normalScore,
  type OutcomeTable,
  outcomeTable,
  type QuantileTable,
  quantileTable,
} from "../sampling/index.ts";
import { type Block, blockSize } from "./block.ts";
import type { Model } from "./model.ts";

/**
 * Fixes some draws for a re-run on the same dice: a slot held at one value, an entry made to occur or not.
 */
export interface Overrides {
  slots?: ReadonlyMap<number, number>;
  entries?: ReadonlyMap<number, 0 | 1>;
}

/** Fills blocks with draws. Every draw is a function of (seed, item, purpose, iteration) and of nothing else. */
export interface Draws {
  /** Rows of iterations `block * 1024 ...` into `into`, `into.n` of them. */
  fill(block: number, into: Block): void;
  /** Draws cut at zero so far, by slot. */
  cuts: Float64Array;
}

type Filler =
  | { kind: "table"; table: QuantileTable }
  | { kind: "outcomes"; table: OutcomeTable }
  | { kind: "held"; value: number };

export function draws(model: Model, seed: string, design: Design, overrides: Overrides = {}): Draws {
  const fillers = model.slots.map((slot, s): Filler => {
    const held = overrides.slots?.get(s);
    if (held !== undefined) return { kind: "held", value: held };
    if (slot.estimate.kind === "range") return { kind: "table", table: quantileTable(slot.estimate) };
    if (slot.estimate.kind === "outcomes") return { kind: "outcomes", table: outcomeTable(slot.estimate) };
    return { kind: "held", value: slot.estimate.value };
  });
  const uniforms = new Float64Array(blockSize);
  const cuts = new Float64Array(model.slots.length);
  const correlated = correlatedUniforms(model);

  const fillSlot = (s: number, u: Float64Array, into: Block) => {
    const out = into.draws[s] as Float64Array;
    const filler = fillers[s] as Filler;
    if (filler.kind === "held") {
      out.fill(filler.value, 0, into.n);
      return;
    }
    if (filler.kind === "table") fillFromTable(filler.table, u, out, into.n);
    else fillFromOutcomes(filler.table, u, out, into.n);
    if (model.slots[s]?.cut !== true) return;
    let cut = 0;
    for (let k = 0; k < into.n; k++) {
      if ((out[k] as number) < 0) {
        out[k] = 0;
        cut++;
      }
    }
    cuts[s] = (cuts[s] as number) + cut;
  };

  return {
    cuts,
    fill(block, into) {
      const uniform = (item: string, purpose: string, out: Float64Array) =>
        fillUniforms(design, seed, item, purpose, block, out);
      correlated.fill(uniform, into.n);
      model.slots.forEach((slot, s) => {
        const shared = correlated.rows.get(s);
        if (shared !== undefined) fillSlot(s, shared, into);
        else {
          if (fillers[s]?.kind !== "held") uniform(slot.item, slot.purpose, uniforms);
          fillSlot(s, uniforms, into);
        }
      });
      model.tasks.forEach((task, j) => {
        const row = into.needed[j];
        if (row === undefined) return;
        if (task.chance <= 0) row.fill(0, 0, into.n);
        else {
          uniform(task.chanceAddress, "needed", uniforms);
          for (let k = 0; k < into.n; k++) row[k] = (uniforms[k] as number) < task.chance ? 1 : 0;
        }
      });
      fillOccurrences(model, into, uniform, uniforms, overrides);
    },
  };
}

type Uniform = (item: string, purpose: string, out: Float64Array) => void;

/** One draw per entry, one per group: an entry occurs where its draw falls into its slot. */
function fillOccurrences(
  model: Model,
  into: Block,
  uniform: Uniform,
  own: Float64Array,
  overrides: Overrides,
): void {
  const groups: (Float64Array | undefined)[] = model.groups.map(() => undefined);
  model.register.forEach((entry, e) => {
    const row = into.occurs[e] as Uint8Array;
    const fact = overrides.entries?.get(e) ?? entry.fact;
    if (fact !== undefined) {
      row.fill(fact, 0, into.n);
      return;
    }
    let u = own;
    if (entry.group < 0) uniform(entry.item, "occurs", u);
    else {
      const known = groups[entry.group];
      u = known ?? new Float64Array(blockSize);
      if (known === undefined) {
        uniform(`group:${model.groups[entry.group]?.name ?? ""}`, "occurs", u);
        groups[entry.group] = u;
      }
    }
    const { lo, hi } = entry;
    for (let k = 0; k < into.n; k++) row[k] = (u[k] as number) >= lo && (u[k] as number) < hi ? 1 : 0;
  });
}

/** Uniforms of the correlated slots: normal scores of their own draws, mixed by the factor of the matrix. */
function correlatedUniforms(model: Model): {
  rows: Map<number, Float64Array>;
  fill(uniform: Uniform, n: number): void;
} {
  const rows = new Map<number, Float64Array>();
  const set = model.correlated;
  if (set === undefined) return { rows, fill: () => {} };
  const { slots, factor } = set;
  const size = slots.length;
  const scores = Array.from({ length: size }, () => new Float64Array(blockSize));
  slots.forEach((slot) => {
    rows.set(slot, new Float64Array(blockSize));
  });
  return {
    rows,
    fill(uniform, n) {
      slots.forEach((s, i) => {
        const slot = model.slots[s] as Model["slots"][number];
        const z = scores[i] as Float64Array;
        uniform(slot.item, slot.purpose, z);
        for (let k = 0; k < n; k++) z[k] = normalScore(z[k] as number);
      });
      slots.forEach((s, i) => {
        const u = rows.get(s) as Float64Array;
        for (let k = 0; k < n; k++) {
          let z = 0;
          for (let c = 0; c <= i; c++)
            z += (factor[i * size + c] as number) * ((scores[c] as Float64Array)[k] as number);
          u[k] = normalCdf(z);
        }
      });
    },
  };
}

/** Every draw at its as-written value: one iteration, the plan as written. */
export function fillAsWritten(model: Model, into: Block): void {
  model.slots.forEach((slot, s) => {
    (into.draws[s] as Float64Array).fill(slot.asWritten, 0, into.n);
  });
  model.tasks.forEach((task, j) => {
    into.needed[j]?.fill(task.chance >= 0.5 ? 1 : 0, 0, into.n);
  });
  model.register.forEach((entry, e) => {
    (into.occurs[e] as Uint8Array).fill(entry.fact === 1 ? 1 : 0, 0, into.n);
  });
}
