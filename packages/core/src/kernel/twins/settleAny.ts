import { tolerance } from "../../calendar/tolerance.ts";
import { addWork, finishMoment, nextWork, startMoment, workAt } from "../../calendar/workCalendar.ts";
import type { AnyWork } from "../anyWork.ts";

/** Start and finish in every case: waits, required finishes, tasks not needed, milestones; the largest finish. */
export function settleAny(work: AnyWork, n: number): number {
  const { calendar, own, lower, upper, needed, wait: waits, duration, start, finish } = work;
  const { notBefore, floor, statusFloor, startsWork } = work;
  let latest = 0;
  for (let k = 0; k < n; k++) {
    let s = lower[k] as number;
    let b = upper === undefined ? 0 : (upper[k] as number);
    let f: number;
    if (needed !== undefined && needed[k] === 0) {
      s = Math.max(s, b, statusFloor);
      f = s;
    } else {
      if (notBefore > s) s = notBefore;
      const wait = waits === undefined ? 0 : (waits[k] as number);
      if (wait > tolerance) {
        s = addWork(own, s, wait);
        if (upper !== undefined) b = addWork(own, b, wait);
      }
      if (floor > s) s = floor;
      const d = duration[k] as number;
      if (startsWork) {
        s = nextWork(calendar, s > b ? s : b);
        f = s;
      } else if (d <= tolerance) {
        s = s > b ? s : b;
        f = s;
      } else {
        let w = workAt(calendar, s);
        if (upper !== undefined && workAt(calendar, b) - d > w) w = workAt(calendar, b) - d;
        s = startMoment(calendar, w);
        f = finishMoment(calendar, w + d);
      }
    }
    start[k] = s;
    finish[k] = f;
    if (f > latest) latest = f;
  }
  return latest;
}
