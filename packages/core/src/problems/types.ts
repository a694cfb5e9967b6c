/** What stands behind one code of a `Problem`: the same for every document, where a message speaks of one place. */
export interface ProblemRule {
  /** As in `Problem.code`. */
  code: string;
  /** What was found. */
  what: string;
  /** The rule it breaks. */
  rule: string;
  /** Why there is such a rule: what would go wrong without it. */
  why: string;
  /** The way out. */
  remedy: string;
}

/** Rules about one thing, with its heading. */
export interface ProblemFamily {
  title: string;
  rules: readonly ProblemRule[];
}
