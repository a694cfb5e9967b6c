import type { EstimateDraft } from "../definition/estimate.ts";
import type { Bounds, Estimate, Shape } from "../types.ts";
import { must } from "./must.ts";

export interface EstimateDefaults {
  shape?: Shape | undefined;
  bounds?: Bounds | undefined;
}

/** The estimate a checked draft stands for: outcomes ascending, `low == high` certain. */
export function toEstimate(draft: EstimateDraft, defaults: EstimateDefaults): Estimate {
  const unit = draft.unit ?? "days";
  if (draft.value !== undefined) return { kind: "fixed", value: draft.value, unit };
  if (draft.outcomes !== undefined) {
    const outcomes = draft.outcomes
      .map(({ value, chance }) => ({ value: must(value), chance: must(chance) }))
      .sort((a, b) => a.value - b.value);
    const [only] = outcomes;
    if (outcomes.length === 1 && only !== undefined) return { kind: "fixed", value: only.value, unit };
    return { kind: "outcomes", outcomes, unit };
  }
  const low = must(draft.low);
  const high = must(draft.high);
  if (low === high) return { kind: "fixed", value: low, unit };
  const shape = draft.shape ?? defaults.shape ?? "pert";
  const bounds = draft.bounds ?? defaults.bounds ?? "extremes";
  const range: Estimate = { kind: "range", low, high, shape, bounds, unit };
  if (draft.likely !== undefined) range.likely = draft.likely;
  return range;
}
