import { groupDigits } from "./groupDigits.ts";

/**
 * A number of days: two significant digits below ten, whole days above. `unit` in the singular.
 *
 * @example
 * formatDays(9.14, "working day"); // "9.1 working days"
 * formatDays(1, "day", true); // "+1 day"
 */
export function formatDays(value: number, unit = "working day", signed = false): string {
  if (!Number.isFinite(value)) return "not known";
  const rounded =
    Math.abs(value) < 9.95 ? Math.round(Math.abs(value) * 10) / 10 : Math.round(Math.abs(value));
  const digits = groupDigits(rounded, Number.isInteger(rounded) ? 0 : 1);
  const sign = rounded === 0 ? "" : value < 0 ? "−" : signed ? "+" : "";
  const name = unit === "" ? "" : rounded === 1 ? ` ${unit}` : ` ${unit}s`;
  return `${sign}${digits}${name}`;
}
