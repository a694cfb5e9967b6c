export * from "./csv/index.ts";
export { importEstimates } from "./merge/importEstimates.ts";
export { documentOf, importTable } from "./merge/importTable.ts";
export type { Import, ImportChange, ImportOptions } from "./merge/types.ts";
export type { TableOfPlan } from "./tables/entries.ts";
export { estimateTable } from "./tables/estimates.ts";
export { type Table, tableOf } from "./tables/tableOf.ts";
