/** The mean: the sum in order, divided. */
export function meanOf(values: Float64Array): number {
  const n = values.length;
  let sum = 0;
  for (let k = 0; k < n; k++) sum += values[k] as number;
  return sum / n;
}

/** Mean and standard deviation (n - 1), two passes so that large sums of money keep their digits; sd 0 for n = 1. */
export function meanAndSd(values: Float64Array): { mean: number; sd: number } {
  const n = values.length;
  const mean = meanOf(values);
  let squares = 0;
  for (let k = 0; k < n; k++) {
    const d = (values[k] as number) - mean;
    squares += d * d;
  }
  return { mean, sd: n > 1 ? Math.sqrt(squares / (n - 1)) : 0 };
}
