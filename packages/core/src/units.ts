/**
 * Units of the numbers in answers. A number's type names its unit, and the published schemas say it in words: see
 * `packages/core/schemas`. All of these are plain numbers; nothing is converted.
 */

/** Working days of the plan's calendar. */
export type WorkingDays = number;
/** Working days of the task's calendar. */
export type TaskDays = number;
/** Working days of its own calendar. */
export type OwnDays = number;
/** Calendar days. */
export type CalendarDays = number;
/** Calendar weeks. */
export type CalendarWeeks = number;
/** Years. */
export type Years = number;
/** Days since the plan's start, parts of a day included; negative: before it. */
export type DaysSinceStart = number;
/** Person-days. */
export type PersonDays = number;
/** Money in the plan's currency. */
export type Money = number;
/** Money in the plan's currency, or working days of its calendar where time is meant. */
export type MoneyOrDays = number;
/**
 * A share of the futures, 0 to 1.
 * @minimum 0
 * @maximum 1
 */
export type Chance = number;
/** Difference of two shares of the futures, -1 to 1. */
export type ChanceChange = number;
/**
 * A part of a whole, 0 to 1.
 * @minimum 0
 * @maximum 1
 */
export type Portion = number;
/** Per cent. */
export type Percent = number;
/** A ratio, without a unit. */
export type Ratio = number;
/** A yearly rate: 0.03 is 3 % a year. */
export type YearlyRate = number;
/** A correlation, -1 to 1. */
export type CorrelationCoefficient = number;
/**
 * A whole number.
 * @asType integer
 * @minimum 0
 */
export type Count = number;
/** In the unit that stands beside it. */
export type InUnitBeside = number;
/** In the unit of the estimate: money where it is of a cost, else days or weeks as its `unit` says. */
export type InUnitOfEstimate = number;
