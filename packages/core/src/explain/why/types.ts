import type { RunStamp } from "../../forecast/types.ts";
import type { Chance, DaysSinceStart, TaskDays } from "../../units.ts";
import type { Named, PathWay, StartBound } from "../paths/types.ts";

/** One bound of a start in the plan as written, and over the futures. */
export interface WhyBound extends StartBound {
  /** Share of the futures in which it was a bound that set the start; ties count on each. */
  share: Chance;
  /** Of a person: the tasks that held them when it set the start, and how often, most often first. */
  behind?: { task: Named; share: Chance }[];
}

/** What holds a task's start, in the plan as written and over the futures. */
export interface Why {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  task: Named;
  /** Of the plan as written; moments are days since the plan's start. */
  asWritten: {
    state: "ahead" | "started" | "finished";
    needed: boolean;
    start: DaysSinceStart;
    startDate: string;
    finish: DaysSinceStart;
    finishDate: string;
    /** Working days of its calendar. */
    duration: TaskDays;
    critical: boolean;
    /** Working days it could slip before the finish of the plan as written moved; absent: it never would. */
    slack?: TaskDays;
  };
  /**
   * Working days between the start that its calendar without its people allows and its start; above 0: the people
   * it names are all away, or do not work, on the days before.
   */
  awayBefore: TaskDays;
  /** Those that bind first, then by slack. */
  bounds: WhyBound[];
  /** The chain that sets its start in the plan as written, first task first, itself last. */
  chain: { task: Named; way: PathWay }[];
  /** Over the futures: start dates, and the share of futures in which the task was critical. */
  futures: { startDates: { p10: string; p50: string; p90: string }; criticality: Chance };
}
