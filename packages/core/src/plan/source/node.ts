/**
 * One model for YAML, JSON and values already in memory: what the definition reads.
 *
 * `at` and `end` are offsets into the text, -1 where there is none.
 */
export type Scalar = string | number | boolean | null;

export interface ScalarNode {
  kind: "scalar";
  value: Scalar;
  at: number;
  end: number;
}
export interface ListNode {
  kind: "list";
  items: Node[];
  at: number;
  end: number;
}
export interface Entry {
  key: string;
  keyAt: number;
  node: Node;
}
export interface MapNode {
  kind: "map";
  entries: Map<string, Entry>;
  /** Second and later entries with a key that was already there. */
  repeated: Entry[];
  at: number;
  end: number;
}
export type Node = ScalarNode | ListNode | MapNode;

/** Something wrong with the text itself, before it has any meaning as a plan. */
export interface Fault {
  code: string;
  at: number;
  /** Where it is, for values in memory, which have no text to point into. */
  path?: string;
  received: string;
  rule: string;
  remedy: string;
  severity?: "warning";
}

/** A text as a tree: `root` is missing where nothing usable could be read. */
export interface SourceTree {
  /** Where positions point into; missing for values in memory. */
  text?: string;
  root?: Node;
  faults: Fault[];
  /** Offset from which the tree is guesswork, because the text broke there. */
  brokenFrom?: number;
}

/** Nesting beyond this is refused: a plan needs fewer than 12 levels. */
export const MAX_DEPTH = 100;
