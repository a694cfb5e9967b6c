import type { WorkCalendar } from "../calendar/workCalendar.ts";
import type { KernelCalendar } from "./calendar.ts";

/**
 * Rows in one piece of memory, handed out one after the other. Views stay valid as long as the arena: its memory
 * is made once and never grows.
 */
export interface Arena {
  /** `count` rows of `length` doubles, all 0. */
  rows(count: number, length: number): Float64Array[];
  /** `count` rows of `length` bytes, all 0. */
  bytes(count: number, length: number): Uint8Array[];
  /** `count` rows of `length` integers of 32 bits, all 0. */
  int32(count: number, length: number): Int32Array[];
  /** A copy of a table; the same table is copied once. */
  table(values: Float64Array): Float64Array;
  /** A calendar with tables for the kernel; the same calendar gets them once. Cost: 0.9 MB, about 0.1 ms. */
  calendar(calendar: WorkCalendar): KernelCalendar;
  /** Bytes not handed out yet. */
  readonly room: number;
}

// Behind every row: room for the widest overhang of a vector (15 bytes), and rows of 1,024 do not all begin on the
// same cache set.
const behind = 64;

/** Bytes that `count` rows of `length` entries of `width` bytes take in an arena. */
export function bytesOfRows(count: number, length: number, width: 8 | 4 | 1): number {
  return count * (Math.ceil((length * width) / 16) * 16 + behind);
}

/** Bytes that a calendar's tables take in an arena. */
export function bytesOfCalendar({ everyDay, cum, nth }: WorkCalendar): number {
  if (everyDay) return bytesOfRows(2, 0, 8);
  return bytesOfRows(1, 2 * cum.length, 8) + bytesOfRows(1, nth.length, 8);
}

/**
 * An arena in `buffer` from byte `from` on (a multiple of 16).
 *
 * Asking for more than there is throws a RangeError: the caller computes the size with `bytesOfRows`.
 */
export function newArena(buffer: ArrayBuffer, from: number): Arena {
  let next = from;
  const tables = new Map<Float64Array, Float64Array>();
  const calendars = new Map<WorkCalendar, KernelCalendar>();
  const take = (length: number, width: 8 | 4 | 1): number => {
    const at = next;
    const bytes = bytesOfRows(1, length, width);
    if (at + bytes > buffer.byteLength) {
      throw new RangeError(
        `The arena holds ${buffer.byteLength - from} bytes, ${buffer.byteLength - at} of them free; a row of ${length} entries ` +
          `needs ${bytes}. Ask loadKernel for more: bytesOfRows tells how much.`,
      );
    }
    next += bytes;
    return at;
  };
  const list = <T>(count: number, row: () => T): T[] => Array.from({ length: count }, row);
  const row = (length: number) => new Float64Array(buffer, take(length, 8), length);
  return {
    rows: (count, length) => list(count, () => row(length)),
    bytes: (count, length) => list(count, () => new Uint8Array(buffer, take(length, 1), length)),
    int32: (count, length) => list(count, () => new Int32Array(buffer, take(length, 4), length)),
    table(values) {
      let copy = tables.get(values);
      if (copy === undefined) {
        copy = row(values.length);
        copy.set(values);
        tables.set(values, copy);
      }
      return copy;
    },
    calendar(calendar) {
      let copy = calendars.get(calendar);
      if (copy === undefined) {
        copy = copyCalendar(calendar, row);
        calendars.set(calendar, copy);
        calendars.set(copy, copy);
      }
      return copy;
    },
    get room() {
      return Math.max(0, buffer.byteLength - next);
    },
  };
}

function copyCalendar(calendar: WorkCalendar, row: (length: number) => Float64Array): KernelCalendar {
  const { cum, nth, last, everyDay } = calendar;
  if (everyDay) return { ...calendar, days: row(0), order: row(0), gap: 0, end: 0 };
  const days = row(2 * cum.length);
  for (let d = 0; d < cum.length; d++) {
    const before = cum[d] as number;
    days[2 * d] = before;
    days[2 * d + 1] = nth[before] as number;
  }
  const order = row(nth.length);
  order.set(nth);
  let gap = last > 0 ? (nth[0] as number) : 0;
  for (let k = 1; k < last; k++) gap = Math.max(gap, (nth[k] as number) - (nth[k - 1] as number));
  const end = last > 0 ? (nth[last - 1] as number) : -1;
  return { ...calendar, days, order, gap: gap + 1, end };
}
