import { tolerance } from "../calendar/tolerance.ts";
import { finishMoment, lastDay, nextWork, workAt } from "../calendar/workCalendar.ts";
import type { Block } from "./block.ts";
import { keepWhole } from "./keepWhole.ts";
import type { Model, ModelPerson, ModelTask } from "./model.ts";

/** Who already holds what: by person, the tasks placed so far. Shares are constants, so rows need not be copied. */
export interface Capacity {
  people: ModelPerson[];
  held: { task: number; share: number; along: boolean }[][];
}

export function newCapacity(model: Model): Capacity {
  return { people: model.people, held: model.people.map(() => []) };
}

/**
 * Moves task j, in each iteration, to the earliest moment from which every person it names has the share free
 * from its start to its finish. It holds its shares over the non-working days between; full absences are such
 * days, partial ones lower the capacity present, and neither limits people who go along.
 *
 * Each step jumps to the end of an overload that every start before that end would meet too, so no earlier
 * feasible moment is passed over.
 */
export function freeFrom(task: ModelTask, j: number, block: Block, capacity: Capacity): void {
  const start = block.start[j] as Float64Array;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const { calendar } = task;
  for (let k = 0; k < block.n; k++) {
    const d = duration[k] as number;
    if (d <= tolerance) continue;
    for (let h = 0; h < task.holds.length; ) {
      const hold = task.holds[h] as ModelTask["holds"][number];
      const end = overloadEnd(block, capacity, hold, k, start[k] as number, finish[k] as number);
      if (end <= (start[k] as number) + tolerance) {
        h += 1;
        continue;
      }
      const s = nextWork(calendar, end);
      start[k] = s;
      finish[k] = finishMoment(calendar, workAt(calendar, s) + d);
      if (task.unbroken !== undefined) keepWhole(calendar, task.unbroken, start, finish, k, d);
      if ((finish[k] as number) > lastDay) break;
      h = 0;
    }
  }
}

/** The end of an overload inside [s, f) were `hold` added to what its person holds already; 0 when it fits. */
function overloadEnd(
  block: Block,
  capacity: Capacity,
  hold: ModelTask["holds"][number],
  k: number,
  s: number,
  f: number,
): number {
  const person = capacity.people[hold.person] as ModelPerson;
  const held = capacity.held[hold.person] as Capacity["held"][number];
  const room = person.capacity - hold.share + tolerance;
  let end = 0;
  let together = 0;
  for (const other of held) {
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (from >= f - tolerance || to <= s + tolerance || to - from <= tolerance) continue;
    if (other.share > room) {
      if (to > end) end = to;
    } else together += 1;
  }
  const partial = hold.along ? 0 : person.partial.length;
  if (end > 0 || (together < 2 && partial === 0)) return end;
  if (partial === 0 && fitsTogether(block, held, room, k, s, f)) return 0;
  end = loadEndAt(block, capacity, hold, k, s, room);
  if (end > 0) return end;
  for (const other of held) {
    const from = (block.start[other.task] as Float64Array)[k] as number;
    if (from <= s || from >= f - tolerance) continue;
    end = loadEndAt(block, capacity, hold, k, from, room);
    if (end > 0) return end;
  }
  if (hold.along) return 0;
  for (const absence of person.partial) {
    if (absence.from <= s || absence.from >= f - tolerance) continue;
    end = loadEndAt(block, capacity, hold, k, absence.from, room);
    if (end > 0) return end;
  }
  return 0;
}

/** Quick answer: everything that overlaps [s, f) at all, added up, still fits. */
function fitsTogether(
  block: Block,
  held: Capacity["held"][number],
  room: number,
  k: number,
  s: number,
  f: number,
): boolean {
  let sum = 0;
  for (const other of held) {
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (from < f - tolerance && to > s + tolerance && to - from > tolerance) sum += other.share;
  }
  return sum <= room;
}

/** Where the load at moment x leaves no room: the earliest end among what is held there; otherwise 0. */
function loadEndAt(
  block: Block,
  capacity: Capacity,
  hold: ModelTask["holds"][number],
  k: number,
  x: number,
  room: number,
): number {
  const person = capacity.people[hold.person] as ModelPerson;
  let sum = 0;
  let end = Number.POSITIVE_INFINITY;
  for (const other of capacity.held[hold.person] as Capacity["held"][number]) {
    const from = (block.start[other.task] as Float64Array)[k] as number;
    const to = (block.finish[other.task] as Float64Array)[k] as number;
    if (from > x + tolerance || to <= x + tolerance || to - from <= tolerance) continue;
    sum += other.share;
    if (to < end) end = to;
  }
  if (!hold.along) {
    for (const absence of person.partial) {
      if (absence.from > x + tolerance || absence.to <= x + tolerance) continue;
      sum += absence.gone;
      if (absence.to < end) end = absence.to;
    }
  }
  return sum > room ? end : 0;
}
