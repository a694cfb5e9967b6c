import type { Shape } from "@leeway/core";

/** What the curve of an estimate looks like, with the name of its shape where that is another. */
export const shapeWords: Readonly<Record<Shape, string>> = {
  pert: "smooth (PERT)",
  triangular: "triangle",
  uniform: "all alike (uniform)",
  normal: "bell (normal)",
  lognormal: "long tail (lognormal)",
};
