export {
  type ContingencyLeftOptions,
  type ContingencyLeftResult,
  contingencyLeft,
} from "./left/contingencyLeft.ts";
export { coverIsBelow } from "./left/coverOf.ts";
export type {
  AgreedFrom,
  ContingencyLeft,
  Cover,
  CoverOfDays,
  ExposureAhead,
  SettledEntry,
} from "./left/types.ts";
