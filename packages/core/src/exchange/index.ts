export { milestoneEvents, stampText } from "./calendar/milestoneEvents.ts";
export {
  type CalendarEvent,
  type CalendarWriting,
  type Recurrence,
  writeCalendar,
} from "./calendar/writeCalendar.ts";
export * from "./csv/index.ts";
export { importEstimates } from "./merge/importEstimates.ts";
export { documentOf, importTable } from "./merge/importTable.ts";
export type { Import, ImportChange, ImportOptions } from "./merge/types.ts";
export { jsonSchemaOf } from "./schemas/answerSchema.ts";
export type * from "./schemas/answers.ts";
export { SCHEMA_NAMES, type SchemaName } from "./schemas/schemaNames.ts";
export type { TableOfPlan } from "./tables/entries.ts";
export { estimateTable } from "./tables/estimates.ts";
export { eventTable } from "./tables/eventTable.ts";
export { forecastTable } from "./tables/forecastTable.ts";
export { type Table, tableOf } from "./tables/tableOf.ts";
