import type { Forecast } from "@leeway/core";
import { valueAt } from "../../curves/interpolate.ts";
import { askedDay } from "../../dates/askedDay.ts";
import { calendarTicks } from "../../dates/calendarTicks.ts";
import { finishDate } from "../../dates/dayToIso.ts";
import { arrangeDots } from "../../dots/arrangeDots.ts";
import { textWidth } from "../../draw/textWidth.ts";
import { formatDate } from "../../words/formatDate.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { arrangeLabels } from "./arrangeLabels.ts";
import { escapeHtml } from "./escapeHtml.ts";

const count = 50;
const width = 350;
const room = 58;
const size = 11.7;

interface Mark {
  role: "committed" | "written" | "asked";
  name: string;
  date: string;
  day: number;
}

/**
 * Fifty ways it could go, small enough for a page of text, as SVG text that takes its colours from the page (`--ink`,
 * `--committed` ...). Dots made by the committed date are full, the others rings; what is marked has its name beside it.
 *
 * Source: as `fiftyFutures`, which draws the same fifty.
 */
export function futuresStrip(forecast: Forecast): string {
  const { finish, committed, asWritten, asked, plan, iterations } = forecast;
  const end = (day: number) => Math.ceil(day - 1e-9);
  const due = end(committed.day);
  const days = Array.from({ length: count }, (_, k) => valueAt(finish.curve, (k + 0.5) / count)).map((day) =>
    Number.isFinite(day) ? end(day) : due,
  );
  const madeBy = (day: number) => days.filter((each) => each <= end(day)).length;
  const marks: Mark[] = [
    { role: "written", name: "As written", date: asWritten.finish, day: end(asWritten.day) },
    ...(asked.finishBy === undefined
      ? []
      : [{ role: "asked" as const, name: "Asked for", date: asked.finishBy, day: end(askedDay(forecast)) }]),
    { role: "committed", name: "Committed", date: committed.date, day: due },
  ];
  const first = days[0] ?? due;
  const last = days[count - 1] ?? due;
  const own = Math.max(last - first, 14);
  const near = marks.filter(({ day }) => Math.max(last, day) - Math.min(first, day) <= 2.5 * own);
  const from = Math.min(first - 1, ...near.map(({ day }) => day - own * 0.03));
  const to = Math.max(last, ...near.map(({ day }) => day + own * 0.03));
  const dots = arrangeDots(days, due, from, to, width - 4, room);
  const x = (day: number) => 2 + ((day - dots.from) / (dots.to - dots.from)) * (width - 4);
  const inside = (day: number) => x(Math.max(dots.from, Math.min(dots.to, day)));
  const rows = arrangeLabels(
    marks.map((mark) => {
      const words = `${mark.name} ${formatDate(mark.date, "shortest")}: ${madeBy(mark.day)} of ${count}`;
      return { ...mark, words, at: inside(mark.day), wide: textWidth(words, size) };
    }),
    width,
  );
  const top = rows.length * 14 + 4;
  const base = top + Math.max(24, dots.height + 2);
  const radius = Math.max(1.2, dots.pitch / 2 - 0.8);
  const num = (value: number) => String(Math.round(value * 100) / 100);
  const poles = rows.map(({ role, at }, row) => {
    const x0 = num(at);
    return `<line x1="${x0}" x2="${x0}" y1="${row * 14 + 4}" y2="${num(base)}" class="${role}"/>`;
  });
  const labels = rows.map(({ role, words, at, left }, row) => {
    const place = left ? `x="${Math.round(at - 4)}" text-anchor="end"` : `x="${Math.round(at + 4)}"`;
    return `<text ${place} y="${row * 14 + 11}" class="${role}">${escapeHtml(words)}</text>`;
  });
  const points = dots.dots.map((dot, k) => {
    const place = `cx="${num(2 + dot.x)}" cy="${num(base - 1 - dot.y)}"`;
    return (days[k] ?? 0) <= due
      ? `<circle ${place} r="${num(radius)}" class="made"/>`
      : `<circle ${place} r="${num(Math.max(0.8, radius - 0.5))}" class="missed"/>`;
  });
  const summary = `${count} dots on a calendar stand for ${groupDigits(iterations)} futures, from ${formatDate(finishDate(plan.start, first))} to ${formatDate(finishDate(plan.start, last))}: ${marks
    .map(({ name, date, day }) => `${name.toLowerCase()} ${formatDate(date)}, made by ${madeBy(day)}`)
    .join("; ")}.`;
  const height = base + 32;
  return `<svg class="futures" viewBox="0 0 ${width} ${num(height)}" role="img" aria-label="${escapeHtml(summary)}">${poles.join("")}${points.join("")}${axis(plan.start, dots.from, dots.to, x, base)}${labels.join("")}</svg>`;
}

function axis(start: string, from: number, to: number, x: (day: number) => number, y: number): string {
  const parts = [`<line x1="2" x2="${width - 2}" y1="${y}" y2="${y}" class="axis"/>`];
  let free = Number.NEGATIVE_INFINITY;
  let freeBelow = Number.NEGATIVE_INFINITY;
  for (const { day, label: words, below } of calendarTicks(start, from, to, Math.floor(width / 52))) {
    const at = Math.round(x(day) * 100) / 100;
    parts.push(`<line x1="${at}" x2="${at}" y1="${y}" y2="${y + 4}" class="axis"/>`);
    const begins = at + 3;
    if (words === "" || begins < free || begins + textWidth(words, size) > width) continue;
    free = begins + textWidth(words, size) + 5;
    parts.push(`<text x="${begins}" y="${y + 15}" class="quiet">${escapeHtml(words)}</text>`);
    if (below === "" || begins < freeBelow || begins + textWidth(below, size) > width) continue;
    freeBelow = begins + textWidth(below, size) + 5;
    parts.push(`<text x="${begins}" y="${y + 28}" class="quiet">${escapeHtml(below)}</text>`);
  }
  return parts.join("");
}
