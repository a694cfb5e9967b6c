import type { Drawing, Kernel } from "../kernel/index.ts";
import type { Drawer } from "../kernel/types.ts";
import type { Design } from "../sampling/design.ts";
import { type OutcomeTable, outcomeTable, type QuantileTable, streamText } from "../sampling/index.ts";
import { standardise } from "../sampling/shapes/standardise.ts";
import { type Block, blockSize } from "./block.ts";
import { type DrawMemory, noMemory } from "./drawMemory.ts";
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
  | { kind: "held"; value: number }
  | { kind: "many" }
  | { kind: "taken" };

/** @param memory  Draws that are taken over, and where draws are kept for the next simulation. */
export function draws(
  model: Model,
  seed: string,
  design: Design,
  overrides: Overrides = {},
  memory: DrawMemory = noMemory,
): Draws {
  const cuts = new Float64Array(model.slots.length);
  let tools: Tools | undefined;
  return {
    cuts,
    fill(block, into) {
      const { kernel } = into;
      if (tools?.kernel !== kernel) {
        tools = toolsFor(model, kernel, seed, design, overrides, memory);
      }
      const { fillers, uniforms, correlated, many, streams } = tools;
      const fresh: Uniform = (item, purpose, out) => {
        const words = streams(item, purpose, block);
        if (design === "plain") kernel.fillPlain(words, out);
        else kernel.fillLatin(words, out);
      };
      const uniform: Uniform = (item, purpose, out) => {
        if (memory.takeUniforms(item, purpose, block, into.n, out)) return;
        fresh(item, purpose, out);
        memory.keepUniforms(item, purpose, block, into.n, out);
      };
      if (correlated.needed) correlated.fill(fresh, into.n);
      many.below.fill(0);
      const { slots, outs } = many;
      for (let i = 0; i < slots.length; i++) outs[i] = into.draws[slots[i] as number] as Float64Array;
      many.drawer.draw(block, outs, into.n, many.below);
      for (let i = 0; i < slots.length; i++) {
        const s = slots[i] as number;
        cuts[s] = (cuts[s] as number) + (many.below[i] as number);
        if (memory !== noMemory) memory.keep(s, block, into.n, outs[i] as Float64Array, cuts[s] as number);
      }
      for (const s of tools.others) {
        const slot = model.slots[s] as Slot;
        const filler = fillers[s] as Filler;
        const out = into.draws[s] as Float64Array;
        if (filler.kind === "taken") {
          cuts[s] = (cuts[s] as number) + memory.take(s, block, into.n, out);
          continue;
        }
        if (filler.kind === "many") continue;
        if (filler.kind === "held") {
          out.fill(filler.value, 0, into.n);
          continue;
        }
        const shared = correlated.rows.get(s);
        if (shared === undefined) fresh(slot.item, slot.purpose, uniforms);
        const u = shared ?? uniforms;
        const cut =
          filler.kind === "table"
            ? kernel.lookUp(filler.table, u, out, into.n, slot.cut)
            : kernel.lookUpOutcomes(filler.table, u, out, into.n, slot.cut);
        cuts[s] = (cuts[s] as number) + cut;
        memory.keep(s, block, into.n, out, cuts[s] as number);
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
  /** The slots drawn all at once, and how many values of each were cut in the block. */
  many: { slots: number[]; outs: Float64Array[]; drawer: Drawer; below: Float64Array };
  /** The slots filled one by one. */
  others: number[];
  streams: Streams;
  uniforms: Float64Array;
  groups: Float64Array[];
  correlated: ReturnType<typeof correlatedUniforms>;
}

/** Four words for a block of a stream. */
type Streams = (item: string, purpose: string, block: number) => Uint32Array;

function toolsFor(
  model: Model,
  kernel: Kernel,
  seed: string,
  design: Design,
  overrides: Overrides,
  memory: DrawMemory,
): Tools {
  const { arena } = kernel;
  const correlated = correlatedUniforms(model, kernel, memory);
  const slots: number[] = [];
  const drawings: Drawing[] = [];
  const fillers = model.slots.map((slot, s): Filler => {
    const held = overrides.slots?.get(s);
    if (held !== undefined) return { kind: "held", value: held };
    if (memory.has(s)) return { kind: "taken" };
    const { estimate } = slot;
    if (estimate.kind === "fixed") return { kind: "held", value: slot.asWritten };
    if (estimate.kind === "outcomes") {
      const { values, upTo } = outcomeTable(estimate);
      return { kind: "outcomes", table: { values: arena.table(values), upTo: arena.table(upTo) } };
    }
    const { shape, parameter, shift, scale } = standardise(estimate);
    const table = { values: kernel.table(shape, parameter), shift, scale };
    if (design === "plain" || correlated.rows.has(s)) return { kind: "table", table };
    slots.push(s);
    drawings.push({ stream: streamText(seed, slot.item, slot.purpose), table, cut: slot.cut });
    return { kind: "many" };
  });
  return {
    kernel,
    fillers,
    many: { slots, outs: [], drawer: kernel.drawer(drawings), below: new Float64Array(slots.length) },
    others: [...fillers.keys()].filter((s) => fillers[s]?.kind !== "many"),
    streams: streamsOf(seed, kernel),
    uniforms: arena.rows(1, blockSize)[0] as Float64Array,
    groups: arena.rows(model.groups.length, blockSize),
    correlated,
  };
}

/** Seeds come by ten, as blocks are asked for one after the other. */
function streamsOf(seed: string, kernel: Kernel): Streams {
  const known = new Map<string, { decade: number; words: Uint32Array }>();
  return (item, purpose, block) => {
    const text = streamText(seed, item, purpose);
    let ten = known.get(text);
    if (ten === undefined) {
      ten = { decade: -1, words: new Uint32Array(40) };
      known.set(text, ten);
    }
    const decade = Math.floor(block / 10);
    if (ten.decade !== decade) {
      kernel.seedTen(text, decade, ten.words);
      ten.decade = decade;
    }
    const at = 4 * (block - 10 * decade);
    return ten.words.subarray(at, at + 4);
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
  memory: DrawMemory,
): {
  rows: Map<number, Float64Array>;
  /** Whether any of its slots is drawn. */
  needed: boolean;
  fill(uniform: Uniform, n: number): void;
} {
  const rows = new Map<number, Float64Array>();
  const set = model.correlated;
  if (set === undefined) return { rows, needed: false, fill: () => {} };
  const { slots, factor } = set;
  const size = slots.length;
  const scores = kernel.arena.rows(size, blockSize);
  const uniforms = kernel.arena.rows(size, blockSize);
  slots.forEach((slot, i) => {
    rows.set(slot, uniforms[i] as Float64Array);
  });
  return {
    rows,
    needed: !slots.every((slot) => memory.has(slot)),
    fill(uniform, n) {
      slots.forEach((s, i) => {
        const slot = model.slots[s] as Model["slots"][number];
        const z = scores[i] as Float64Array;
        uniform(slot.item, slot.purpose, z);
        kernel.toScores(z, n);
      });
      slots.forEach((s, i) => {
        const u = rows.get(s) as Float64Array;
        u.fill(0, 0, n);
        for (let c = 0; c <= i; c++) {
          kernel.addScaled(u, scores[c] as Float64Array, factor[i * size + c] as number, n);
        }
        kernel.toChances(u, n);
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
