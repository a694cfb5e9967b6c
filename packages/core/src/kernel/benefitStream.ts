/** A benefit over a block of iterations, in rows of an arena. */
export interface BenefitStream {
  /** Pays once, at its beginning; else every month after it. */
  readonly once: boolean;
  /** What its amounts are multiplied by. */
  readonly factor: number;
  /** The last moment at which a payment counts, tolerance included. */
  readonly end: number;
  /** When it begins. */
  readonly begins: Float64Array;
  /** Amounts a month (or in all), before the call; worths discounted to day 0, after it. */
  readonly worth: Float64Array;
  /** How many payments count. */
  readonly last: Float64Array;
  /** Entry k: the first k payments of 1 a month, ramped and discounted from the benefit's beginning. */
  readonly sums: Float64Array;
}
