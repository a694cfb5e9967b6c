import { tolerance } from "../calendar/tolerance.ts";
import { lastDay } from "../calendar/workCalendar.ts";
import type { WantedShare } from "../kernel/index.ts";
import { freeFrom as freeStepwise } from "../kernel/twins/freeFrom.ts";
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
  const { kernel, n } = block;
  const start = block.start[j] as Float64Array;
  const finish = block.finish[j] as Float64Array;
  const duration = block.duration[j] as Float64Array;
  const { unbroken } = task;
  if (unbroken === undefined) {
    const calendar = kernel.arena.calendar(task.calendar);
    kernel.freeFrom(calendar, wanted, start, finish, duration, lastDay, n);
    return;
  }
  // Work that spans no day off is moved further by each step.
  freeStepwise(task.calendar, wanted, start, finish, duration, lastDay, n, (k, d) => {
    keepWhole(task.calendar, unbroken, start, finish, k, d);
  });
}

/** Shares that can be missing at all: somebody may hold some of the person, or a part of the person may be away. */
function wantedBy(task: ModelTask, j: number, block: Block, { people, rivals }: Capacity): WantedShare[] {
  return task.holds.flatMap((hold, h): WantedShare[] => {
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
