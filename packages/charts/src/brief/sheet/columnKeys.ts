import type { SectionKey } from "./types.ts";

/** What stands in the two columns of a page, in this order; the rest runs over the full width. */
export const columnKeys: readonly SectionKey[] = [
  "recommendation",
  "worth",
  "drivers",
  "responses",
  "scope",
  "assumptions",
  "objections",
  "back",
];
