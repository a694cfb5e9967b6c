import type { Settings } from "../settings.ts";
import type { Effect } from "../types.ts";

/** Working days and money of one set of causes. */
export type Pair = readonly [workingDays: number, money: number];

/** The values that shares lie between, and how a measured value becomes that of a set of causes. */
export interface Values {
  /** v(none): the plan as written. */
  written: Pair;
  /** v(all): the commitment. */
  committed: Pair;
  /** Adds what limited people add to the plan as written where the settings have people without limits. */
  withOffset: (settings: Settings, value: Pair) => Pair;
}

export function minus(a: Pair, b: Pair): [number, number] {
  return [a[0] - b[0], a[1] - b[1]];
}

export function effect([workingDays = 0, money = 0]: readonly number[]): Effect {
  return { workingDays, money };
}
