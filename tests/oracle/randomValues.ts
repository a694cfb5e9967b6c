import { dateOfDay, dayNumber } from "./dates.ts";
import type { EstimateDocument } from "./document.ts";

/** What a random estimate may be. */
export interface DiceRules {
  outcomesOnly?: boolean;
  uncertain?: number;
  fixedOnly?: boolean;
}

/** Random choices for documents, all from one stream of uniforms in [0, 1). */
export class Dice {
  readonly #rng: () => number;
  readonly #rules: DiceRules;
  #left: number;

  constructor(rng: () => number, rules: DiceRules) {
    this.#rng = rng;
    this.#rules = rules;
    this.#left = rules.outcomesOnly ? (rules.uncertain ?? 7) : Number.POSITIVE_INFINITY;
  }

  chance(p: number): boolean {
    return this.#rng() < p;
  }

  /** A whole number from `least` to `most`, both possible. */
  int(least: number, most: number): number {
    return least + Math.floor(this.#rng() * (most - least + 1));
  }

  pick<T>(items: readonly T[]): T {
    const item = items[this.int(0, items.length - 1)];
    if (item === undefined) throw new Error("nothing to pick from");
    return item;
  }

  shuffle<T>(items: readonly T[]): T[] {
    return items
      .map((item) => ({ item, at: this.#rng() }))
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item);
  }

  times<T>(least: number, most: number, make: (k: number) => T): T[] {
    return Array.from({ length: this.int(least, most) }, (_, k) => make(k));
  }

  /** Where a list has one item, now and then the item alone. */
  shorten<T>(items: T[]): T | T[] {
    const [only] = items;
    return items.length === 1 && only !== undefined && this.chance(0.5) ? only : items;
  }

  /** A date from `least` to `most` days after `start`. */
  date(start: string, least: number, most: number): string {
    return dateOfDay(start, this.int(least, most));
  }

  days(start: string, date: string): number {
    return dayNumber(start, date);
  }

  /** Takes one uncertain thing off the budget of plans that are to be enumerated; false when it is spent. */
  spend(): boolean {
    if (this.#left < 1) return false;
    this.#left--;
    return true;
  }

  /** A value in [least, most], mostly whole or in quarters, sometimes in tenths (which binary cannot hold). */
  #value(least: number, most: number): number {
    const parts = this.pick([1, 1, 2, 4, 10]);
    return this.int(least * parts, most * parts) / parts;
  }

  /** A fixed value or outcomes in [least, most]: nothing whose range could reach beyond. */
  whole(least: number, most: number): EstimateDocument {
    const value = this.#value(least, most);
    const other = this.#value(least, most);
    if (this.#rules.fixedOnly || other === value || !this.chance(0.4) || !this.spend()) return value;
    const chance = this.pick([0.25, 0.5, 0.6]);
    return {
      outcomes: [
        { value, chance },
        { value: other, chance: 1 - chance },
      ],
    };
  }

  /** Any estimate with values about [least, most]; `weeks`: of time, and may be written in weeks. */
  estimate(least: number, most: number, weeks = false): EstimateDocument {
    if (weeks && this.chance(0.12)) {
      const value = this.whole(Math.ceil(least / 3), Math.floor(most / 3));
      if (typeof value === "object" && "outcomes" in value) return { ...value, unit: "weeks" };
      if (typeof value === "number") return { low: value, likely: value, high: value, unit: "weeks" };
    }
    if (this.#rules.fixedOnly || this.#rules.outcomesOnly || this.chance(0.5)) return this.whole(least, most);
    const sorted = [this.#value(least, most), this.#value(least, most), this.#value(least, most)];
    const [low = 0, likely = 0, high = 0] = sorted.sort((a, b) => a - b);
    if (low === high) return low;
    if (this.chance(0.4)) return [low, likely, high];
    const bounds = this.pick(["p10-p90", "p5-p95"] as const);
    switch (this.pick(["pert", "triangular", "uniform", "normal", "lognormal", "plain"] as const)) {
      case "pert":
        return { low, likely, high, shape: "pert", bounds: this.pick(["extremes", bounds] as const) };
      case "triangular":
        return { low, likely, high, shape: "triangular", bounds: this.pick(["extremes", bounds] as const) };
      case "uniform":
        return { low, high, shape: "uniform", bounds: this.pick(["extremes", bounds] as const) };
      case "normal":
        return { low, high, shape: "normal", bounds };
      case "lognormal":
        return low > 0 ? { low, high, shape: "lognormal", bounds } : { low, high, shape: "normal", bounds };
      default:
        return { low, likely, high };
    }
  }
}
