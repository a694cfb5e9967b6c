export { driftOf } from "./history/drift.ts";
export { historyFacts, type Occasion } from "./history/entryOf.ts";
export { hashOfLine, lineOf, linked } from "./history/linked.ts";
export { readHistory } from "./history/readHistory.ts";
export type * from "./history/types.ts";
export { type ChangedLines, changedLines } from "./record/changedLines.ts";
export { type FactsRead, factsOfCsv, factsOfJson } from "./record/factsOfTable.ts";
export { recordProgress } from "./record/recordProgress.ts";
export type {
  DueTask,
  FactKind,
  ProgressFact,
  ProgressReport,
  Recorded,
  StillMissing,
} from "./record/types.ts";
export { evaluateTriggers } from "./triggers/evaluateTriggers.ts";
export type {
  CoverNow,
  Measured,
  TriggerCondition,
  TriggerNow,
  TriggerState,
  TriggersNow,
} from "./triggers/types.ts";
