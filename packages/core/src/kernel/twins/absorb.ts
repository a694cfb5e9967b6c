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
      // Brackets ascend: what is below one is below all that follow.
      if (value < (brackets[at] as number)) {
        for (; at < end; at += 5) brackets[at + 2] = (brackets[at + 2] as number) + 1;
      } else if (value === brackets[at]) brackets[at + 3] = (brackets[at + 3] as number) + 1;
      else if (value < (brackets[at + 1] as number)) list[held++] = value;
      else if (value === brackets[at + 1]) brackets[at + 4] = (brackets[at + 4] as number) + 1;
    }
  }
  return held;
}
