import { chebyshevPoint } from "../math/chebyshevPoint.ts";
import { exponential } from "../math/exponential.ts";
import { logarithm } from "../math/logarithm.ts";
import { betaSide } from "../shapes/betaSide.ts";
import { bodyLength, tailLength, tailProbability } from "./layout.ts";

/** Quantile tables at a few x, from which the table at any x of an interval is interpolated. */
export interface PertPiece {
  /** Chebyshev points of the interval. */
  readonly nodes: Float64Array;
  /** 1 / product of (node j - other nodes): the constant part of the Lagrange polynomials. */
  readonly weights: Float64Array;
  /**
   * Entry by entry, one value per node: 433 of the lower tail, 433 of the upper, 961 of the body. Tail entries are
   * distances from the end of the support divided by u^(1/alpha) (w^(1/beta)): what is left varies little, so the
   * tails keep their relative accuracy.
   */
  readonly values: Float64Array;
}

/** Points per interval; 4 intervals of width 1/8 cover x = 0 ... 1/2. */
export const nodeCount = 9;

interface Logs {
  tail: Float64Array;
  body: Float64Array;
}
let logs: Logs | undefined;

/**
 * ln u of the entries of a tail (0 at entry 0), and of the body's. Made when they are first asked for: 1,395 logarithms
 * take an engine that has just started some 15 milliseconds, and pieces that are at hand already need none.
 */
export function pieceLogs(): Logs {
  logs ??= {
    tail: Float64Array.from({ length: tailLength }, (_, e) => (e === 0 ? 0 : logarithm(tailProbability(e)))),
    body: Float64Array.from({ length: bodyLength }, (_, e) => logarithm((32 + e) / 1024)),
  };
  return logs;
}

/**
 * Tabulates the PERT law at the Chebyshev points of [from, from + 1/8].
 *
 * Cost   about 7 milliseconds, once per interval that a plan touches.
 */
export function pertPiece(from: number): PertPiece {
  const nodes = pertNodes(from);
  const weights = pertWeights(nodes);
  const values = new Float64Array((2 * tailLength - 2 + bodyLength) * nodeCount);
  for (let j = 0; j < nodeCount; j++) fillNode(values, j, nodes[j] as number);
  return { nodes, weights, values };
}

/** The Chebyshev points of [from, from + 1/8]. */
export function pertNodes(from: number): Float64Array {
  const nodes = new Float64Array(nodeCount);
  for (let j = 0; j < nodeCount; j++) {
    nodes[j] = from + 0.125 * chebyshevPoint((2 * j + 1) / (4 * nodeCount));
  }
  return nodes;
}

/** The constant parts of their Lagrange polynomials. */
export function pertWeights(nodes: Float64Array): Float64Array {
  const weights = new Float64Array(nodeCount).fill(1);
  for (let j = 0; j < nodeCount; j++) {
    for (let k = 0; k < nodeCount; k++) {
      if (k !== j) weights[j] = (weights[j] as number) / ((nodes[j] as number) - (nodes[k] as number));
    }
  }
  return weights;
}

/** How many cells of the body lie below 1/2 as F counts, and are so the left side's. */
export function pertSplit(atHalf: number): number {
  let split = 0;
  while (split < bodyLength && (32 + split) / 1024 <= atHalf) split++;
  return split;
}

function fillNode(values: Float64Array, j: number, x: number): void {
  const left = betaSide(4 * x);
  const right = betaSide(4 - 4 * x);
  const { tail, body: logBody } = pieceLogs();
  let at = j;
  // The line through the two quantiles before is the starting point of the next: two Newton steps each.
  for (const side of [left, right]) {
    let before = -36;
    let logY = -36;
    for (let e = 1; e < tailLength; e++) {
      const logU = tail[e] as number;
      const start = 2 * logY - before;
      before = logY;
      logY = side.logQuantile(logU, start);
      values[at] = exponential(logY - logU / side.alpha);
      at += nodeCount;
    }
  }
  const split = pertSplit(left.atHalf);
  const body = at;
  let before = -1;
  let logY = -1;
  for (let e = 0; e < split; e++) {
    const start = 2 * logY - before;
    before = logY;
    logY = left.logQuantile(logBody[e] as number, start);
    values[body + e * nodeCount] = exponential(logY);
  }
  before = -1;
  logY = -1;
  for (let e = bodyLength - 1; e >= split; e--) {
    const start = 2 * logY - before;
    before = logY;
    logY = right.logQuantile(logBody[bodyLength - 1 - e] as number, start);
    values[body + e * nodeCount] = 1 - exponential(logY);
  }
}
