import type { WorkCalendar } from "../calendar/workCalendar.ts";
import type { Estimate, LinkKind, Plan } from "../plan/types.ts";

/**
 * The compiled plan: everything the hot loop needs, by index, with nothing left to look up by name.
 * Tasks are in id order (code points); `order` is the order in which they are placed.
 */
export interface Model {
  plan: Plan;
  /** Day number (dates.ts) of the plan's start: day 0 of every moment. */
  startDay: number;
  planCalendar: WorkCalendar;
  tasks: ModelTask[];
  order: Int32Array;
  /** Every estimate that is drawn, in a fixed order that does not depend on the order of the file. */
  slots: Slot[];
  register: ModelEntry[];
  /** Register groups: one draw each. */
  groups: { name: string }[];
  /** Adopted responses; `dueDay`: when the money falls due, days since start. */
  responses: { id: string; name: string; cost: Amount; dueDay: number }[];
  overheads: { id: string; name: string; perDay: Amount; from: number; to: number }[];
  people: ModelPerson[];
  intervals: { id: string; name: string; from: number; to: number; atMost?: number }[];
  /** Pairs of tasks whose realised durations may move together: their correlation is reported. */
  pairs: [number, number][];
  correlated: { slots: Int32Array; factor: Float64Array } | undefined;
  lateness: { afterDay: number; perWeek: Amount; once: Amount } | undefined;
  benefits: ModelBenefit[];
  /** Index of the task whose finish is promised; -1: the plan's. */
  finishOf: number;
  confidence: number;
  /** Days since start of the asked date and of the asked sum, where the plan has them. */
  finishByDay: number | undefined;
  budget: number | undefined;
  statusDay: number | undefined;
  /** Whether any task is placed against its people's capacity. */
  limitedPeople: boolean;
  warnings: string[];
}

/** An estimate inside the model: a constant, or the slot whose draw it is; `scale` turns either into model units. */
export interface Amount {
  slot: number;
  value: number;
}

/** One drawn estimate. `key` names it for people and tests: `permit-decided:duration`. */
export interface Slot {
  key: string;
  /** Address of its draws: item (its `was` when renamed) and purpose. */
  item: string;
  purpose: string;
  estimate: Estimate;
  /** Draws and as-written values are cut at zero. */
  cut: boolean;
  /** As-written value, cut where cut applies, in the written unit. */
  asWritten: number;
}

export interface ModelLink {
  from: number;
  kind: LinkKind;
  lag: Amount;
  /** Model units per written unit of the lag: working days of its calendar. */
  lagScale: number;
  lagCalendar: WorkCalendar;
  /** No lag at all, ever. */
  direct: boolean;
}

export interface ModelTask {
  id: string;
  name: string;
  phase: string | undefined;
  kind: "task" | "milestone" | "milestone-start";
  /** Whether it can be a point (no duration) in some iteration. */
  mayBePoint: boolean;
  /** Calendar on which the task works: its own, its people's, full absences out. */
  calendar: WorkCalendar;
  /** Its own calendar, people left out: lags and waits count on it. */
  ownCalendar: WorkCalendar;
  unbroken: WorkCalendar | undefined;
  /** Sampled duration = amount * durationScale, in working days (units of weeks and effort per head folded in). */
  duration: Amount;
  durationScale: number;
  links: ModelLink[];
  /** Earliest start as a day since start; 0 without `notBefore`. */
  notBefore: number;
  holdToPlan: boolean;
  /** Day number floor of the reading of a point: max(start, notBefore, day after statusDate). */
  readingFloor: number;
  /** The same without `notBefore`, for when it is not needed. */
  statusFloor: number;
  cost: Amount;
  costPerDay: Amount;
  /** Sum over its people of rate * share: money per working day. */
  peoplePerDay: number;
  /** Chance that it is needed (0 while its `onlyIf` is not adopted or its scope is left out). */
  chance: number;
  chanceAddress: string;
  /** People whose capacity it holds, when limited people are respected. */
  holds: { person: number; share: number; along: boolean }[];
  progress: ModelProgress | undefined;
  targetDay: number | undefined;
  /** Impacts on this task, in register order: entry, part slots and their scales in working days. */
  impacts: TaskImpact[];
}

export interface ModelProgress {
  finished: boolean;
  start: number;
  /** Only when finished. */
  finish: number;
  /** Work its calendar held from its start to the end of the status date. */
  held: number;
  remaining: Amount | undefined;
  remainingScale: number;
  spent: number | undefined;
}

export interface TaskImpact {
  entry: number;
  impact: number;
  /** Working days per written unit on this task's calendar, times what the responses leave. */
  delayScale: number;
  waitScale: number;
}

export interface ModelImpact {
  delay: Amount | undefined;
  factor: Amount | undefined;
  wait: Amount | undefined;
  cost: Amount | undefined;
  /** Task indices it touches, ascending. */
  tasks: number[];
}

export interface ModelEntry {
  id: string;
  name: string;
  kind: "risk" | "assumption";
  item: string;
  /** Occurs when `lo <= u < hi` of its own draw (group -1) or of its group's draw; hi > 1: always. */
  group: number;
  lo: number;
  hi: number;
  /** A fact: 1 occurred; 0 cannot occur; undefined: drawn. */
  fact: 0 | 1 | undefined;
  /** Product of the adopted responses' scales. */
  scale: number;
  impacts: ModelImpact[];
}

export interface ModelPerson {
  id: string;
  name: string;
  capacity: number;
  /** Partial absences as [from, to) in days, with the share of capacity gone (capacity units). */
  partial: { from: number; to: number; gone: number }[];
}

export interface ModelBenefit {
  id: string;
  name: string;
  amount: Amount;
  /** Money a month per unit of `amount`; for `once`, money. 0 without `worth`: reported, never in the net value. */
  worth: number;
  once: boolean;
  starts: number;
  /** Calendar days from that finish until it begins. */
  lag: number;
  ramp: number;
  lasts: number;
  untilDay: number;
}

/** An amount that is the same in every iteration. */
export function constant(value: number): Amount {
  return { slot: -1, value };
}
