/**
 * The sum of four lanes from `at` on, in the order every kernel adds them. Iteration k belongs to lane k mod 4: two
 * vectors of two doubles, or four independent chains of additions.
 */
export function sumOfLanes(lanes: Float64Array, at = 0): number {
  return (
    (lanes[at] as number) +
    (lanes[at + 1] as number) +
    ((lanes[at + 2] as number) + (lanes[at + 3] as number))
  );
}
