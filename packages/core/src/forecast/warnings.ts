import type { AsWritten } from "../simulate/asWritten.ts";
import type { Model } from "../simulate/model.ts";
import type { Trials } from "../simulate/trials.ts";

/** Sentences a reader of the forecast must see: what limits its meaning, never silently left out. */
export function forecastWarnings(model: Model, trials: Trials, asWritten: AsWritten): string[] {
  const warnings = [...model.warnings];
  const n = trials.iterations;
  model.slots.forEach((slot, s) => {
    const cut = (trials.sums.cuts[s] as number) / n;
    if (cut > 0) {
      warnings.push(
        `${slot.key}: ${percent(cut)} of its draws fell below zero and were cut at zero; raise its low value if that is not meant.`,
      );
    }
  });
  if (model.benefits.length > 0 && model.plan.appraisal === undefined) {
    warnings.push("Benefits are listed but not valued: add `appraisal: { years, discountRate }`.");
  }
  if (model.plan.lateness !== undefined && model.lateness === undefined) {
    warnings.push("Lateness is not computed: it needs `after`, or `finishBy` in the commitment.");
  }
  if (n < 1000) {
    warnings.push(
      `Only ${n} ${n === 1 ? "iteration" : "iterations"}: read the limits of each percentile before the percentile.`,
    );
  }
  const { finishByDay } = model;
  if (finishByDay !== undefined && asWritten.finishDay > finishByDay) {
    warnings.push("The plan as written already finishes after the date asked for.");
  }
  return warnings;
}

function percent(share: number): string {
  const value = share * 100;
  return `${value < 1 ? value.toFixed(2) : value.toFixed(1)} %`;
}
