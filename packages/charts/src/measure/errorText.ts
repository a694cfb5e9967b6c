import type { Measure } from "./types.ts";

/** A standard error for a table: "exact" where there is none, "under 0.1" where it shows no digit. */
export function errorText(error: number, { column, least }: Measure): string {
  if (!(error > 0)) return "exact";
  const text = column(error).replace(/^\+/, "");
  return text === "0" ? `under ${column(2 * least).replace(/^\+/, "")}` : text;
}
