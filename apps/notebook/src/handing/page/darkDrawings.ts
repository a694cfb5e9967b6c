import { palette } from "@leeway/charts";

/**
 * Rules for a dark screen: the drawings of the page are drawn in light colours, and here each has the one that means the
 * same in the dark. Paper, and whoever takes a drawing out of the page, have them as they are drawn.
 */
export function darkDrawings(): string {
  const dark = new Map(Object.entries(palette("dark")));
  const rules = Object.entries(palette("light")).flatMap(([role, light]) =>
    ["fill", "stroke"].map((what) => `.drawing [${what}="${light}"]{${what}:${dark.get(role)}}`),
  );
  return `@media screen and (prefers-color-scheme:dark){${rules.join("")}}`;
}
