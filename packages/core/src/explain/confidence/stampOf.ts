import type { RunStamp } from "../../forecast/types.ts";
import type { Model } from "../../simulate/model.ts";
import { version } from "../../version.ts";
import type { Draw } from "../variants.ts";

/** The run stamp of an explanation: what is needed to get the same figures again. */
export function stampOf(model: Model, { seed, iterations, design }: Draw): RunStamp {
  return { seed, iterations, version, design, sha256: model.plan.sha256 };
}
