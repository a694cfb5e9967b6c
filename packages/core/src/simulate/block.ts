import { blockSize } from "../sampling/streams/blockSize.ts";
import type { Model } from "./model.ts";

export { blockSize };

/**
 * One block of iterations while it is computed: rows of `n` values, one row per slot, task or entry
 * (structure of arrays). Rows are made once and used again for every block.
 *
 * A point (a milestone, a realised duration of 0, a task not needed) has start = finish.
 */
export interface Block {
  n: number;
  /** Draws by slot, in the written unit, cut at zero where that applies. */
  draws: Float64Array[];
  /** By entry: 1 where it occurs. */
  occurs: Uint8Array[];
  /** By task: 1 where needed; undefined: in every iteration. */
  needed: (Uint8Array | undefined)[];
  /** Realised durations in working days; 0 where not needed. */
  duration: Float64Array[];
  /** Working days that impacts hold a task back; undefined: none. */
  wait: (Float64Array | undefined)[];
  /** Moments, days since start. */
  start: Float64Array[];
  finish: Float64Array[];
  /** 1 where nudging the task on from just where it stands moves the plan's finish. */
  moves: Uint8Array[];
  /**
   * 1 where its own push moves it: on to the next moment its calendar works. It differs from `moves` only for
   * points on a day off, so tasks that are never points share one row for both.
   */
  pushed: Uint8Array[];
  /** The plan's finish (or that of `finishOf`) and the day its date falls on. */
  planFinish: Float64Array;
  planFinishDay: Int32Array;
  cost: Float64Array;
  scratch: Float64Array;
  scratch2: Float64Array;
}

/** Rows for up to `size` iterations. Cost: about 26 bytes * size per task and 8 * size per slot. */
export function newBlock(model: Model, size: number): Block {
  const rows = (count: number) => Array.from({ length: count }, () => new Float64Array(size));
  const moves = model.tasks.map(() => new Uint8Array(size));
  return {
    n: size,
    draws: rows(model.slots.length),
    occurs: model.register.map(() => new Uint8Array(size)),
    needed: model.tasks.map((task) => (task.chance < 1 ? new Uint8Array(size) : undefined)),
    duration: rows(model.tasks.length),
    wait: model.tasks.map((task) =>
      task.impacts.some((at) => model.register[at.entry]?.impacts[at.impact]?.wait !== undefined)
        ? new Float64Array(size)
        : undefined,
    ),
    start: rows(model.tasks.length),
    finish: rows(model.tasks.length),
    moves,
    pushed: model.tasks.map((task, j) => (task.mayBePoint ? new Uint8Array(size) : (moves[j] as Uint8Array))),
    planFinish: new Float64Array(size),
    planFinishDay: new Int32Array(size),
    cost: new Float64Array(size),
    scratch: new Float64Array(size),
    scratch2: new Float64Array(size),
  };
}
