import { normalCdf } from "../dependence/normalCdf.ts";
import { normalScore } from "../dependence/normalScore.ts";
import type { StandardLaw } from "./standardForm.ts";

/** The standard normal law. */
export const normalLaw: StandardLaw = {
  min: Number.NEGATIVE_INFINITY,
  max: Number.POSITIVE_INFINITY,
  mean: 0,
  sd: 1,
  mode: 0,
  lower: normalScore,
  upper: (w) => -normalScore(w),
  cdf: normalCdf,
};
