/** Interface: `Kernel.absorb`. */
export function absorb(
  values: Float64Array,
  from: number,
  to: number,
  brackets: Float64Array,
  count: number,
  list: Float64Array,
  held: number,
): number {
  const end = 5 * count;
  for (let k = from; k < to; k++) {
    const value = values[k] as number;
    for (let at = 0; at < end; at += 5) {
      const low = brackets[at] as number;
      const high = brackets[at + 1] as number;
      // Few values are in or at a bracket: no branch but the one that tells those can be guessed. It errs to their
      // side, as a product of infinity and 0 does not compare and a small one may be 0.
      brackets[at + 2] = (brackets[at + 2] as number) + Number(value < low);
      if ((value - low) * (value - high) > 0) continue;
      if (value === low) brackets[at + 3] = (brackets[at + 3] as number) + 1;
      else if (value > low && value < high) list[held++] = value;
      else if (value === high) brackets[at + 4] = (brackets[at + 4] as number) + 1;
    }
  }
  return held;
}
