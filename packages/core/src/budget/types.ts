import type { Someone } from "../brief/types.ts";
import type { Forecast, RunStamp } from "../forecast/types.ts";
import type { CalendarDays, CalendarWeeks, Chance, Money, Ratio, YearlyRate } from "../units.ts";
import type { ComponentKind } from "./components/kinds.ts";
import type { ContingencyLeft } from "./left/types.ts";

/**
 * The money of a plan, as plain JSON. A percentile of a component is the percentile of that component alone: percentiles
 * do not add up. What adds up is `mean`, `asWritten` and `split`: the committed sum, divided into what each component
 * comes to on average in the futures whose total is about that sum.
 */
export interface Spread {
  mean: Money;
  p50: Money;
  p80: Money;
}
/** A part of the cost; the parts sum to the whole in every future. */
export interface Component extends Spread {
  kind: ComponentKind;
  asWritten: Money;
  /** Its part of the committed sum, and the standard error of that. */
  split: Money;
  error: Money;
}
/** Money of one phase. */
export interface PhaseMoney extends Spread {
  /** Absent for money of no phase: responses, overheads, risks that name no task. */
  phase?: string;
  split: Money;
  error: Money;
  /** Means, which add up to the phase's. */
  components: { kind: ComponentKind; mean: Money }[];
}
/** Money of one calendar month, and up to its end. */
export interface MonthMoney {
  /** `2027-03`. */
  month: string;
  /** Spent in it; `split` is its part of the committed sum. */
  spent: Spread & { split: Money };
  /** Spent by its end; `committed` at the level committed to. */
  byEnd: { p50: Money; p80: Money; committed: Money };
  components: (Spread & { kind: ComponentKind })[];
  /** Money released by its last day, and the chance that it covers what is spent by then. */
  released?: Money;
  chanceCovered?: Chance;
  /** What is missing at the level committed to; 0 where nothing is. */
  short?: Money;
}

/** What would make the money released cover every month at the level committed to. */
export interface FundsCure {
  /** Every month is covered. */
  covered: boolean;
  firstShort?: { month: string; chanceCovered: Chance; short: Money };
  /** So much more, by that day and kept from then on, covers every month. */
  more?: { amount: Money; by: string };
  /** Releases that come too late for the level, and the last day that would do. */
  earlier: { from: string; amount: Money; neededBy: string; days: CalendarDays }[];
  /** What the releases together fall short of the committed sum; 0: bringing them forward is enough. */
  lacking: Money;
}

/** Percentiles over the futures for which the figure exists; `chance` is how many those are. */
export interface WorthSpread<Value extends number = number> {
  chance: Chance;
  p10?: Value;
  p50?: Value;
  p90?: Value;
}
/** Benefits against cost over time, discounted, in the plan's currency. */
export interface Worth {
  appraisal: NonNullable<Forecast["appraisal"]>;
  /** Discounted benefits over the total cost (not discounted); only futures that cost something. */
  benefitCost: WorthSpread<Ratio> & { chanceAboveOne: Chance };
  /** The yearly rate at which the net value would be nought, cost counted at the start as the net value does. */
  returnRate: WorthSpread<YearlyRate>;
  /** Doing nothing costs nothing more and brings nothing: its net value from here is 0. */
  doNothing: {
    /** What is spent already, and gone either way. */
    spent: Money;
    /** Mean net value of going on: the net value with what is spent added back. */
    goingOn: Money;
    /** Chance that going on is worth more than stopping. */
    chanceBetter: Chance;
    /** What the plan says becomes of it if nothing is done. */
    text?: string;
  };
}

/** What a week of delay costs, part by part. Benefits and lateness may price the same loss: they are not added up. */
export interface DelayCost {
  /** What the plan prices lateness with, when it does: means. */
  lateness?: {
    after: string;
    perWeek: Money;
    once: Money;
    chanceLate: Chance;
    /** Mean weeks late over all futures. */
    weeksLate: CalendarWeeks;
    /** Mean cost of lateness over all futures: its expected cost. */
    expected: Money;
  };
  /** Overheads that run to the plan's finish: mean per calendar week of delay. */
  overheadsPerWeek: Money;
  /** Net value lost when every benefit begins a week later, mean. */
  benefitsPerWeek?: Money;
}

/** Where the money goes, by kind, phase and month, and how likely funds cover it. Currency of the plan. */
export interface Budget {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: Chance;
  statusDate?: string;
  total: Spread & { sd: Money; asWritten: Money; committed: Money; low: Money; high: Money };
  components: Component[];
  /** Percentiles of the components added up, beside those of the total: what adding them up would be wrong by. */
  addedUp: { p50: Money; p80: Money };
  phases: PhaseMoney[];
  months: MonthMoney[];
  funds?: FundsCure;
  /** For identified uncertainty: the committed sum less the plan as written. Its holder and rule are the plan's. */
  contingency: { money: Money; holder?: Someone; releaseRule?: string };
  /** For what nobody foresaw: the sponsor's, in none of the figures. */
  reserve?: Money;
  asked?: { budget: Money; chance: Chance };
  worth?: Worth;
  delay: DelayCost;
  /** Contingency left against exposure left; only when the plan has a budget, a date or a signed version. */
  left?: ContingencyLeft;
}
