import { averageOverOrders } from "../../explain/contingency/orderAverage.ts";
import { measureVariants } from "../../explain/measureVariants.ts";
import type { Settings } from "../../explain/settings.ts";
import type { Effect } from "../../explain/types.ts";
import type { Draw } from "../../explain/variants.ts";
import type { Model } from "../../simulate/model.ts";

/** Sets of so many parts are all run; of more, two passes through a Latin square of orders. */
const everySetUpTo = 6;
/** So many are told apart; what holds least is gathered. */
const mostParts = 12;

/** What is held for one entry, or for several gathered: indices in the model's register. */
export interface Held {
  entries: readonly number[];
  held: Effect;
  error: Effect;
}

/**
 * What the commitment of a model holds for each of some entries: what the level's percentile loses without them, on the
 * same draws, averaged over every order in which they can go, so that the parts add up.
 *
 * Cost: 2^k runs of the model's differences for up to 6 entries, about 2 k^2 up to 12; beyond, the smallest are one.
 */
export function heldFor(model: Model, draw: Draw, confidence: number, entries: readonly number[]): Held[] {
  if (entries.length === 0) return [];
  const levelOf = (settings: readonly Settings[]) =>
    measureVariants(model, draw, confidence, settings).map(({ level }) => level);
  const parts = gathered(entries, () => levelOf([{}, ...entries.map((entry) => without([entry]))]));
  const { shares, errors } = averageOverOrders(
    parts.length,
    (sets) => levelOf(sets.map((set) => without(parts.filter((_, i) => ((set >> i) & 1) === 0).flat()))),
    { exactUpTo: everySetUpTo, most: 1, seed: draw.seed },
  );
  return parts.map((part, i) => ({ entries: part, held: effectOf(shares[i]), error: effectOf(errors[i]) }));
}

function without(entries: readonly number[]): Settings {
  return { entries: new Map(entries.map((entry) => [entry, 0])) };
}

/** Entries one by one, or those that move the level most and the rest together. */
function gathered(
  entries: readonly number[],
  measure: () => (readonly [number, number])[],
): (readonly number[])[] {
  if (entries.length <= mostParts) return entries.map((entry) => [entry]);
  const [whole = [0, 0], ...alone] = measure();
  const size = (i: number, d: 0 | 1) => Math.abs(whole[d] - (alone[i]?.[d] ?? 0));
  const largest = ([0, 1] as const).map((d) =>
    entries.reduce((most, _, i) => Math.max(most, size(i, d)), 1e-9),
  ) as [number, number];
  const weight = (i: number) => Math.max(size(i, 0) / largest[0], size(i, 1) / largest[1]);
  const order = entries.map((_, i) => i).sort((a, b) => weight(b) - weight(a) || a - b);
  const named = new Set(order.slice(0, mostParts - 1));
  return [
    ...entries.filter((_, i) => named.has(i)).map((entry) => [entry]),
    entries.filter((_, i) => !named.has(i)),
  ];
}

function effectOf([workingDays = 0, money = 0]: readonly number[] = []): Effect {
  return { workingDays, money };
}
