import {
  blockRunner,
  blockSize,
  compile,
  newTrials,
  planAsWritten,
  sharePieces,
  taskRanks,
  warmUp,
} from "@leeway/core";
import { practicePlan } from "./practicePlan.ts";

/** Rounds after which the engine has compiled most of what a simulation calls. */
const rounds = 6;

/**
 * Makes a thread quick before its plan comes: the kernel, what tables are made from (into `pieces`, for the thread that
 * reads the plan), and the engine's own compiling. Changes no number.
 *
 * Cost: about 60 milliseconds of a thread that has nothing else to do.
 */
export function practise(pieces: SharedArrayBuffer | undefined): void {
  if (pieces !== undefined) sharePieces(pieces);
  warmUp();
  const iterations = 2 * blockSize;
  for (let round = 0; round < rounds; round++) {
    const model = compile(practicePlan);
    const asWritten = planAsWritten(model);
    const trials = newTrials(model, asWritten, { iterations });
    const runner = blockRunner(model, asWritten, trials);
    for (let block = 0; block < 2; block++) runner.run(block, block * blockSize, blockSize);
    taskRanks({ model, asWritten, trials }, 0.8, 0, model.tasks.length);
  }
}
