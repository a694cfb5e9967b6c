import type { Moment, RunStamp } from "../../forecast/types.ts";
import type { LinkKind } from "../../plan/types.ts";
import type {
  Chance,
  Count,
  DaysSinceStart,
  OwnDays,
  Portion,
  Ratio,
  TaskDays,
  WorkingDays,
} from "../../units.ts";

/**
 * What can keep a task from starting earlier. `person`: somebody it names is held by another task; `away`: somebody
 * is away in part; `recorded`: it has started, or is finished.
 */
export type BoundKind =
  | "link"
  | "person"
  | "away"
  | "not-before"
  | "held-to-plan"
  | "status-date"
  | "plan-start"
  | "recorded";

/** A task by id and name. */
export interface Named {
  id: string;
  name: string;
}

/** One thing that keeps a task from starting earlier. Moments are days since the plan's start. */
export interface StartBound {
  kind: BoundKind;
  /** `link`: the predecessor; `person`: the task that holds the person. */
  task?: Named;
  link?: LinkKind;
  /** Of a link, working days of the lag's calendar; absent: none. */
  lag?: OwnDays;
  person?: Named;
  /** Working days of the task's calendar for which the register then holds it back; absent: none. */
  wait?: TaskDays;
  /** The moment it asks for; of a link that asks for a finish, the moment the task may not finish before. */
  day: DaysSinceStart;
  /** The earliest start it would allow alone: never later than the task's start. */
  start: DaysSinceStart;
  startDate: string;
  /** Working days of the task's calendar between that and its start: 0 where it binds. */
  slack: TaskDays;
  /** Together with every other that binds: more than one is a tie. */
  binds: boolean;
}

/**
 * How a task on a path hangs on the one before it, or, of the first, what it stands on: a link or a person there means
 * a task that is finished.
 */
export interface PathWay {
  kind: BoundKind;
  /** Whom both tasks need. */
  person?: Named;
}

/** One driving path: the chain of tasks that set the finish in some iterations, the first task first. */
export interface DrivingPath {
  tasks: string[];
  names: string[];
  /** One for each task. */
  ways: PathWay[];
  /** Share of iterations in which it set the finish. */
  share: Chance;
}

/** The trade's indices of one task (Vanhoucke 2010), each 0 to 1, and what is at stake on it. */
export interface TaskIndices {
  id: string;
  name: string;
  /** Share of iterations in which it was critical: the forecast's figure. */
  criticality: Chance;
  /** Mean of (d / (d + slack)) (T / mean T), d its duration, T the plan's (Williams 1992). */
  significance: Portion;
  /** Size of the correlation of its duration with the plan's. */
  cruciality: Portion;
  /** Criticality times the standard deviation of its duration over that of the plan's. */
  scheduleSensitivity: Ratio;
  /** Mean working days of its own calendar it could slip before the finish moved; absent: it never moves it. */
  slack?: TaskDays;
  /**
   * Working days the finish at the committed level would gain if the task never took longer than as written, same
   * draws; only for the twelve tasks of the greatest schedule sensitivity, critical in 1 of 100 futures at least.
   */
  daysAtStake?: WorkingDays;
}

/** Which chains of tasks set the finish, and how much each task has to do with it. */
export interface Paths {
  stamp: RunStamp;
  plan: { title: string; currency: string; start: string };
  confidence: Chance;
  /** The finish at the level committed to. */
  committed: Moment;
  /** The most frequent, at most five, most frequent first. */
  paths: DrivingPath[];
  /** How many different paths set the finish in some iteration. */
  different: Count;
  /** Every unfinished task, most often critical first, then by id. */
  tasks: TaskIndices[];
}
