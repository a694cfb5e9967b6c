import { groupDigits } from "./groupDigits.ts";

/**
 * A number of days for a column of such numbers: as `formatDays` without its unit, but with the decimal kept
 * ("3.0" under "3.4"), so that figures can be compared. Nought is "0".
 */
export function columnDays(value: number, signed = false): string {
  if (!Number.isFinite(value)) return "not known";
  const size = Math.abs(value);
  if (size < 0.05) return "0";
  const digits = groupDigits(size, size < 9.95 ? 1 : 0);
  return `${value < 0 ? "−" : signed ? "+" : ""}${digits}`;
}
