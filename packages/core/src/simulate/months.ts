import { dayNumber, isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import { type WorkCalendar, workAt } from "../calendar/workCalendar.ts";
import type { Block } from "./block.ts";
import type { Model } from "./model.ts";
import { fillAmount, rowOf, taskCost } from "./money.ts";

/** Calendar months from the plan's start: `ends[m]` is the moment month m ends, in days since start. */
export interface Months {
  names: string[];
  ends: Float64Array;
  /** By day since start, up to the end of the last month: the month that a moment not after it falls in. */
  byDay: Uint8Array;
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
  const byDay = new Uint8Array((ends[ends.length - 1] as number) + 1);
  for (let day = 0, m = 0; day < byDay.length; day++) {
    if (day > (ends[m] as number)) m++;
    byDay[day] = m;
  }
  return { names, ends: Float64Array.from(ends), byDay };
}

/**
 * When the money falls due: `rows[m][first + k]` becomes what iteration k has cost by the end of month m.
 *
 * Daily money falls due over the work; a task's `cost` evenly over it, or at its start or finish (`due`); a
 * register cost evenly over the tasks it names, in equal parts (at the plan's finish when it names none); an
 * adopted response's on its `due` date, else at the start; overheads over their span. Work done after the last
 * month counts to the last, so the last row is the total.
 *
 * Each amount is booked to the months it falls in; one pass at the end adds the months up.
 */
export function phaseMoney(
  model: Model,
  block: Block,
  months: Months,
  first: number,
  rows: Float64Array[],
): void {
  const { n, scratch: part } = block;
  const ledger: Ledger = { ...months, model, block, first, rows };
  model.tasks.forEach((task, j) => {
    if (!taskCost(task, j, block, part)) return;
    const due = model.plan.tasks[j]?.due ?? "evenly";
    if (due === "evenly" || task.progress?.spent !== undefined) {
      for (let k = 0; k < n; k++) spread(ledger, j, k, part[k] as number);
      return;
    }
    const perDay = rowOf(task.costPerDay, block);
    const duration = block.duration[j] as Float64Array;
    const at = (due === "start" ? block.start[j] : block.finish[j]) as Float64Array;
    for (let k = 0; k < n; k++) {
      const rate = (perDay === undefined ? task.costPerDay.value : (perDay[k] as number)) + task.peoplePerDay;
      const daily = block.needed[j]?.[k] === 0 ? 0 : rate * (duration[k] as number);
      spread(ledger, j, k, daily);
      book(ledger, k, at[k] as number, (part[k] as number) - daily);
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
        if (impact.tasks.length === 0) book(ledger, k, block.planFinish[k] as number, amount);
        for (const j of impact.tasks) spread(ledger, j, k, amount / impact.tasks.length);
      }
    }
  });
  for (const response of model.responses) {
    fillAmount(response.cost, block, part);
    for (let k = 0; k < n; k++) book(ledger, k, response.dueDay, part[k] as number);
  }
  for (const overhead of model.overheads) {
    fillAmount(overhead.perDay, block, part);
    const to = overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array);
    const from = overhead.from < 0 ? undefined : (block.start[overhead.from] as Float64Array);
    for (let k = 0; k < n; k++) {
      const s = from === undefined ? 0 : (from[k] as number);
      overWork(ledger, model.planCalendar, s, to[k] as number, k, part[k] as number);
    }
  }
  for (let m = 1; m < rows.length; m++) {
    const before = rows[m - 1] as Float64Array;
    const row = rows[m] as Float64Array;
    for (let k = first; k < first + n; k++) row[k] = (row[k] as number) + (before[k] as number);
  }
}

interface Ledger extends Months {
  model: Model;
  block: Block;
  first: number;
  rows: Float64Array[];
}

/** The first month that does not end before t; the last takes the rest. Months end with days, so the day decides. */
function monthOf({ byDay, ends }: Months, t: number): number {
  const day = Math.ceil(t - tolerance);
  if (day <= 0) return 0;
  return day < byDay.length ? (byDay[day] as number) : ends.length - 1;
}

/** One amount at one moment. */
function book(ledger: Ledger, k: number, t: number, amount: number): void {
  const row = ledger.rows[monthOf(ledger, t)] as Float64Array;
  row[ledger.first + k] = (row[ledger.first + k] as number) + amount;
}

/** An amount evenly over the work of task j. */
function spread(ledger: Ledger, j: number, k: number, amount: number): void {
  if (amount === 0) return;
  const { block, model } = ledger;
  const s = (block.start[j] as Float64Array)[k] as number;
  const f = (block.finish[j] as Float64Array)[k] as number;
  const { calendar } = model.tasks[j] as Model["tasks"][number];
  const all = f - s <= tolerance ? 0 : workAt(calendar, f) - workAt(calendar, s);
  if (all <= tolerance) book(ledger, k, f, amount);
  else overWork(ledger, calendar, s, f, k, amount / all);
}

/** `rate` money for each working day of the calendar in [s, f], to the months the days fall in. */
function overWork(
  ledger: Ledger,
  calendar: WorkCalendar,
  s: number,
  f: number,
  k: number,
  rate: number,
): void {
  const { ends, rows, first } = ledger;
  const last = ends.length - 1;
  let done = workAt(calendar, s);
  for (let m = monthOf(ledger, s); m <= last; m++) {
    const end = m < last && (ends[m] as number) < f ? (ends[m] as number) : f;
    const upTo = workAt(calendar, end);
    const row = rows[m] as Float64Array;
    if (upTo > done) row[first + k] = (row[first + k] as number) + rate * (upTo - done);
    done = upTo > done ? upTo : done;
    if (end >= f) return;
  }
}

/** Money released by the end of each month. */
export function releasedBy(model: Model, months: Months): number[] {
  const { funds } = model.plan.commitment;
  return Array.from(months.ends, (end) =>
    funds.reduce((sum, fund) => sum + (fund.from < isoDate(model.startDay + end) ? fund.amount : 0), 0),
  );
}
