import type { Measure } from "../measureVariants.ts";
import type { Settings } from "../settings.ts";
import { type Cause, settingsWith } from "./causes.ts";
import type { Ask, Explained } from "./explainSteps.ts";
import type { Values } from "./values.ts";
import { type FirstPass, rows, weightiest } from "./weigh.ts";

/** One block tells weighty causes from minor ones; no figure of it is shown. */
const firstIterations = 1024;

/** Values held by the settings of one ask: what is everything but one cause grows with the square of the plan. */
const mostHeld = 1_000_000;

/**
 * The rows of the table of shares: all causes where they are few, else the weightiest, told by a first pass in which
 * each cause is once alone added to the plan as written and once alone taken from everything. Levels and means are
 * both looked at: a risk that occurs less often than the level leaves out adds nothing to it by itself.
 */
export function* keptCauses(
  { model, draw }: Explained,
  causes: readonly Cause[],
  { written, withOffset }: Pick<Values, "written" | "withOffset">,
): Generator<Ask, Cause[], readonly Measure[]> {
  if (causes.length <= rows) return [...causes];
  const iterations = Math.min(draw.iterations, firstIterations);
  const valuesOf = (settings: readonly Settings[], measures: readonly Measure[]): number[][] =>
    settings.map((own, i) => {
      const { level, mean } = measures[i] as Measure;
      return [...withOffset(own, level), ...withOffset(own, mean)];
    });
  const before = [...written, ...written];
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
    const [whole = [], ...values] = valuesOf(settings, measures);
    at.forEach((_, i) => {
      passes.push({
        added: less(values[i] as number[], before),
        removed: less(whole, values[at.length + i] as number[]),
      });
    });
  }
  return weightiest(causes, passes);
}

function less(a: readonly number[], b: readonly number[]): number[] {
  return a.map((x, d) => x - (b[d] as number));
}
