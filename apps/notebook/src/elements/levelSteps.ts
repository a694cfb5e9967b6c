/** Keys that move a level, as a slider's do (WAI-ARIA 1.2, slider; recalled from memory). */
export const levelKeys: ReadonlySet<string> = new Set([
  "ArrowUp",
  "ArrowRight",
  "ArrowDown",
  "ArrowLeft",
  "PageUp",
  "PageDown",
  "Home",
  "End",
]);

/** The level a key leads to: whole per cents, by one, by five, to either end of the range. */
export function levelAfter(key: string, from: number, [least, most]: readonly [number, number]): number {
  if (key === "Home") return least;
  if (key === "End") return most;
  const step = key.startsWith("Page") ? 5 : 1;
  const up = key === "ArrowUp" || key === "ArrowRight" || key === "PageUp";
  const whole = up ? Math.floor(from * 100 + 1e-9) + step : Math.ceil(from * 100 - 1e-9) - step;
  return Math.max(least, Math.min(most, whole / 100));
}

/** Every whole per cent of the range, its ends included. */
export function levelsBetween([least, most]: readonly [number, number]): number[] {
  const first = Math.ceil(least * 100 - 1e-9);
  const last = Math.floor(most * 100 + 1e-9);
  const whole = Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => (first + k) / 100);
  return [...new Set([least, ...whole, most])];
}
