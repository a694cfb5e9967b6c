export { absorb } from "./brackets";
export { countDays, fillCalendar } from "./calendar";
export { drawMany } from "./drawMany";
export { drawLatin, fillLatin, fillPlain } from "./draws";
export { usePage } from "./layout";
export { lookUp, lookUpOutcomes } from "./lookUp";
export { anySet, markFinish, markSimple, occur } from "./mark";
export { markLink } from "./markLink";
export { bookByMonth, spreadByMonth } from "./months";
export { freeFrom, markSharers } from "./people";
export { pertBody, pertTable, pertTables, pertTail } from "./pert";
export {
  raiseAfterEveryDay,
  raiseAfterOnCalendar,
  raiseTo,
  scaleTo,
  settleEveryDay,
  settleOnCalendar,
} from "./place";
export { largestOf, raiseBy, scaleByWork, settleAny } from "./placeAny";
export { runProgram } from "./program";
export { startsOf } from "./programPlace";
export { addScaled, toChances, toScores } from "./scores";
export { seedTen } from "./seeds";
export { rankRow, selectRanks } from "./select";
export {
  addCost,
  addCostWhere,
  addDaily,
  addDailyCost,
  addImpact,
  addTaskCost,
  multiplyImpact,
  sumMasked,
  sumProducts,
} from "./sums";
export { addTold, seedStreams } from "./told";
export { appraise } from "./worth";
