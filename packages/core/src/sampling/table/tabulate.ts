import type { StandardLaw } from "../shapes/standardForm.ts";
import {
  bodyLength,
  bodyStart,
  endProbability,
  tableLength,
  tailLength,
  tailProbability,
  upperStart,
} from "./layout.ts";

const tailAt = Float64Array.from({ length: tailLength }, (_, e) => tailProbability(e));

/** The quantile table of a standard law, from its exact quantiles: 1,829 of them. */
export function tabulate(law: StandardLaw): Float64Array {
  const values = new Float64Array(tableLength);
  for (let e = 1; e < tailLength; e++) {
    values[e] = law.lower(tailAt[e] as number);
    values[upperStart + e] = law.upper(tailAt[e] as number);
  }
  values[0] = Number.isFinite(law.min) ? law.min : law.lower(endProbability);
  values[upperStart] = Number.isFinite(law.max) ? law.max : law.upper(endProbability);
  for (let e = 0; e < bodyLength; e++) {
    const u = (32 + e) / 1024;
    values[bodyStart + e] = u <= 0.5 ? law.lower(u) : law.upper(1 - u);
  }
  return values;
}
