import type { EstimateDefaults } from "../build/estimate.ts";
import type { Estimate } from "../types.ts";

/**
 * The shortest form of an estimate in a document: `7`, `[5, 7, 14]`, `{ low, high, shape, ... }`.
 *
 * @param defaults  The plan's `estimates`, which fill in what is not written.
 */
export function writeEstimate(estimate: Estimate, defaults: EstimateDefaults = {}): unknown {
  const unit = estimate.unit === "weeks" ? { unit: estimate.unit } : {};
  if (estimate.kind === "fixed") {
    const { value } = estimate;
    return estimate.unit === "weeks" ? { low: value, likely: value, high: value, ...unit } : value;
  }
  if (estimate.kind === "outcomes") return { outcomes: estimate.outcomes, ...unit };
  const { low, likely, high } = estimate;
  const shape = estimate.shape === (defaults.shape ?? "pert") ? {} : { shape: estimate.shape };
  const bounds = estimate.bounds === (defaults.bounds ?? "extremes") ? {} : { bounds: estimate.bounds };
  const extra = { ...shape, ...bounds, ...unit };
  if (likely !== undefined && Object.keys(extra).length === 0) return [low, likely, high];
  return { low, ...(likely !== undefined && { likely }), high, ...extra };
}
