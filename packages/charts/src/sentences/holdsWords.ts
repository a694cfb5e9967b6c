/** What a sentence says of how surely a commitment holds. */
export interface Held {
  /** How often each holds, and both together, in words. */
  each: string;
  both: string;
  /** No future moves the date, the sum. */
  date: boolean;
  sum: boolean;
  /** Whether money is spoken of at all. */
  money: boolean;
}

/**
 * How surely date and sum hold: "each holds 8 times in 10, both together 7 in 10". What no future moves is certain, as far
 * as the plan knows, and no chance is said of it.
 */
export function holdsWords({ each, both, date, sum, money }: Held): string {
  if (!money) return date ? `certain, for ${known("it")}` : `it holds ${each}`;
  if (date && sum) return `both are certain, for ${known("them")}`;
  if (date) return `the date is certain, for ${known("it")}; the sum holds ${each}`;
  if (sum) return `the sum is certain, for ${known("it")}; the date holds ${each}`;
  return `each holds ${each}, both together ${both}`;
}

function known(what: string): string {
  return `nothing in the plan would move ${what}`;
}
