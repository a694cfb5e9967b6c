/**
 * Sees the values of many rows, a stretch at a time, and keeps of each only what its wanted ranks can still be:
 * about 14 sqrt(p (1 - p) n) values for each probability p.
 */
export interface RankKeeper {
  /**
   * The next n values of a row: the first n of `values`, which lie in the kernel's arena. Stretches may have any
   * length; what has come so far should be like what is still to come, as blocks of a simulation are.
   *
   * Cost: 1 to 2 nanoseconds a value where WebAssembly is.
   */
  absorb(row: number, values: Float64Array, n: number): void;
  /**
   * What has been kept of rows `from` up to `to` (default: of all), copied out; the first of them is row 0 of the answer.
   * Cost: about as much as 10,000 values more a row.
   */
  result(from?: number, to?: number): KeptRanks;
}

/**
 * What a keeper has kept: plain data, to be sent from thread to thread and read by `ranksFrom`.
 *
 * Each row has, for each probability, a bracket [low, high] and how many of the row's values were below it and at its
 * two ends; the values strictly inside any bracket are in the row's list. Row r and probability i stand at
 * r * ps.length + i. A row that had to be given up has low > high.
 */
export interface KeptRanks {
  ps: Float64Array;
  /** By row: how many values it had. */
  seen: Float64Array;
  low: Float64Array;
  high: Float64Array;
  /** How many values were less than `low`, equal to it, and equal to `high` where that is another. */
  below: Float64Array;
  atLow: Float64Array;
  atHigh: Float64Array;
  /** The list of row r: `values` from `from[r]` to `from[r + 1]`, in no order. */
  from: Float64Array;
  values: Float64Array;
}
