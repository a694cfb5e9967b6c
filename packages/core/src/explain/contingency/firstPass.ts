import type { Measure } from "../measureVariants.ts";
import type { Settings } from "../settings.ts";
import { type Cause, settingsWith } from "./causes.ts";
import type { Ask, Explained } from "./explainSteps.ts";
import type { Pair, Values } from "./values.ts";
import { minus } from "./values.ts";
import { type FirstPass, rows, weightiest } from "./weigh.ts";

/** One block tells weighty causes from minor ones; no figure of it is shown. */
const firstIterations = 1024;

/** Values held by the settings of one ask: what is everything but one cause grows with the square of the plan. */
const mostHeld = 1_000_000;

/**
 * The rows of the table of shares: all causes where they are few, else the weightiest, told by a first pass in which
 * each cause is once alone added to the plan as written and once alone taken from everything.
 */
export function* keptCauses(
  { model, draw }: Explained,
  causes: readonly Cause[],
  { written, withOffset }: Pick<Values, "written" | "withOffset">,
): Generator<Ask, Cause[], readonly Measure[]> {
  if (causes.length <= rows) return [...causes];
  const iterations = Math.min(draw.iterations, firstIterations);
  const levelsOf = (settings: readonly Settings[], measures: readonly Measure[]): Pair[] =>
    settings.map((own, i) => withOffset(own, (measures[i] as Measure).level));
  const size = Math.max(16, Math.floor(mostHeld / (model.slots.length + model.register.length)));
  const passes: FirstPass[] = [];
  for (let first = 0; first < causes.length; first += size) {
    const at = causes.slice(first, first + size).map((_, i) => first + i);
    const settings = [
      {},
      ...at.map((c) => settingsWith(model, causes, (on) => on === c)),
      ...at.map((c) => settingsWith(model, causes, (on) => on !== c)),
    ];
    const part = (c: number) => (0.15 * c) / causes.length;
    const measures = yield { iterations, settings, from: part(first), to: part(first + at.length) };
    const [whole, ...levels] = levelsOf(settings, measures);
    at.forEach((_, i) => {
      passes.push({
        added: minus(levels[i] as Pair, written),
        removed: minus(whole as Pair, levels[at.length + i] as Pair),
      });
    });
  }
  return weightiest(causes, passes);
}
