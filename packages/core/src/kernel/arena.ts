import type { WorkCalendar } from "../calendar/workCalendar.ts";
import type { KernelCalendar } from "./calendar.ts";

/**
 * Rows in one piece of memory, handed out one after the other. Views stay valid as long as the arena: its memory
 * is made once and never grows.
 */
export interface Arena {
  /** The memory that all rows lie in. */
  readonly buffer: ArrayBuffer;
  /** `count` rows of `length` doubles, all 0. */
  rows(count: number, length: number): Float64Array[];
  /** `count` rows of `length` bytes, all 0. */
  bytes(count: number, length: number): Uint8Array[];
  /** `count` rows of `length` integers of 32 bits, all 0. */
  int32(count: number, length: number): Int32Array[];
  /** `count` rows of `length` entries of `width` bytes by their addresses: views of thousands of rows take their time. */
  addresses(count: number, length: number, width: 8 | 1): number[];
  /** A copy of a table; the same table is copied once. */
  table(values: Float64Array): Float64Array;
  /** A calendar with tables for the kernel; the same calendar gets them once. */
  calendar(calendar: WorkCalendar): KernelCalendar;
  /** Bytes not handed out yet. */
  readonly room: number;
  /** Where they begin, for use of so many of them until the next row is handed out; they need not be 0. */
  scratch(bytes: number): number;
  /** Where nothing was written yet, and nothing behind it. */
  readonly clean: number;
}

/** Gives a calendar its tables, in rows of an arena. */
export type TablesOf = (calendar: WorkCalendar, row: (length: number) => Float64Array) => KernelCalendar;

// Behind every row: room for the widest overhang of a vector (15 bytes), and rows of 1,024 do not all begin on the
// same cache set.
const behind = 64;

/** Bytes that `count` rows of `length` entries of `width` bytes take in an arena. */
export function bytesOfRows(count: number, length: number, width: 8 | 4 | 1): number {
  return count * (Math.ceil((length * width) / 16) * 16 + behind);
}

/** Bytes that a calendar's tables take in an arena. */
export function bytesOfCalendar({ everyDay, cum, nth }: WorkCalendar): number {
  return everyDay ? 0 : bytesOfRows(1, 2 * cum.length, 8) + bytesOfRows(1, nth.length, 8);
}

/**
 * An arena in `buffer` from byte `from` on (a multiple of 16).
 *
 * @param clean  From where on the buffer is all 0; rows before it are made so when they are handed out.
 *
 * Asking for more than there is throws a RangeError: the caller computes the size with `bytesOfRows`.
 */
export function newArena(buffer: ArrayBuffer, from: number, tablesOf: TablesOf, clean = from): Arena {
  let next = from;
  let dirty = clean;
  const tables = new Map<Float64Array, Float64Array>();
  const calendars = new Map<WorkCalendar, KernelCalendar>();
  const take = (length: number, width: 8 | 4 | 1): number => {
    const at = next;
    const bytes = bytesOfRows(1, length, width);
    if (at + bytes > buffer.byteLength) {
      throw new RangeError(
        `The arena holds ${buffer.byteLength - from} bytes, ${buffer.byteLength - at} of them free; a row of ${length} ` +
          `entries needs ${bytes}. Ask for a kernel with more room: bytesOfRows tells how much.`,
      );
    }
    next += bytes;
    if (at < dirty) new Uint8Array(buffer, at, Math.min(dirty, next) - at).fill(0);
    return at;
  };
  const list = <T>(count: number, make: () => T): T[] => {
    const made: T[] = [];
    for (let i = 0; i < count; i++) made.push(make());
    return made;
  };
  const row = (length: number) => new Float64Array(buffer, take(length, 8), length);
  return {
    buffer,
    rows: (count, length) => list(count, () => row(length)),
    bytes: (count, length) => list(count, () => new Uint8Array(buffer, take(length, 1), length)),
    int32: (count, length) => list(count, () => new Int32Array(buffer, take(length, 4), length)),
    addresses: (count, length, width) => list(count, () => take(length, width)),
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
      let own = calendars.get(calendar);
      if (own === undefined) {
        own = tablesOf(calendar, row);
        calendars.set(calendar, own);
        calendars.set(own, own);
      }
      return own;
    },
    get room() {
      return buffer.byteLength - next;
    },
    scratch(bytes) {
      dirty = Math.max(dirty, Math.min(buffer.byteLength, next + bytes));
      return next;
    },
    get clean() {
      return Math.max(next, dirty);
    },
  };
}
