import type { StandardLaw } from "./standardForm.ts";

/** The uniform law on [0, 1]. */
export const uniformLaw: StandardLaw = {
  min: 0,
  max: 1,
  mean: 0.5,
  sd: Math.sqrt(1 / 12),
  mode: undefined,
  lower: (u) => u,
  upper: (w) => 1 - w,
  cdf: (z) => Math.min(Math.max(z, 0), 1),
};
