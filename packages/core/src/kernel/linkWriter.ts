import type { Arena } from "./arena.ts";
import type { KernelCalendar } from "./calendar.ts";
import type { LinkRows } from "./linkRows.ts";

const fields = 25;
/** Bytes of scratch that a link takes. */
export const bytesOfLink = 8 * (fields + 1);

/**
 * Writes a link to the scratch of an arena, as packages/core/kernel/assembly/markLink.ts reads it, and answers its address;
 * undefined where the arena has too little left.
 */
export function linkWriter(buffer: ArrayBuffer, arena: Arena): (link: LinkRows) => number | undefined {
  const memory = new Float64Array(buffer, 0, Math.floor(buffer.byteLength / 8));
  const daysOf = (calendar: KernelCalendar) => (calendar.everyDay ? 0 : calendar.days.byteOffset);
  return (link) => {
    if (bytesOfLink > arena.room) return undefined;
    const begin = Math.ceil(arena.scratch(bytesOfLink) / 8);
    const { lagCalendar, own, calendar } = link;
    let next = begin;
    const put = (value: number) => {
      memory[next++] = value;
    };
    put(link.from.byteOffset);
    put(link.fromFinish ? 1 : 0);
    put(link.fromDuration.byteOffset);
    put(daysOf(link.fromCalendar));
    put(link.lags?.byteOffset ?? 0);
    put(link.lag);
    put(link.scale);
    put(daysOf(lagCalendar));
    put(lagCalendar.order.byteOffset);
    put(lagCalendar.last);
    put(link.wait?.byteOffset ?? 0);
    put(daysOf(own));
    put(own.order.byteOffset);
    put(own.last);
    put(link.needed?.byteOffset ?? 0);
    put(link.start.byteOffset);
    put(link.duration.byteOffset);
    put(link.startsWork ? 1 : 0);
    put(daysOf(calendar));
    put(calendar.last);
    put(link.moves.byteOffset);
    put(link.pushed.byteOffset);
    put(link.toFinish ? 1 : 0);
    put(link.fromMoves.byteOffset);
    put(link.fromPushed.byteOffset);
    return 8 * begin;
  };
}
