// What kernel.mjs measures, gathered for its bundle.
export { workCalendar } from "../../packages/core/src/calendar/workCalendar.ts";
export { loadKernel } from "../../packages/core/src/kernel/kernel.ts";
export { plainKernel } from "../../packages/core/src/kernel/plainKernel.ts";
export { selectRanks } from "../../packages/core/src/kernel/twins/selectRanks.ts";
export { outcomeTable, quantileTable } from "../../packages/core/src/sampling/index.ts";
