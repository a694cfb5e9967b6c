import { tolerance } from "../../calendar/tolerance.ts";
import { finishMoment, nextWork, type WorkCalendar, workAt } from "../../calendar/workCalendar.ts";
import type { WantedShare } from "../peopleLists.ts";

/**
 * Moves work on to the earliest moment from which every wanted share is free from its start to its finish. Each step
 * jumps to the end of an overload that every start before that end would meet too, so no earlier feasible moment is
 * passed over. Stops once a finish is past `most`.
 *
 * @param moved  Told of each step; may move the work further.
 */
export function freeFrom(
  calendar: WorkCalendar,
  wanted: readonly WantedShare[],
  start: Float64Array,
  finish: Float64Array,
  duration: Float64Array,
  most: number,
  n: number,
  moved?: (k: number, days: number) => void,
): void {
  for (let k = 0; k < n; k++) {
    const d = duration[k] as number;
    if (d <= tolerance) continue;
    for (let h = 0; h < wanted.length; ) {
      const end = overloadEnd(wanted[h] as WantedShare, k, start[k] as number, finish[k] as number);
      if (end <= (start[k] as number) + tolerance) {
        h += 1;
        continue;
      }
      const s = nextWork(calendar, end);
      start[k] = s;
      finish[k] = finishMoment(calendar, workAt(calendar, s) + d);
      moved?.(k, d);
      if ((finish[k] as number) > most) break;
      h = 0;
    }
  }
}

/** The end of an overload inside [s, f) were the share added to what its person holds already; 0 when it fits. */
function overloadEnd(wanted: WantedShare, k: number, s: number, f: number): number {
  const { room, shares, starts, finishes, partial } = wanted;
  let end = 0;
  let together = 0;
  let sum = 0;
  for (let i = 0; i < shares.length; i++) {
    const from = (starts[i] as Float64Array)[k] as number;
    const to = (finishes[i] as Float64Array)[k] as number;
    if (from >= f - tolerance || to <= s + tolerance || to - from <= tolerance) continue;
    const share = shares[i] as number;
    if (share > room) {
      if (to > end) end = to;
    } else {
      together += 1;
      sum += share;
    }
  }
  // Everything that overlaps [s, f) at all, added up, still fits: the quick answer.
  if (end > 0 || (partial.length === 0 && (together < 2 || sum <= room))) return end;
  end = loadEndAt(wanted, k, s);
  if (end > 0) return end;
  for (const row of starts) {
    const from = row[k] as number;
    if (from <= s || from >= f - tolerance) continue;
    end = loadEndAt(wanted, k, from);
    if (end > 0) return end;
  }
  for (const absence of partial) {
    if (absence.from <= s || absence.from >= f - tolerance) continue;
    end = loadEndAt(wanted, k, absence.from);
    if (end > 0) return end;
  }
  return 0;
}

/** Where the load at moment x leaves no room: the earliest end among what is held there; otherwise 0. */
function loadEndAt({ room, shares, starts, finishes, partial }: WantedShare, k: number, x: number): number {
  let sum = 0;
  let end = Number.POSITIVE_INFINITY;
  for (let i = 0; i < shares.length; i++) {
    const from = (starts[i] as Float64Array)[k] as number;
    const to = (finishes[i] as Float64Array)[k] as number;
    if (from > x + tolerance || to <= x + tolerance || to - from <= tolerance) continue;
    sum += shares[i] as number;
    if (to < end) end = to;
  }
  for (const absence of partial) {
    if (absence.from > x + tolerance || absence.to <= x + tolerance) continue;
    sum += absence.gone;
    if (absence.to < end) end = absence.to;
  }
  return sum > room ? end : 0;
}
