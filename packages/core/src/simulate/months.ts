import { dayNumber, isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import type { Ledger } from "../kernel/index.ts";
import type { Block } from "./block.ts";
import type { Model, ModelTask } from "./model.ts";
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
 *
 * @param ledger  Of the block's kernel, for as many months as there are rows; what it holds is overwritten.
 */
export function phaseMoney(
  model: Model,
  block: Block,
  ledger: Ledger,
  first: number,
  rows: readonly Float64Array[],
): void {
  ledger.booked.fill(0);
  phaseTasks(model, block, ledger);
  phaseRegister(model, block, ledger);
  phaseResponses(model, block, ledger);
  phaseOverheads(model, block, ledger);
  const { n, kernel } = block;
  rows.forEach((row, m) => {
    const own = bookedIn(ledger, m);
    if (m > 0) kernel.addCost(own, bookedIn(ledger, m - 1), n);
    row.set(own.subarray(0, n), first);
  });
}

/** What is booked in month m. */
function bookedIn({ booked, stride }: Ledger, m: number): Float64Array {
  return booked.subarray(m * stride, (m + 1) * stride);
}

function phaseTasks(model: Model, block: Block, ledger: Ledger): void {
  const { n, scratch: part, scratch2: daily, kernel } = block;
  model.tasks.forEach((task, j) => {
    if (!taskCost(task, j, block, part)) return;
    const due = model.plan.tasks[j]?.due ?? "evenly";
    if (due === "evenly" || task.progress?.spent !== undefined) {
      spread(ledger, model, block, j, part);
      return;
    }
    const perDay = rowOf(task.costPerDay, block);
    const duration = block.duration[j] as Float64Array;
    const needed = block.needed[j];
    const at = (due === "start" ? block.start[j] : block.finish[j]) as Float64Array;
    for (let k = 0; k < n; k++) {
      const rate = (perDay === undefined ? task.costPerDay.value : (perDay[k] as number)) + task.peoplePerDay;
      daily[k] = needed?.[k] === 0 ? 0 : rate * (duration[k] as number);
      part[k] = (part[k] as number) - (daily[k] as number);
    }
    spread(ledger, model, block, j, daily);
    kernel.bookByMonth(ledger, at, part, n);
  });
}

function phaseRegister(model: Model, block: Block, ledger: Ledger): void {
  const { n, scratch: part, kernel } = block;
  model.register.forEach((entry, e) => {
    const occurs = block.occurs[e] as Uint8Array;
    for (const impact of entry.impacts) {
      if (impact.cost === undefined) continue;
      fillAmount(impact.cost, block, part);
      const shares = Math.max(1, impact.tasks.length);
      for (let k = 0; k < n; k++) {
        part[k] = occurs[k] === 0 ? 0 : (entry.scale * (part[k] as number)) / shares;
      }
      if (impact.tasks.length === 0) kernel.bookByMonth(ledger, block.planFinish, part, n);
      for (const j of impact.tasks) spread(ledger, model, block, j, part);
    }
  });
}

function phaseResponses(model: Model, block: Block, ledger: Ledger): void {
  const { n, scratch: part, scratch2: due, kernel } = block;
  for (const response of model.responses) {
    fillAmount(response.cost, block, part);
    kernel.bookByMonth(ledger, due.fill(response.dueDay, 0, n), part, n);
  }
}

function phaseOverheads(model: Model, block: Block, ledger: Ledger): void {
  const { n, scratch: part, scratch2: zero, kernel } = block;
  for (const overhead of model.overheads) {
    fillAmount(overhead.perDay, block, part);
    const to = overhead.to < 0 ? block.planFinish : (block.finish[overhead.to] as Float64Array);
    const from = overhead.from < 0 ? zero.fill(0, 0, n) : (block.start[overhead.from] as Float64Array);
    kernel.spreadByMonth(kernel.arena.calendar(model.planCalendar), ledger, from, to, part, "daily", n);
  }
}

/** Amounts evenly over the work of task j. */
function spread(ledger: Ledger, model: Model, block: Block, j: number, amounts: Float64Array): void {
  const { kernel, n } = block;
  kernel.spreadByMonth(
    kernel.arena.calendar((model.tasks[j] as ModelTask).calendar),
    ledger,
    block.start[j] as Float64Array,
    block.finish[j] as Float64Array,
    amounts,
    "whole",
    n,
  );
}

/** Money released by the end of each month. */
export function releasedBy(model: Model, months: Months): number[] {
  const { funds } = model.plan.commitment;
  return Array.from(months.ends, (end) =>
    funds.reduce((sum, fund) => sum + (fund.from < isoDate(model.startDay + end) ? fund.amount : 0), 0),
  );
}
