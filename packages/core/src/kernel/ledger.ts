import { type Arena, bytesOfRows } from "./arena.ts";

/** What falls due by calendar month in a block of iterations, in an arena. */
export interface Ledger {
  /** When each month ends, in days since the plan's start; the last takes the rest. */
  readonly ends: Float64Array;
  /** By day since start, up to the end of the last month: the month that a moment not after it falls in. */
  readonly byDay: Uint8Array;
  /** Month m of iteration k at entry m * stride + k. */
  readonly booked: Float64Array;
  readonly stride: number;
}

/** Bytes that a ledger takes in an arena. */
export function bytesOfLedger(months: { ends: Float64Array; byDay: Uint8Array }, stride: number): number {
  const { length } = months.ends;
  return (
    bytesOfRows(1, length, 8) + bytesOfRows(1, months.byDay.length, 1) + bytesOfRows(1, length * stride, 8)
  );
}

/** A ledger for `stride` iterations in which nothing is booked. */
export function newLedger(
  arena: Arena,
  months: { ends: Float64Array; byDay: Uint8Array },
  stride: number,
): Ledger {
  const [ends, booked] = [
    ...arena.rows(1, months.ends.length),
    ...arena.rows(1, months.ends.length * stride),
  ] as [Float64Array, Float64Array];
  const [byDay] = arena.bytes(1, months.byDay.length) as [Uint8Array];
  ends.set(months.ends);
  byDay.set(months.byDay);
  return { ends, byDay, booked, stride };
}
