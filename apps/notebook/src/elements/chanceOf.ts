/** What the chance of an entry is the chance of: of an assumption that it fails, not that it holds. */
export function chanceOf(kind: "risk" | "assumption"): string {
  return kind === "risk" ? "Chance it happens" : "Chance it is wrong";
}
