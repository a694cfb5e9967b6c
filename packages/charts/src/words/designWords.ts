import type { Forecast } from "@leeway/core";

/** How the values of a run were drawn, in plain words and by the name that a checker knows. */
export function designWords(design: Forecast["design"]): string {
  return design === "plain"
    ? "each drawn by chance alone (plain)"
    : "spread evenly over each range (Latin hypercube)";
}
