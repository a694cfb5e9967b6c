import type { Forecast } from "@leeway/core";

/** How the values of a run were drawn, in plain words and by the name that a checker knows. */
export function designWords(design: Forecast["design"]): string {
  return design === "plain" ? "drawn by chance alone (plain)" : "drawn evenly (Latin hypercube)";
}
