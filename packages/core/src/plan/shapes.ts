import type { Shape } from "./types.ts";

/** What a shape asks of an estimate, and where its law ends. */
export interface ShapeRule {
  /** In a sentence about an estimate. */
  name: string;
  /** Whether it has a likely value; the others are given by low and high alone. */
  takesLikely: boolean;
  /**
   * `both`: a least and a most value. `above-nought`: above 0 without a most value. `none`: neither, so that draws can
   * be below 0. Bounds of a law without both ends are percentiles.
   */
  ends: "both" | "above-nought" | "none";
}

/** What holds of each shape: checks, sampling, the engine, pooling and the page all read it here. */
export const shapeRules: Readonly<Record<Shape, ShapeRule>> = {
  pert: { name: "PERT", takesLikely: true, ends: "both" },
  triangular: { name: "triangular", takesLikely: true, ends: "both" },
  uniform: { name: "uniform", takesLikely: false, ends: "both" },
  normal: { name: "normal", takesLikely: false, ends: "none" },
  lognormal: { name: "lognormal", takesLikely: false, ends: "above-nought" },
};

/** Every shape, in the order in which they are offered. */
export const SHAPES: readonly Shape[] = Object.keys(shapeRules).filter(isShape);

function isShape(word: string): word is Shape {
  return Object.hasOwn(shapeRules, word);
}
