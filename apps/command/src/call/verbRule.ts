/** One option of a verb, as `help` prints it and the call is checked against. */
export interface OptionRule {
  /** Without the two dashes. */
  name: string;
  /** What stands after it, for help; absent for a switch. */
  value?: string;
  help: string;
  /** May be given more than once. */
  repeats?: boolean;
}
export interface VerbRule {
  name: string;
  /** One line for the list of verbs. */
  summary: string;
  /** How many plans it takes. */
  plans: 0 | 1 | 2;
  /** What it takes after the plan: the word help writes, and what it stands for. */
  word?: {
    name: string;
    means: string;
    /** It may be left out. */
    optional?: true;
    /** There may be many; then it may be left out too. */
    many?: true;
  };
  options: readonly OptionRule[];
  /** Further lines for `help VERB`. */
  notes?: string;
}
