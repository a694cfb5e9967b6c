import type {
  Compared,
  Design,
  Draw,
  Forecast,
  Gauge,
  Measure,
  MomentRanks,
  Plan,
  RunEntry,
  Settings,
  Targets,
  TornadoBar,
  TornadoPart,
  TrialSums,
  Trials,
  ValuesOfPlans,
} from "@leeway/core";
import type { Taken } from "./takeBlocks.ts";

/** What the draws and the rows of trials depend on besides the plan. */
export interface RunOptions {
  seed?: string;
  design?: Design;
  months?: boolean;
  confidence?: number;
}

/** Rows of trials, in the order of `rowsOf`. */
export type Row = Float64Array | Int32Array;

/** Asked of a thread, one request at a time. Every request but `plan`, `practise`, `touch` and `forget` has one answer. */
export type ToThread =
  /** What the requests that follow are about. */
  | { kind: "plan"; plan: Plan; options: RunOptions }
  /** Compute `iterations` iterations of `total` from block `fromBlock` on. */
  | { kind: "stretch"; fromBlock: number; iterations: number; total: number }
  /** What was kept of the moments of tasks `from` up to `to` over all stretches since the plan, where they have no rows. */
  | { kind: "moments"; total: number; from: number; to: number }
  /**
   * Compute blocks together with others: each takes the next from `counter` (an Int32 of the next block's number) until
   * none is left, into rows that all share (`bytesOfTrials`).
   */
  | { kind: "join"; rows: SharedArrayBuffer; counter: SharedArrayBuffer; iterations: number }
  /** Nothing is to do yet: see that the kernel is compiled when there is. */
  | { kind: "practise" }
  /** Nothing is to do yet: have the system hand out memory that will be needed (`touchMemory`). */
  | { kind: "touch"; memory: RunEntry["memory"] }
  /** Work on a run in shared memory (`joinRun`); knows no plan. */
  | { kind: "assist"; entry: RunEntry }
  /** Read the percentiles of tasks `from` up to `to` off the trials joined last. */
  | { kind: "ranks"; confidence: number; from: number; to: number }
  | { kind: "summarise"; trials: Trials; confidence: number | undefined }
  /** Where variants of the plan stand at a level. */
  | { kind: "measure"; draw: Draw; confidence: number; settings: readonly Settings[] }
  /** Committed values of other plans, in the terms of a comparison with this one. */
  | { kind: "values"; terms: Omit<Compared["terms"], "newer">; plans: readonly Plan[] }
  /** Gauges of sets of decisions about the plan. */
  | {
      kind: "gauge";
      /** What may be decided (`switchNames`). */
      about: readonly string[];
      draw: Draw;
      targets: Targets;
      sets: readonly bigint[];
      iterations: number;
    }
  | ({ kind: "tornado"; draw: Draw; committed: Forecast["committed"] } & TornadoPart)
  /** Drop the plan and all that was made of it. */
  | { kind: "forget" };

/** A thread's answers, and what it says in between. */
export type FromThread =
  /** Said once, before anything else: the thread runs. */
  | { kind: "ready" }
  /** Iterations of the current request computed so far. */
  | { kind: "progress"; done: number }
  /** `sums` block by block. `beyond`: a task that ran past its calendar in the block after the last of `sums`, or -1. */
  | { kind: "stretch"; rows: Row[]; sums: TrialSums[]; beyond: number }
  /** The sums of each block computed; a task that ran past its calendar in `block`, or -1. */
  | ({ kind: "joined" } & Taken)
  | { kind: "assisted" }
  | { kind: "moments"; parts: MomentRanks[] }
  | { kind: "ranks"; values: Float64Array }
  | { kind: "summary"; forecast: Forecast }
  | { kind: "measures"; measures: Measure[] }
  | { kind: "values"; values: ValuesOfPlans }
  | { kind: "gauges"; gauges: Gauge[] }
  | { kind: "bars"; bars: { at: number; bar: TornadoBar }[] }
  | { kind: "failed"; name: string; message: string; stack: string };

export type Answer = Exclude<FromThread, { kind: "ready" | "progress" | "failed" }>;
