/** Dots stacked on a calendar: every column covers `days` days and ends with its last day included. */
export interface DotArrangement {
  days: number;
  /** Range of the axis in days since the start. */
  from: number;
  to: number;
  /** Distance between dots, px. */
  pitch: number;
  /** Room the highest stack needs, px. */
  height: number;
  /** Centre of each dot, px from the left end and up from the base; in the order of the values. */
  dots: { x: number; y: number }[];
}

const spans = [1, 7, 14, 28, 91, 182, 364, 728, 1820, 3640, 7280, 18200];
const largest = 24;
/** Dots this large are easy to count: no need for longer columns. */
const easy = 11;

/**
 * Arranges dots in columns of days or weeks, so large as the room allows.
 *
 * Columns are counted from `anchor`, which is then the edge between two of them: dots at or before it stand
 * to its left, the others to its right. Spans between a day and a week are not used: work seldom ends on a
 * weekend, and such columns would rise and fall with the weekends they hold. A column that is wide enough
 * stacks its dots several abreast.
 *
 * @param values  Days since the start, ascending.
 * @param from,to  What the axis must at least hold.
 */
export function arrangeDots(
  values: readonly number[],
  anchor: number,
  from: number,
  to: number,
  width: number,
  height: number,
): DotArrangement {
  let best: DotArrangement | undefined;
  for (const days of spans) {
    const bins = values.map((value) => Math.ceil((value - anchor) / days - 1e-9));
    const first = Math.min(Math.floor((from - anchor) / days) + 1, bins[0] ?? 0);
    const last = Math.max(Math.ceil((to - anchor) / days), bins[bins.length - 1] ?? 0, first + 2);
    const column = width / (last - first + 1);
    if (column < 2) continue;
    const counts = new Map<number, number>();
    for (const bin of bins) counts.set(bin, (counts.get(bin) ?? 0) + 1);
    let most = 0;
    for (const count of counts.values()) most = Math.max(most, count);
    for (let abreast = 1; abreast <= most && column / abreast >= 4; abreast++) {
      const rows = Math.ceil(most / abreast);
      const pitch = Math.min(column / abreast, height / rows, largest);
      if (best !== undefined && pitch <= best.pitch + 0.5) continue;
      const origin = anchor + (first - 1) * days;
      const dots = place(bins, first, column, pitch, abreast);
      best = {
        days,
        from: origin,
        to: origin + (last - first + 1) * days,
        pitch,
        height: rows * pitch,
        dots,
      };
    }
    if (best !== undefined && best.pitch >= easy) break; // a coarser calendar would only say less
  }
  return (
    best ?? {
      days: 1,
      from,
      to: Math.max(to, from + 1),
      pitch: 4,
      height: 4,
      dots: values.map(() => ({ x: 0, y: 0 })),
    }
  );
}

function place(
  bins: readonly number[],
  first: number,
  column: number,
  pitch: number,
  abreast: number,
): { x: number; y: number }[] {
  const seen = new Map<number, number>();
  return bins.map((bin) => {
    const k = seen.get(bin) ?? 0;
    seen.set(bin, k + 1);
    const across = (k % abreast) - (abreast - 1) / 2;
    return { x: (bin - first + 0.5) * column + across * pitch, y: (Math.floor(k / abreast) + 0.5) * pitch };
  });
}
