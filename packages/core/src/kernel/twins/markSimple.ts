import { tolerance } from "../../calendar/tolerance.ts";
import { nextWork, type WorkCalendar } from "../../calendar/workCalendar.ts";

/** movesI = 1 where j moves and starts at the finish of i or at the next work that follows it. */
export function markSimple(
  calendar: WorkCalendar,
  movesI: Uint8Array,
  movesJ: Uint8Array,
  finishI: Float64Array,
  startJ: Float64Array,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    if (movesJ[k] === 0 || movesI[k] === 1) continue;
    const f = finishI[k] as number;
    const s = (startJ[k] as number) - tolerance;
    if (f >= s || (!calendar.everyDay && nextWork(calendar, f) >= s)) movesI[k] = 1;
  }
}
