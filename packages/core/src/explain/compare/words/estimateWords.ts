import { shapeRules } from "../../../plan/shapes.ts";
import type { Bounds, Estimate, RangeEstimate } from "../../../plan/types.ts";
import { listWords, moneyWords, numberWords, percentWords } from "./numbers.ts";

/** How the values of an estimate are spoken: "45 working days", "EUR 4,000 a day", "1.25 times". */
export interface Unit {
  /** One value with its unit. */
  value(value: number, estimate: Estimate): string;
  /** The value alone where the unit follows later in the sentence. */
  bare(value: number): string;
}

/** Working days or weeks; `person`: of effort. */
export function timeUnit(person = false): Unit {
  return {
    value: (value, { unit }) => {
      const one = unit === "weeks" ? "week" : person ? "day" : "working day";
      return `${numberWords(value)} ${person ? "person-" : ""}${one}${Math.abs(value) === 1 ? "" : "s"}`;
    },
    bare: numberWords,
  };
}

/** Money, once or `each` day. */
export function moneyUnit(currency: string, each = ""): Unit {
  return {
    value: (value) => `${moneyWords(value, currency)}${each === "" ? "" : ` ${each}`}`,
    bare: (value) => moneyWords(value, currency),
  };
}

/** Factors. */
export const timesUnit: Unit = { value: (value) => `${numberWords(value)} times`, bare: numberWords };

const outer: Record<Bounds, [string, string]> = {
  extremes: ["lowest", "highest"],
  "p10-p90": ["P10", "P90"],
  "p5-p95": ["P5", "P95"],
};

/** The stated figures of a range by name, in the order low, likely, high. */
function figures(range: RangeEstimate): [string, number][] {
  const [low, high] = outer[range.bounds];
  const middle: [string, number][] = range.likely === undefined ? [] : [["likely", range.likely]];
  return [[low, range.low], ...middle, [high, range.high]];
}

/** A whole estimate: "P10 20, likely 30, P90 45 working days"; "3 working days (60 %) or 5 working days (40 %)". */
export function estimateWords(estimate: Estimate, unit: Unit): string {
  switch (estimate.kind) {
    case "fixed":
      return unit.value(estimate.value, estimate);
    case "outcomes":
      return estimate.outcomes
        .map(({ value, chance }) => `${unit.value(value, estimate)} (${percentWords(chance)})`)
        .join(" or ");
    case "range": {
      const all = figures(estimate);
      const words = all.map(([name, value], k) =>
        k === all.length - 1 ? `${name} ${unit.value(value, estimate)}` : `${name} ${unit.bare(value)}`,
      );
      const shape = estimate.shape === "pert" ? "" : ` (${shapeRules[estimate.shape].name})`;
      return `${words.join(", ")}${shape}`;
    }
  }
}

/** Whether two estimates draw the same values. */
export function sameEstimate(a: Estimate | undefined, b: Estimate | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  if (a.unit !== b.unit) return false;
  if (a.kind === "fixed") return b.kind === "fixed" && a.value === b.value;
  if (a.kind === "outcomes") {
    return (
      b.kind === "outcomes" &&
      a.outcomes.length === b.outcomes.length &&
      a.outcomes.every(
        ({ value, chance }, k) => value === b.outcomes[k]?.value && chance === b.outcomes[k]?.chance,
      )
    );
  }
  return (
    b.kind === "range" &&
    a.low === b.low &&
    a.likely === b.likely &&
    a.high === b.high &&
    a.shape === b.shape &&
    a.bounds === b.bounds
  );
}

/**
 * What changed between two estimates: "P90 from 45 to 60 working days". Only the figures that changed, where the
 * two are of one kind; otherwise the whole of both. Empty where nothing did.
 */
export function estimateChange(older: Estimate | undefined, newer: Estimate | undefined, unit: Unit): string {
  if (sameEstimate(older, newer)) return "";
  if (older === undefined) return newer === undefined ? "" : `now ${estimateWords(newer, unit)}`;
  if (newer === undefined) return `no longer ${estimateWords(older, unit)}`;
  const whole = `from ${estimateWords(older, unit)} to ${estimateWords(newer, unit)}`;
  if (older.unit !== newer.unit) return whole;
  if (older.kind === "fixed" && newer.kind === "fixed") {
    return `from ${unit.bare(older.value)} to ${unit.value(newer.value, newer)}`;
  }
  if (older.kind !== "range" || newer.kind !== "range" || older.bounds !== newer.bounds) return whole;
  const before = figures(older);
  const after = figures(newer);
  if (before.length !== after.length) return whole;
  const changed = after.flatMap(([name, value], k) => {
    const old = before[k]?.[1] ?? value;
    return old === value ? [] : [{ name, old, value }];
  });
  const parts = changed.map(({ name, old, value }, k) => {
    const to = k === changed.length - 1 ? unit.value(value, newer) : unit.bare(value);
    return `${name} from ${unit.bare(old)} to ${to}`;
  });
  if (older.shape !== newer.shape)
    parts.push(`shape from ${shapeRules[older.shape].name} to ${shapeRules[newer.shape].name}`);
  return listWords(parts);
}
