import { symmetricEigen } from "./symmetricEigen.ts";

const memory = 8;
const tolerance = 1e-12;
const mostRounds = 3000;

/**
 * Higham's alternating projections for one block, with Dykstra's correction.
 *
 * One projection only sets the diagonal, so all that the corrections ever add up to is a change y of the diagonal:
 * the method is y <- y + 1 - diag(P(A + diag(y))), where P leaves the negative eigenvalues out. Written so it is a
 * fixed-point iteration in n unknowns, and is sped up by Anderson's mixing of the last few steps; whenever that does
 * not bring the diagonal nearer to 1, the plain step is taken and the memory dropped, so it still converges.
 *
 * Source Higham (2002), IMA Journal of Numerical Analysis 22(3), 329-343, algorithm 3.3; Higham & Strabić (2016),
 *        Anderson acceleration of the alternating projections method, Numerical Algorithms 72, 1021-1042.
 */
export function repairBlock(matrix: Float64Array, n: number): Float64Array {
  let y: Float64Array = new Float64Array(n);
  const shifted = Float64Array.from(matrix);
  let best = Number.POSITIVE_INFINITY;
  const steps: Float64Array[] = []; // differences of y + miss
  const misses: Float64Array[] = []; // differences of miss
  let lastStep: Float64Array | undefined;
  let lastMiss: Float64Array | undefined;
  let projected = matrix;
  for (let round = 0; round < mostRounds; round++) {
    for (let i = 0; i < n; i++) shifted[i * n + i] = (matrix[i * n + i] as number) + (y[i] as number);
    projected = withoutNegative(shifted, n);
    const miss = new Float64Array(n);
    let size = 0;
    for (let i = 0; i < n; i++) {
      miss[i] = 1 - (projected[i * n + i] as number);
      size = Math.max(size, Math.abs(miss[i] as number));
    }
    if (size <= tolerance) break;
    const step = y.map((v, i) => v + (miss[i] as number));
    if (size > 2 * best) {
      steps.length = 0;
      misses.length = 0;
    } else if (lastStep !== undefined && lastMiss !== undefined) {
      steps.push(difference(step, lastStep));
      misses.push(difference(miss, lastMiss));
      if (steps.length > memory) {
        steps.shift();
        misses.shift();
      }
    }
    best = Math.min(best, size);
    lastStep = step;
    lastMiss = miss;
    y = mixed(step, miss, steps, misses);
  }
  // The diagonal is 1 to within the tolerance; scaling rows and columns makes it so and keeps the matrix definite.
  const result = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const scale = Math.sqrt((projected[i * n + i] as number) * (projected[j * n + j] as number));
      result[i * n + j] = i === j ? 1 : (projected[i * n + j] as number) / scale;
    }
  }
  return result;
}

/** The nearest positive semi-definite matrix: the part that belongs to positive eigenvalues. */
function withoutNegative(matrix: Float64Array, n: number): Float64Array {
  const { values, vectors } = symmetricEigen(matrix, n);
  const result = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) {
        const value = values[k] as number;
        if (value > 0) sum += value * (vectors[i * n + k] as number) * (vectors[j * n + k] as number);
      }
      result[i * n + j] = sum;
      result[j * n + i] = sum;
    }
  }
  return result;
}

const difference = (a: Float64Array, b: Float64Array): Float64Array => a.map((v, i) => v - (b[i] as number));

/** The step, less the combination of earlier steps whose misses come nearest to the present one (least squares). */
function mixed(
  step: Float64Array,
  miss: Float64Array,
  steps: Float64Array[],
  misses: Float64Array[],
): Float64Array {
  const result = Float64Array.from(step);
  const rest = Float64Array.from(miss);
  const directions: Float64Array[] = [];
  const moves: Float64Array[] = [];
  // Gram-Schmidt from the newest difference back, each direction carrying its move along.
  for (let k = misses.length - 1; k >= 0; k--) {
    const direction = Float64Array.from(misses[k] as Float64Array);
    const move = Float64Array.from(steps[k] as Float64Array);
    const before = dot(direction, direction);
    for (let j = 0; j < directions.length; j++) {
      const share = dot(direction, directions[j] as Float64Array);
      subtract(direction, directions[j] as Float64Array, share);
      subtract(move, moves[j] as Float64Array, share);
    }
    const square = dot(direction, direction);
    if (!(square > 1e-12 * before)) continue;
    const scale = 1 / Math.sqrt(square);
    for (let i = 0; i < direction.length; i++) {
      direction[i] = (direction[i] as number) * scale;
      move[i] = (move[i] as number) * scale;
    }
    directions.push(direction);
    moves.push(move);
    const share = dot(rest, direction);
    subtract(rest, direction, share);
    subtract(result, move, share);
  }
  return result;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function subtract(from: Float64Array, what: Float64Array, times: number): void {
  for (let i = 0; i < from.length; i++) from[i] = (from[i] as number) - times * (what[i] as number);
}
