/** duration += scale * draws where it occurs. */
export function addImpact(
  duration: Float64Array,
  occurs: Uint8Array,
  draws: Float64Array,
  scale: number,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    if (occurs[k] === 0) continue;
    duration[k] = (duration[k] as number) + scale * (draws[k] as number);
  }
}
