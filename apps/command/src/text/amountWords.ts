import { groupDigits } from "@leeway/charts";

/** A value of an estimate: as it was typed where it is short, else three significant digits below 1,000. */
export function amount(value: number): string {
  if (!Number.isFinite(value)) return "not known";
  const size = Math.abs(value);
  if (size >= 1000) return groupDigits(Math.round(value));
  const short = Number(value.toPrecision(size >= 100 ? 4 : 3));
  const text = String(short);
  return text.includes("e") ? groupDigits(value, 3) : text.replace("-", "−");
}

/** With its unit: `5.4 working days`, `EUR 1,200`. */
export function amountIn(value: number, unitWords: string): string {
  if (/^[A-Z]{3}$/.test(unitWords)) return `${unitWords} ${amount(value)}`;
  return `${amount(value)} ${value === 1 ? unitWords.replace(/s$/, "") : unitWords}`;
}
