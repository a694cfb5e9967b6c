import type { Forecast, Plan, Problem } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";
import type { Stage } from "../worker/messages.ts";

/** An answer and the plan it answers. */
export interface Answer {
  forecast: Forecast;
  /** `first`: from few futures, the full answer is on its way. */
  stage: "first" | "full";
  /** Hash of the plan. */
  plan: string;
}

/** How far a computation is. `total` 0: not known yet. */
export interface Progress {
  stage: Stage;
  done: number;
  total: number;
}

/** An entry that could not become part of the plan: what its cells show, and why, in words. */
export interface Pending {
  /** Text by cell of the field: `low`, `likely`, `high`, or `value` where there is one cell. */
  cells: Readonly<Record<string, string>>;
  words: string;
  /** What it would change, where it could be read and the plan's rules refused it. */
  edits?: readonly Edit[];
}

export interface TornadoState {
  /** The forecast the bars belong to. */
  forecast?: Forecast;
  /** Hash of its plan. */
  plan?: string;
  progress?: Progress;
  /** The reader stopped it: it starts again only when asked. */
  stopped: boolean;
}

/** All the page shows. Every change makes a new object; parts that did not change keep their identity. */
export interface NotebookState {
  /** The plan document: the one source of truth. */
  readonly text: string;
  /** The last text that could be read, read. */
  readonly plan: Plan | undefined;
  /** The document of `plan` as plain data, as its author wrote it. */
  readonly stated: unknown;
  /** A text or an edit is being read. */
  readonly reading: boolean;
  /** What reading `text`, or computing it, found. */
  readonly problems: readonly Problem[];
  /** Entries that wait to be put right, by the path of their field. */
  readonly pending: ReadonlyMap<string, Pending>;
  /** The last good answer. */
  readonly answer: Answer | undefined;
  /** Hash of the plan that is answered or being computed; an edit's is known before its text is. */
  readonly current: string | undefined;
  /** What tables and charts show: the full answer, or the first one where the full one takes long. */
  readonly detail: Forecast | undefined;
  /** The full answer before the latest change. */
  readonly previous: Forecast | undefined;
  /** The text that was read for it, as long as it is at hand. */
  readonly previousText: string | undefined;
  /** The text that this plan came with: what the page opened on, or what was put in the place of another plan. */
  readonly origin: string;
  /** An answer is on its way. */
  readonly computing: boolean;
  /** How far it is; only once that takes long enough to be told. */
  readonly progress: Progress | undefined;
  /** The reader stopped the computation of this text. */
  readonly stopped: boolean;
  /** The computation broke, in words. */
  readonly failure: string | undefined;
  readonly tornado: TornadoState;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

/** Whether the answer shown, early or full, is that of the plan as it stands. */
export function isCurrent(state: NotebookState): boolean {
  return state.answer !== undefined && state.answer.plan === state.current;
}

/** Whether what follows is faded: its successor is being computed, and takes its time. */
export function isFading(state: NotebookState): boolean {
  return state.progress !== undefined && !isCurrent(state);
}

/** Why the answer shown is not the answer to what is stated now, in words; undefined when it is. */
export function staleWords(state: NotebookState): string | undefined {
  const errors = state.problems.filter((problem) => problem.severity === "error").length;
  if (errors > 0) {
    return `This is the last good answer. The plan text has ${count(errors, "problem")} to put right.`;
  }
  if (state.pending.size > 0) {
    return `This answer leaves out ${count(state.pending.size, "entry", "entries")} that ${state.pending.size === 1 ? "waits" : "wait"} to be put right.`;
  }
  if (state.failure !== undefined) return `This is the last good answer. ${state.failure}`;
  if (state.stopped) {
    return isCurrent(state)
      ? `You stopped the computation early: this answer comes from ${state.answer?.forecast.iterations} futures.`
      : "You stopped the computation: this is the answer before your last change.";
  }
  return undefined;
}

function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}
