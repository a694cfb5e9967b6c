import type { InterviewKey } from "../interview/types.ts";

/** A column of the sheet for one person's estimates. */
export type SheetKey = "task" | "name" | "needs" | "aside" | "of" | "unit" | InterviewKey;

/** The columns of a sheet, in the order in which the interview asks, so that a row is filled from left to right. */
export const SHEET_COLUMNS: readonly { key: SheetKey; heading: string }[] = [
  { key: "task", heading: "task" },
  { key: "name", heading: "name" },
  { key: "needs", heading: "what it needs first" },
  { key: "aside", heading: "not part of the range" },
  { key: "of", heading: "estimate of" },
  { key: "unit", heading: "unit" },
  { key: "basis", heading: "why would you know" },
  { key: "high", heading: "exceeded one time in ten" },
  { key: "low", heading: "beaten one time in ten" },
  { key: "likely", heading: "likely" },
  { key: "dissent", heading: "what you do not agree with" },
];
