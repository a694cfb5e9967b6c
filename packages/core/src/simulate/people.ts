import { tolerance } from "../calendar/tolerance.ts";
import { finishMoment, lastDay, nextWork, workAt } from "../calendar/workCalendar.ts";
import type { Block } from "./block.ts";
import { keepWhole } from "./keepWhole.ts";
import type { Model, ModelPerson, ModelTask } from "./model.ts";
import { type Rival, rivalsOf } from "./rivals.ts";

/** Who may hold what while a task wants it: by task and hold. */
export interface Capacity {
  people: ModelPerson[];
  rivals: Rival[][][];
}

export function newCapacity(model: Model): Capacity {
  return { people: model.people, rivals: rivalsOf(model) };
}

/** A share that a task wants of a person who may have too little left, with the rows of those who may hold the rest. */
interface Wanted {
  /** What the others may hold together. */
  room: number;
  shares: number[];
  starts: Float64Array[];
  finishes: Float64Array[];
  /** Absences that count: none for who goes along. */
  partial: ModelPerson["partial"];
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
  const wanted = wantedBy(task, j, block, capacity);
  if (wanted.length === 0) return;
  const start = block.start[j] as Float64Array;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const { calendar } = task;
  for (let k = 0; k < block.n; k++) {
    const d = duration[k] as number;
    if (d <= tolerance) continue;
    for (let h = 0; h < wanted.length; ) {
      const end = overloadEnd(wanted[h] as Wanted, k, start[k] as number, finish[k] as number);
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

/** Shares that can be missing at all: somebody may hold some of the person, or a part of the person may be away. */
function wantedBy(task: ModelTask, j: number, block: Block, { people, rivals }: Capacity): Wanted[] {
  return task.holds.flatMap((hold, h): Wanted[] => {
    const person = people[hold.person] as ModelPerson;
    const others = rivals[j]?.[h] ?? [];
    const partial = hold.along ? [] : person.partial;
    if (others.length === 0 && partial.length === 0) return [];
    return [
      {
        room: person.capacity - hold.share + tolerance,
        shares: others.map(({ share }) => share),
        starts: others.map((other) => block.start[other.task] as Float64Array),
        finishes: others.map((other) => block.finish[other.task] as Float64Array),
        partial,
      },
    ];
  });
}

/** The end of an overload inside [s, f) were the share added to what its person holds already; 0 when it fits. */
function overloadEnd(wanted: Wanted, k: number, s: number, f: number): number {
  const { room, shares, starts, finishes, partial } = wanted;
  let end = 0;
  let together = 0;
  let sum = 0;
  for (let i = 0; i < shares.length; i++) {
    const from = (starts[i] as Float64Array)[k] as number;
    const to = (finishes[i] as Float64Array)[k] as number;
    if (from >= f - tolerance || to <= s + tolerance || to - from <= tolerance) continue;
    const share = shares[i] as number;
    if (share > room) {
      if (to > end) end = to;
    } else {
      together += 1;
      sum += share;
    }
  }
  // Everything that overlaps [s, f) at all, added up, still fits: the quick answer.
  if (end > 0 || (partial.length === 0 && (together < 2 || sum <= room))) return end;
  end = loadEndAt(wanted, k, s);
  if (end > 0) return end;
  for (const row of starts) {
    const from = row[k] as number;
    if (from <= s || from >= f - tolerance) continue;
    end = loadEndAt(wanted, k, from);
    if (end > 0) return end;
  }
  for (const absence of partial) {
    if (absence.from <= s || absence.from >= f - tolerance) continue;
    end = loadEndAt(wanted, k, absence.from);
    if (end > 0) return end;
  }
  return 0;
}

/** Where the load at moment x leaves no room: the earliest end among what is held there; otherwise 0. */
function loadEndAt({ room, shares, starts, finishes, partial }: Wanted, k: number, x: number): number {
  let sum = 0;
  let end = Number.POSITIVE_INFINITY;
  for (let i = 0; i < shares.length; i++) {
    const from = (starts[i] as Float64Array)[k] as number;
    const to = (finishes[i] as Float64Array)[k] as number;
    if (from > x + tolerance || to <= x + tolerance || to - from <= tolerance) continue;
    sum += shares[i] as number;
    if (to < end) end = to;
  }
  for (const absence of partial) {
    if (absence.from > x + tolerance || absence.to <= x + tolerance) continue;
    sum += absence.gone;
    if (absence.to < end) end = absence.to;
  }
  return sum > room ? end : 0;
}
