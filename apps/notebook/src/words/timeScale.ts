import { dayToIso, isoToMs } from "@leeway/charts";
import type { Forecast } from "@leeway/core";

/** Days since the plan's start laid out on a line from 0 to 100 per cent, with the months that begin on it. */
export interface TimeScale {
  at(day: number): string;
  width(from: number, to: number): string;
  months: { name: string; day: number }[];
}

const monthLetters = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** From the start to just past the latest thing drawn: a task's P90, the committed date, the date asked for. */
export function calendarSpan(forecast: Forecast): TimeScale {
  let last = Math.max(forecast.committed.day, forecast.asked.finishByDay ?? 0);
  for (const task of forecast.tasks) last = Math.max(last, task.finish.p90);
  const days = Math.max(1, last * 1.01);
  const percent = (share: number): string => `${Math.round(Math.max(0, Math.min(1, share)) * 10000) / 100}%`;
  return {
    at: (day) => percent(day / days),
    width: (from, to) => percent((to - from) / days),
    months: monthsWithin(forecast.plan.start, days),
  };
}

/** First days of months: every month while there are few, else every second, third, sixth or twelfth. */
function monthsWithin(start: string, days: number): { name: string; day: number }[] {
  const every = [1, 2, 3, 6, 12].find((step) => days / (30.4 * step) <= 12) ?? 12;
  const startMs = isoToMs(start);
  const [year = 2000, month = 1] = start.split("-").map(Number);
  const found: { name: string; day: number }[] = [];
  for (let ahead = 0; ahead < 1300; ahead++) {
    const index = month - 1 + ahead;
    const iso = `${String(year + Math.floor(index / 12)).padStart(4, "0")}-${String((index % 12) + 1).padStart(2, "0")}-01`;
    const day = (isoToMs(iso) - startMs) / 86_400_000;
    if (day > days) break;
    if (day < 0 || (index % 12) % every !== 0) continue;
    const name = monthLetters[index % 12] ?? "";
    found.push({ name: index % 12 === 0 || every === 12 ? dayToIso(iso, 0).slice(0, 4) : name, day });
  }
  return found;
}
