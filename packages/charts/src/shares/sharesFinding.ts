import type { Measure } from "../measure/types.ts";
import { quoteName } from "../words/plainName.ts";

/** One part of a whole, by name; `single`: one cause, not several gathered. */
export interface Part {
  name: string;
  value: number;
  single: boolean;
}

/**
 * What the parts of a contingency say, in one sentence: which is largest, that they are alike, that there is
 * only one, that they cancel out, or that there is no contingency.
 */
export function sharesFinding(parts: readonly Part[], whole: number, measure: Measure): string {
  const { say, least, what } = measure;
  const real = parts.filter((part) => Math.abs(part.value) >= least);
  const [first, ...others] = [...real].sort((a, b) => b.value - a.value);
  const last = others[others.length - 1] ?? first;
  if (Math.abs(whole) < least) {
    if (first === undefined || last === undefined || first === last)
      return `No contingency: the committed ${what} is that of the plan as written`;
    return `No contingency: what ${quoteName(first.name)} adds, ${say(first.value)}, the rest saves`;
  }
  if (whole < 0) {
    const size = `${say(whole)} ${what === "date" ? "before" : "below"} the plan as written`;
    if (last === undefined) return `The committed ${what} is ${size}`;
    return `The committed ${what} is ${size}: ${quoteName(last.name)} saves most, ${say(last.value)}`;
  }
  const contingency = `${say(whole)} of contingency`;
  if (first === undefined) return `${capital(contingency)}, in parts too small to name`;
  if (others.length === 0) return `All ${contingency} come from ${quoteName(first.name)}`;
  const singles = real.filter((part) => part.single);
  const largest = singles.reduce(
    (most, part) => (part.value > most.value ? part : most),
    singles[0] ?? first,
  );
  const least1 = real.reduce((small, part) => (part.value < small.value ? part : small), first);
  if (first.value - least1.value < Math.max(least, first.value * 0.005))
    return `No cause stands out: each of ${real.length} makes ${say(whole / real.length)} of ${say(whole)}`;
  return `${quoteName(largest.name)} makes ${share(largest.value, whole, measure)} of contingency, the largest single share`;
}

/** "9.1 of 41 working days", "EUR 14,000 of EUR 57,000". */
function share(value: number, whole: number, { say, unit }: Measure): string {
  const [part, all] = [say(value), say(whole)];
  return unit === "working days" ? `${part.replace(/ working days?$/, "")} of ${all}` : `${part} of ${all}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
