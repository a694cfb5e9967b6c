import type { RunStamp } from "../../forecast/types.ts";
import type {
  Chance,
  Count,
  DaysSinceStart,
  InUnitBeside,
  Money,
  TaskDays,
  WorkingDays,
} from "../../units.ts";
import type { Named, PathWay, StartBound } from "../paths/types.ts";
import type { Standing } from "../types.ts";

/** One estimate as one future drew it. */
export interface FutureDraw {
  /** The item it belongs to: a task, a register entry, an overhead, a response, a benefit, or `lateness`. */
  of: Named;
  /** Which estimate of it: `duration`, `effort`, `remaining`, `cost`, `costPerDay`, `lag`, `delay`, `factor`, ... */
  what: string;
  /** Of a lag, the predecessor; of an impact, the tasks it touches. */
  on?: Named[];
  /** In the unit it is written in. */
  value: InUnitBeside;
  unit: "days" | "weeks" | "money" | "times" | "quantity";
  asWritten: InUnitBeside;
  /** Where the value stands in the estimate's own distribution, 0 to 1: the chance of at most that much. */
  level: Chance;
  /** Whether it counted: what a risk that did not occur or a task that was not needed would have drawn does not. */
  counts: boolean;
}

/** A risk or assumption in one future. */
export interface FutureEvent {
  id: string;
  name: string;
  kind: "risk" | "assumption";
  /** The chance it had. */
  chance: Chance;
  occurred: boolean;
  /** Working days it added to tasks: to their durations, and held them back; sums over the tasks it touches. */
  days: TaskDays;
  waited: TaskDays;
  /** Money of its own; daily money of longer tasks is the tasks'. */
  money: Money;
}

/** One task in one future. Moments are days since the plan's start, as in the forecast's `asWritten`. */
export interface FutureTask {
  id: string;
  name: string;
  milestone: boolean;
  needed: boolean;
  start: DaysSinceStart;
  finish: DaysSinceStart;
  startDate: string;
  finishDate: string;
  /** Working days of its calendar. */
  duration: TaskDays;
  /** Of the plan as written: duration and finish. */
  asWritten: { duration: TaskDays; finish: DaysSinceStart; finishDate: string };
  critical: boolean;
  /** Working days of its calendar it could have slipped before the finish moved; absent: it never would. */
  slack?: TaskDays;
  cost: Money;
  /** What held its start: those that bind, the one its path follows first. */
  heldBy: StartBound[];
}

/** One line of the cost; the lines, added up in this order, are the total to the last bit. */
export interface CostLine {
  kind: "task" | "risk" | "assumption" | "response" | "overhead";
  id: string;
  name: string;
  money: Money;
}

/** One iteration of a run, replayed: what was drawn, what happened, when, why, and what it cost. */
export interface Future {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  /** Counted from 1. */
  iteration: Count;
  /** The level asked for, where it was chosen by one. */
  at?: Chance;
  asWritten: Standing;
  /** `level`: share of the run's futures that finish no later. */
  finish: { date: string; day: DaysSinceStart; workingDays: WorkingDays; level: Chance };
  /** `level`: share of the run's futures that cost no more. */
  cost: { total: Money; level: Chance; lines: CostLine[] };
  /** What finishing late cost, beside the total; only when the plan prices lateness. */
  lateness?: Money;
  events: FutureEvent[];
  draws: FutureDraw[];
  /** In order of start, then of finish, then of id. */
  tasks: FutureTask[];
  /** The chain that set the finish, first task first; `way`: how it hangs on the one before it. */
  path: { task: Named; way: PathWay }[];
}
