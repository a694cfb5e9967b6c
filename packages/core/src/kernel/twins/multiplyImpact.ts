/** duration *= 1 + scale * (draws - 1) where it occurs. */
export function multiplyImpact(
  duration: Float64Array,
  occurs: Uint8Array,
  draws: Float64Array,
  scale: number,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    if (occurs[k] === 0) continue;
    duration[k] = (duration[k] as number) * (1 + scale * ((draws[k] as number) - 1));
  }
}
