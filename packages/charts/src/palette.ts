import type { Theme } from "./figure/types.ts";

/**
 * Colours by what they mean; the same role has the same colour in every chart. Each is also told apart by
 * its dash, shape or label. Contrast and distance are measured in tests/contract/charts/palette.test.ts.
 */
export interface Palette {
  /** The ground. */
  paper: string;
  /** Text, curves, axes. */
  ink: string;
  /** Secondary text: still at 4.5 to 1. */
  inkQuiet: string;
  /** Separators that carry no meaning. */
  hairline: string;
  /** The level committed to: deep blue-green. */
  committed: string;
  /** The plan as written: warm ochre. */
  asWritten: string;
  /** Events of the register: muted plum. */
  register: string;
  /** Tint of the ink: the wide range. */
  rangeWide: string;
  /** Tint of the ink: the likely range. */
  rangeCore: string;
  /** Edge of a range: 3 to 1 against the paper, so that no range rests on its tint alone. */
  rangeEdge: string;
}

const light: Palette = {
  paper: "#fbf8f1",
  ink: "#24211c",
  inkQuiet: "#5f594e",
  hairline: "#ddd6c8",
  committed: "#064148",
  asWritten: "#9a6208",
  register: "#7b4069",
  rangeWide: "#ece6d9",
  rangeCore: "#d3cab9",
  rangeEdge: "#8b8373",
};

const dark: Palette = {
  paper: "#1b1a17",
  ink: "#ece7db",
  inkQuiet: "#b0a898",
  hairline: "#3d3a33",
  committed: "#62afbf",
  asWritten: "#e2c26b",
  register: "#b16f97",
  rangeWide: "#2c2a25",
  rangeCore: "#4a463c",
  rangeEdge: "#8f8776",
};

/** The palette of a theme; light unless told otherwise. */
export function palette(theme: Theme = "light"): Palette {
  return theme === "dark" ? dark : light;
}
