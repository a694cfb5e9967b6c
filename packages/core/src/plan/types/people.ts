import type { DateRange, Id, IsoDate, Noted, Weekday } from "./values.ts";

/** Days off of a calendar. */
export interface Holiday extends DateRange {
  name?: string;
}

/** A calendar with `like` already resolved. */
export interface CalendarDefinition {
  name: string;
  workdays: Weekday[];
  holidays: Holiday[];
}

/** Days on which a person is away, wholly or in part. */
export interface Absence extends DateRange {
  /** The part of the capacity that is away, 0 to 1. */
  share: number;
  why?: string;
}

/** More of a person that could be had; counted only in a scenario that takes it in. */
export interface ExtraCapacity {
  /** How many more of them there would be; above 0. */
  capacity: number;
  /** Money, once. */
  cost: number;
  /** First day on which it would be there; absent: the plan's start. */
  from?: IsoDate;
}

/** Somebody who works, with capacity, calendar and rate. */
export interface Person extends Noted {
  id: Id;
  name: string;
  role?: string;
  rate: number;
  share: number;
  capacity: number;
  calendar: string;
  away: Absence[];
  couldAdd?: ExtraCapacity;
}

/** How often somebody is told. */
export type InformEvery = "week" | "two-weeks" | "month" | "quarter" | "milestone";
/** How a stakeholder is kept informed; changes no number. */
export interface Inform {
  how?: string;
  every?: InformEvery;
  owner?: Id;
  /** What they are told. */
  what?: string;
  /** The first day they are told, from which the rhythm runs; absent: the plan's start. */
  from?: IsoDate;
}

/** Somebody who decides, is asked or is told. */
export interface Stakeholder extends Noted {
  id: Id;
  name: string;
  role?: string;
  interest?: string;
  stance?: "supports" | "neutral" | "resists";
  inform?: Inform;
  approvesUpTo?: number;
  /** May sign in their place. */
  delegate?: Id;
}
