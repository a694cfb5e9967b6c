import { tolerance } from "../../calendar/tolerance.ts";
import { nextWork, type WorkCalendar } from "../../calendar/workCalendar.ts";

/**
 * moves = 1 where the plan's finish is not after the finish, or not after the next work that follows it (work that ends
 * as its calendar pauses goes on, once moved, after the pause); else 0.
 */
export function markFinish(
  calendar: WorkCalendar,
  planFinish: Float64Array,
  finish: Float64Array,
  moves: Uint8Array,
  n: number,
): void {
  for (let k = 0; k < n; k++) {
    const f = finish[k] as number;
    const p = (planFinish[k] as number) - tolerance;
    moves[k] = f >= p || (!calendar.everyDay && nextWork(calendar, f) >= p) ? 1 : 0;
  }
}
