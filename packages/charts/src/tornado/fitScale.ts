/** A bar from `from` to `to` (data) with a label of so many px at either end. */
export interface LabelledBar {
  from: number;
  to: number;
  before: number;
  after: number;
}

/**
 * The largest linear scale on which every bar and both of its labels stay between `left` and `right` px.
 *
 * Of two bars i and j the first's label must fit before its start and the second's after its end, which
 * bounds px per unit by (room - labels) / (to_j - from_i); the tightest pair decides. Exact, n squared.
 *
 * @returns Data to px. When the labels alone fill the room, the bars shrink to points between them.
 */
export function fitScale(
  bars: readonly LabelledBar[],
  left: number,
  right: number,
): (value: number) => number {
  let slope = Number.POSITIVE_INFINITY;
  for (const first of bars) {
    for (const last of bars) {
      const reach = last.to - first.from;
      if (reach > 0) slope = Math.min(slope, (right - left - first.before - last.after) / reach);
    }
  }
  if (slope === Number.POSITIVE_INFINITY || slope < 0) slope = 0;
  let origin = Number.NEGATIVE_INFINITY;
  for (const bar of bars) origin = Math.max(origin, left + bar.before - bar.from * slope);
  if (origin === Number.NEGATIVE_INFINITY) origin = (left + right) / 2;
  return (value) => origin + value * slope;
}
