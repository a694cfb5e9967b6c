import { formatDate } from "@leeway/charts";

/** A moment of the reader's own clock: "today at 14:03", "18 Nov 2026 at 9:15". */
export function momentWords(ms: number, now = Date.now()): string {
  const at = new Date(ms);
  const time = `${at.getHours()}:${String(at.getMinutes()).padStart(2, "0")}`;
  const day = isoOf(at);
  return `${day === isoOf(new Date(now)) ? "today" : formatDate(day)} at ${time}`;
}

function isoOf(date: Date): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
