import type { AsWritten } from "../asWritten.ts";
import type { Block } from "../block.ts";
import type { Model, ModelTask } from "../model.ts";
import { addOverheads } from "../money.ts";
import { onTarget } from "../tally.ts";
import type { TrialSums, Trials } from "../trials.ts";
import { followsProgram } from "./followsProgram.ts";
import { bytesOfWords, streamsOf } from "./streams.ts";
import { sumsTold, toldLayout } from "./told.ts";
import { addressesOf, lawsOf, localRows, writeProgram } from "./writeProgram.ts";

/** Computes blocks by a program. */
export interface ProgramRunner {
  /** The block's sums but those that `finish` adds, or the index of a task that runs past the calendar's end. */
  run(b: number, first: number, n: number): TrialSums | number;
  /** Whether something else has to read the block's moments before the next one. */
  reads: boolean;
  /** Adds what is computed from the block's rows: targets and overheads. */
  finish(block: Block, sums: TrialSums): void;
}

/** undefined where the model does not follow a program, or there is no WebAssembly to carry it out. */
export function programRunner(
  model: Model,
  asWritten: AsWritten,
  trials: Trials,
  block: Block,
  inKernel: boolean,
): ProgramRunner | undefined {
  const { kernel } = block;
  const { wasm, arena } = kernel;
  if (wasm === undefined || !followsProgram(model)) return undefined;
  const layout = toldLayout(model);
  const rows = {
    starts: (inKernel ? trials.starts : block.start).map((row) => row.byteOffset),
    finishes: inKernel ? trials.finishes : block.finish,
    finish: block.planFinish,
    finishDay: block.planFinishDay,
    cost: block.cost,
  };
  const local = localRows(model, kernel);
  const laws = lawsOf(model, kernel);
  const seeds = arena.int32(1, bytesOfWords(model) >> 2)[0] as Int32Array;
  const program = writeProgram(
    model,
    asWritten,
    seeds.byteOffset,
    kernel,
    addressesOf(block),
    local,
    laws,
    rows,
    layout,
  );
  const streams = streamsOf(model, trials.seed);
  const told = arena.rows(1, layout.bytes >> 3)[0] as Float64Array;
  const ten = new Uint32Array(40);
  let seeded = -1;
  const targeted = model.tasks.flatMap((task, j) => (task.targetDay === undefined ? [] : [j]));
  return {
    run(b, first, n) {
      const decade = Math.floor(b / 10);
      if (decade !== seeded) {
        streams.forEach((stream, i) => {
          kernel.seedTen(stream, decade, ten);
          seeds.set(ten, 40 * i);
        });
        seeded = decade;
      }
      const place = inKernel ? 8 * first : 0;
      const beyond = wasm.runProgram(
        program.at,
        0,
        place,
        place,
        0,
        told.byteOffset,
        16 * (b - 10 * decade),
        n,
      );
      if (beyond >= 0) return program.taskAt.get(beyond) as number;
      return sumsTold(model, asWritten, layout, arena.buffer, told.byteOffset, n);
    },
    reads:
      targeted.length > 0 ||
      model.overheads.length > 0 ||
      model.intervals.length > 0 ||
      model.benefits.length > 0,
    finish(block, sums) {
      addOverheads(model, block, sums);
      for (const j of targeted) {
        const task = model.tasks[j] as ModelTask;
        const finish = block.finish[j] as Float64Array;
        const duration = block.duration[j] as Float64Array;
        sums.onTarget[j] = onTarget(task, duration, finish, undefined, task.targetDay as number, block.n);
      }
    },
  };
}
