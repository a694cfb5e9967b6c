import { dayNumber, isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { workAt } from "../calendar/workCalendar.ts";
import type { Block } from "./block.ts";
import type { Model } from "./model.ts";
import { fillAmount, rowOf, taskCost } from "./money.ts";

/** Calendar months from the plan's start: `ends[m]` is the moment month m ends, in days since start. */
export interface Months {
  names: string[];
  ends: Float64Array;
}

/** Months from the start to the one that holds `lastMoment`, 240 at most (the last then takes the rest). */
export function monthsUpTo(model: Model, lastMoment: number): Months {
  const names: string[] = [];
  const ends: number[] = [];
  let year = Number(model.plan.start.slice(0, 4));
  let month = Number(model.plan.start.slice(5, 7));
  while (names.length < 240) {
    names.push(`${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}`);
    month += 1;
    if (month > 12) {
      month = 1;
      year += 1;
    }
    const next = dayNumber(`${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-01`);
    ends.push(next - model.startDay);
    if (next - model.startDay >= lastMoment - tolerance) break;
  }
  return { names, ends: Float64Array.from(ends) };
}

/**
 * When the money falls due: adds to `rows[m][first + k]` what iteration k has cost by the end of month m.
 *
 * Daily money falls due over the work; a task's `cost` evenly over it, or at its start or finish (`due`); a
 * register cost evenly over the tasks it names, in equal parts (at the plan's finish when it names none); an
 * adopted response's on its `due` date, else at the start; overheads over their span. Work done after the last
 * month counts to the last, so the last row is the total.
 */
export function phaseMoney(
  model: Model,
  block: Block,
  months: Months,
  first: number,
  rows: Float64Array[],
): void {
  const { n } = block;
  const part = new Float64Array(n);
  const count = months.ends.length;
  const spread = (j: number, k: number, amount: number, due: "evenly" | "start" | "finish") => {
    if (amount === 0) return;
    const task = model.tasks[j] as Model["tasks"][number];
    const s = (block.start[j] as Float64Array)[k] as number;
    const f = (block.finish[j] as Float64Array)[k] as number;
    if (due !== "evenly" || f - s <= tolerance) {
      book(k, due === "start" ? s : f, amount);
      return;
    }
    const from = workAt(task.calendar, s);
    const all = workAt(task.calendar, f) - from;
    if (all <= tolerance) {
      book(k, f, amount);
      return;
    }
    for (let m = monthOf(s); m < count; m++) {
      const end = m === count - 1 ? f : Math.min(f, months.ends[m] as number);
      const done = Math.max(0, workAt(task.calendar, end) - from) / all;
      const row = rows[m] as Float64Array;
      row[first + k] = (row[first + k] as number) + amount * (done > 1 ? 1 : done);
    }
  };
  const monthOf = (t: number) => {
    let m = 0;
    while (m < count - 1 && (months.ends[m] as number) < t - tolerance) m++;
    return m;
  };
  const book = (k: number, t: number, amount: number) => {
    for (let m = monthOf(t); m < count; m++) {
      const row = rows[m] as Float64Array;
      row[first + k] = (row[first + k] as number) + amount;
    }
  };
  model.tasks.forEach((task, j) => {
    if (!taskCost(task, j, block, part)) return;
    const due = model.plan.tasks[j]?.due ?? "evenly";
    const perDay = rowOf(task.costPerDay, block);
    const duration = block.duration[j] as Float64Array;
    for (let k = 0; k < n; k++) {
      const total = part[k] as number;
      if (due === "evenly" || task.progress?.spent !== undefined) {
        spread(j, k, total, "evenly");
        continue;
      }
      const rate = (perDay === undefined ? task.costPerDay.value : (perDay[k] as number)) + task.peoplePerDay;
      const daily = block.needed[j]?.[k] === 0 ? 0 : rate * (duration[k] as number);
      spread(j, k, daily, "evenly");
      spread(j, k, total - daily, due);
    }
  });
  model.register.forEach((entry, e) => {
    const occurs = block.occurs[e] as Uint8Array;
    for (const impact of entry.impacts) {
      if (impact.cost === undefined) continue;
      fillAmount(impact.cost, block, part);
      for (let k = 0; k < n; k++) {
        if (occurs[k] === 0) continue;
        const amount = entry.scale * (part[k] as number);
        if (impact.tasks.length === 0) book(k, block.planFinish[k] as number, amount);
        for (const j of impact.tasks) spread(j, k, amount / impact.tasks.length, "evenly");
      }
    }
  });
  for (const response of model.responses) {
    fillAmount(response.cost, block, part);
    for (let k = 0; k < n; k++) book(k, response.dueDay, part[k] as number);
  }
  for (const overhead of model.overheads) {
    fillAmount(overhead.perDay, block, part);
    for (let k = 0; k < n; k++) {
      const s = overhead.from < 0 ? 0 : ((block.start[overhead.from] as Float64Array)[k] as number);
      const row = overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array);
      const f = row[k] as number;
      const from = workAt(model.planCalendar, s);
      for (let m = monthOf(s); m < count; m++) {
        const end = m === count - 1 ? f : Math.min(f, months.ends[m] as number);
        const days = workAt(model.planCalendar, end) - from;
        const into = rows[m] as Float64Array;
        if (days > 0) into[first + k] = (into[first + k] as number) + days * (part[k] as number);
      }
    }
  }
}

/** Money released by the end of each month. */
export function releasedBy(model: Model, months: Months): number[] {
  const { funds } = model.plan.commitment;
  return Array.from(months.ends, (end) =>
    funds.reduce((sum, fund) => sum + (fund.from < isoDate(model.startDay + end) ? fund.amount : 0), 0),
  );
}
