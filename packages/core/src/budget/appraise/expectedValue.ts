/** One way it can turn out. Chances of all ways sum to 1. */
export interface Way {
  value: number;
  chance: number;
}

/** Mean and standard deviation of a value with discrete outcomes (HM Treasury, The Green Book, Annex A5). */
export function expectedValue(outcomes: readonly Way[]): { mean: number; sd: number } {
  const mean = outcomes.reduce((sum, { value, chance }) => sum + value * chance, 0);
  const variance = outcomes.reduce((sum, { value, chance }) => sum + chance * (value - mean) ** 2, 0);
  return { mean, sd: Math.sqrt(variance) };
}

/** Chance of a value no greater than this. */
export function chanceUpTo(outcomes: readonly Way[], limit: number): number {
  return outcomes.reduce((sum, { value, chance }) => sum + (value <= limit ? chance : 0), 0);
}

/** A decision tree: an end, a chance, or a choice. `worth` is gained (negative: paid) on the way to the node. */
export type DecisionNode =
  | { worth: number }
  | { worth?: number; chances: { chance: number; to: DecisionNode }[] }
  | { worth?: number; choices: { name: string; to: DecisionNode }[] };

/** The expected monetary value of a tree, and the choice made at its root where that is one. */
export interface Rolled {
  value: number;
  /** Of the root, each with its expected value, in the order given. */
  choices?: { name: string; value: number }[];
  best?: string;
}

/**
 * Rolls a decision tree back: a chance is worth its mean, a choice what its best way is worth (the first of equals).
 *
 * Expected monetary value: for whoever is indifferent to spread; it says nothing of the chance of a loss.
 */
export function rollBack(node: DecisionNode): Rolled {
  const own = node.worth ?? 0;
  if ("chances" in node)
    return {
      value: own + node.chances.reduce((sum, { chance, to }) => sum + chance * rollBack(to).value, 0),
    };
  if ("choices" in node) {
    const choices = node.choices.map(({ name, to }) => ({ name, value: rollBack(to).value }));
    const best = choices.reduce<{ name: string; value: number } | undefined>(
      (so, one) => (so === undefined || one.value > so.value ? one : so),
      undefined,
    );
    return { value: own + (best?.value ?? 0), choices, ...(best === undefined ? {} : { best: best.name }) };
  }
  return { value: own };
}
