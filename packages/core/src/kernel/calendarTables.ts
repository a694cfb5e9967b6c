import type { WorkCalendar } from "../calendar/workCalendar.ts";
import type { TablesOf } from "./arena.ts";
import type { KernelCalendar } from "./calendar.ts";
import type { KernelExports } from "./exports.ts";

const none = new Float64Array(0);

/** A calendar without tables: for every day, or for the plain kernel, which reads the calendar itself. */
export function withoutTables(calendar: WorkCalendar): KernelCalendar {
  return { ...calendar, days: none, order: none, gap: 0, end: 0 };
}

/** Tables of 0.9 MB, spread out in WebAssembly: cheap even the first time, when a loop in TypeScript is still slow. */
export function tablesBy(wasm: KernelExports): TablesOf {
  return (calendar, row) => {
    const { cum, nth, last, everyDay } = calendar;
    if (everyDay) return withoutTables(calendar);
    const days = row(2 * cum.length);
    const order = row(nth.length);
    new Int32Array(order.buffer, order.byteOffset + 4 * nth.length, nth.length).set(nth);
    new Int32Array(days.buffer, days.byteOffset + 12 * cum.length, cum.length).set(cum);
    const gap = wasm.fillCalendar(days.byteOffset, cum.length, order.byteOffset, nth.length);
    return { ...calendar, days, order, gap: gap + 1, end: last > 0 ? (nth[last - 1] as number) : -1 };
  };
}
