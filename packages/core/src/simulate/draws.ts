import type { Kernel } from "../kernel/index.ts";
import type { Design } from "../sampling/design.ts";
import {
  normalCdf,
  normalScore,
  type OutcomeTable,
  outcomeTable,
  type QuantileTable,
  quantileTable,
  seedBlock,
} from "../sampling/index.ts";
import { type Block, blockSize } from "./block.ts";
import type { Model, ModelTask, Slot } from "./model.ts";

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
  const cuts = new Float64Array(model.slots.length);
  let tools: Tools | undefined;
  return {
    cuts,
    fill(block, into) {
      const { kernel } = into;
      if (tools?.kernel !== kernel) tools = toolsFor(model, kernel, overrides);
      const { fillers, uniforms, correlated } = tools;
      const uniform: Uniform = (item, purpose, out) => {
        const words = seedBlock(seed, item, purpose, block);
        if (design === "plain") kernel.fillPlain(words, out);
        else kernel.fillLatin(words, out);
      };
      correlated.fill(uniform, into.n);
      for (let s = 0; s < model.slots.length; s++) {
        const slot = model.slots[s] as Slot;
        const filler = fillers[s] as Filler;
        const out = into.draws[s] as Float64Array;
        if (filler.kind === "held") {
          out.fill(filler.value, 0, into.n);
          continue;
        }
        const shared = correlated.rows.get(s);
        let cut = 0;
        if (filler.kind === "table" && shared === undefined && design !== "plain") {
          const words = seedBlock(seed, slot.item, slot.purpose, block);
          cut = kernel.drawLatin(words, filler.table, out, into.n, slot.cut);
        } else {
          if (shared === undefined) uniform(slot.item, slot.purpose, uniforms);
          const u = shared ?? uniforms;
          if (filler.kind === "table") cut = kernel.lookUp(filler.table, u, out, into.n, slot.cut);
          else cut = kernel.lookUpOutcomes(filler.table, u, out, into.n, slot.cut);
        }
        cuts[s] = (cuts[s] as number) + cut;
      }
      for (let j = 0; j < model.tasks.length; j++) {
        const row = into.needed[j];
        const task = model.tasks[j] as ModelTask;
        if (row === undefined) continue;
        if (task.chance <= 0) row.fill(0, 0, into.n);
        else {
          uniform(task.chanceAddress, "needed", uniforms);
          kernel.occur(uniforms, 0, task.chance, row, into.n);
        }
      }
      fillOccurrences(model, into, uniform, tools, overrides);
    },
  };
}

/** What filling needs in a kernel's memory: tables and rows of uniforms. */
interface Tools {
  kernel: Kernel;
  fillers: Filler[];
  uniforms: Float64Array;
  groups: Float64Array[];
  correlated: ReturnType<typeof correlatedUniforms>;
}

function toolsFor(model: Model, kernel: Kernel, overrides: Overrides): Tools {
  const { arena } = kernel;
  const fillers = model.slots.map((slot, s): Filler => {
    const held = overrides.slots?.get(s);
    if (held !== undefined) return { kind: "held", value: held };
    const { estimate } = slot;
    if (estimate.kind === "fixed") return { kind: "held", value: slot.asWritten };
    if (estimate.kind === "outcomes") {
      const { values, upTo } = outcomeTable(estimate);
      return { kind: "outcomes", table: { values: arena.table(values), upTo: arena.table(upTo) } };
    }
    const { values, shift, scale } = quantileTable(estimate);
    return { kind: "table", table: { values: arena.table(values), shift, scale } };
  });
  return {
    kernel,
    fillers,
    uniforms: arena.rows(1, blockSize)[0] as Float64Array,
    groups: arena.rows(model.groups.length, blockSize),
    correlated: correlatedUniforms(model, kernel),
  };
}

type Uniform = (item: string, purpose: string, out: Float64Array) => void;

/** One draw per entry, one per group: an entry occurs where its draw falls into its slot. */
function fillOccurrences(
  model: Model,
  into: Block,
  uniform: Uniform,
  { uniforms, groups, kernel }: Tools,
  overrides: Overrides,
): void {
  const drawn = new Set<number>();
  model.register.forEach((entry, e) => {
    const row = into.occurs[e] as Uint8Array;
    const fact = overrides.entries?.get(e) ?? entry.fact;
    if (fact !== undefined) {
      row.fill(fact, 0, into.n);
      return;
    }
    const u = entry.group < 0 ? uniforms : (groups[entry.group] as Float64Array);
    if (entry.group < 0) uniform(entry.item, "occurs", u);
    else if (!drawn.has(entry.group)) {
      uniform(`group:${model.groups[entry.group]?.name ?? ""}`, "occurs", u);
      drawn.add(entry.group);
    }
    kernel.occur(u, entry.lo, entry.hi, row, into.n);
  });
}

/** Uniforms of the correlated slots: normal scores of their own draws, mixed by the factor of the matrix. */
function correlatedUniforms(
  model: Model,
  kernel: Kernel,
): {
  rows: Map<number, Float64Array>;
  fill(uniform: Uniform, n: number): void;
} {
  const rows = new Map<number, Float64Array>();
  const set = model.correlated;
  if (set === undefined) return { rows, fill: () => {} };
  const { slots, factor } = set;
  const size = slots.length;
  const scores = kernel.arena.rows(size, blockSize);
  const uniforms = kernel.arena.rows(size, blockSize);
  slots.forEach((slot, i) => {
    rows.set(slot, uniforms[i] as Float64Array);
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
