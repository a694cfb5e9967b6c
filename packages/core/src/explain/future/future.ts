import { rankOf } from "../../forecast/ranks.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import { blockSize } from "../../simulate/block.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { eachBlock } from "../paths/eachBlock.ts";
import { drawOf, type ExplainingOptions, explaining, type Subject } from "../subject.ts";
import type { Future } from "../types.ts";
import { runVariants } from "../variants.ts";
import { type Replay, replay } from "./replay.ts";

/** Which future: by its number, counted from 1, or the first that finishes where a share `at` of them have. */
export type WhichFuture = { iteration: number } | { at: number };

/** Which run the replayed future belongs to. */
export type FutureOptions = ExplainingOptions;

/** One future replayed, or why there is none such. */
export interface FutureResult {
  future?: Future;
  problems: Problem[];
}

/**
 * One future of a run replayed: what was drawn, what occurred, when each task ran and what held its start, the chain
 * that set the finish, and the cost line by line. Its figures are the run's own, to the bit: with the same seed, design
 * and iterations, `finish` and `cost` are those of iteration `iteration - 1` of `simulate`.
 *
 * Problems are values. Cost: one run of the model without marking, for where the future stands among the others, and
 * one block.
 */
export function future(plan: Plan, which: WhichFuture, options: FutureOptions = {}): FutureResult {
  const explain = ({ model, asWritten, draw }: Subject): FutureResult => {
    const [chosen] = runVariants(
      draw,
      [{ model }],
      ({ finish, cost }) => {
        const at = "at" in which ? indexAt(finish, which.at) : which.iteration - 1;
        return { at, finish: shareUpTo(finish, at), cost: shareUpTo(cost, at) };
      },
      options.onProgress,
    );
    if (chosen === undefined) return { problems: [] };
    const b = Math.floor(chosen.at / blockSize);
    let told: Replay | undefined;
    eachBlock(
      model,
      draw,
      asWritten.starts,
      (block, first) => {
        told = replay(model, asWritten, block, chosen.at - first);
      },
      b,
    );
    if (told === undefined) return { problems: [] };
    const { plan: title, finish, cost, ...rest } = told;
    return {
      future: {
        stamp: stampOf(model, draw),
        plan: title,
        iteration: chosen.at + 1,
        ...("at" in which ? { at: which.at } : {}),
        finish: { ...finish, level: chosen.finish },
        cost: { total: cost.total, level: chosen.cost, lines: cost.lines },
        ...rest,
      },
      problems: [],
    };
  };
  return explaining(plan, options, explain, {
    unfit: problemsOf(which, drawOf(plan, options).iterations),
  });
}

/** The first iteration that ends where percentile p of them does. */
function indexAt(finish: Float64Array, p: number): number {
  const value = finish.slice().sort()[rankOf(p, finish.length) - 1] as number;
  return finish.indexOf(value);
}

function shareUpTo(row: Float64Array, at: number): number {
  const limit = row[at] as number;
  let count = 0;
  for (const value of row) if (value <= limit) count++;
  return count / row.length;
}

function problemsOf(which: WhichFuture, iterations: number): Problem[] {
  if ("at" in which) {
    if (which.at > 0 && which.at < 1) return [];
    return [problem("at", which.at, "A level is above 0 and below 1.", "Ask for e.g. 0.8.")];
  }
  if (Number.isInteger(which.iteration) && which.iteration >= 1 && which.iteration <= iterations) return [];
  return [
    problem(
      "iteration",
      which.iteration,
      `The run has ${iterations} futures, counted from 1.`,
      `Ask for one from 1 to ${iterations}, or for more iterations.`,
    ),
  ];
}

function problem(path: string, received: number, rule: string, remedy: string): Problem {
  return { code: "no-such-future", severity: "error", path, received: String(received), rule, remedy };
}
