import type { Shape } from "../../plan/types.ts";
import { lognormalLaw } from "./lognormalLaw.ts";
import { normalLaw } from "./normalLaw.ts";
import { pertLaw } from "./pertLaw.ts";
import type { StandardLaw } from "./standardForm.ts";
import { triangularLaw } from "./triangularLaw.ts";
import { uniformLaw } from "./uniformLaw.ts";

/** The standard law of a shape. A new shape is one file and one line here. */
export function standardLaw(shape: Shape, parameter: number): StandardLaw {
  switch (shape) {
    case "pert":
      return pertLaw(parameter);
    case "triangular":
      return triangularLaw(parameter);
    case "uniform":
      return uniformLaw;
    case "normal":
      return normalLaw;
    case "lognormal":
      return lognormalLaw(parameter);
  }
}
