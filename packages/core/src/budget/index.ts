export { discountFactor, escalated, midYearFactor, nominalRate } from "./appraise/discount.ts";
export {
  chanceUpTo,
  type DecisionNode,
  expectedValue,
  type Rolled,
  rollBack,
  type Way,
} from "./appraise/expectedValue.ts";
export { type Flow, netValue, payback, yearly } from "./appraise/netValue.ts";
export { returnRate } from "./appraise/returnRate.ts";
export { type BudgetOptions, type BudgetResult, budget } from "./budget.ts";
export type { ComponentKind } from "./components/kinds.ts";
export { lastDayOf } from "./fundsCure.ts";
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
export type {
  Budget,
  Component,
  DelayCost,
  FundsCure,
  MonthMoney,
  PhaseMoney,
  Spread,
  Worth,
  WorthSpread,
} from "./types.ts";
