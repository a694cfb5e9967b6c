import type { Plan, Problem } from "@leeway/core";
import type { Edit } from "../plan/edit.ts";

/** Read this text as a plan, after these edits; without edits it is only read. */
export interface PlanRequest {
  id: number;
  text: string;
  edits: readonly Edit[];
  /** The text as data, where whoever asks has it: the plan is then known before the text is read. */
  stated?: unknown;
  /** Only what the plan would be is asked, while an entry is still being typed: `ahead`, or nothing. */
  trial?: boolean;
  /**
   * The plan, once it is known, goes to who computes it without passing through the page, whose thread may be busy: a
   * first answer from so many futures.
   */
  first?: number;
}

/** Do what was put off: somebody waits for the text now, or what went first is over. */
export interface Hurry {
  hurry: true;
}

/** Where plans go that are wanted at once, see `first`. */
export interface Onward {
  onward: MessagePort;
}

/** A text that was read. `plan` is missing when it has errors; then `problems` says which. */
export interface PlanRead {
  /** The text after the edits; as it came when an edit could not be made. */
  text: string;
  plan?: Plan;
  problems: Problem[];
  /** The document as plain data, as its author wrote it; undefined when it is no YAML. */
  stated: unknown;
}

export type PlanReply =
  /** Said before the text has been edited: the plan that it is going to say, known by its hash. */
  | { id: number; ahead: Plan }
  | { id: number; read: PlanRead }
  /** Nothing more comes: the trial has been answered, or cannot be. */
  | { id: number; tried: true }
  | { id: number; failed: string };
