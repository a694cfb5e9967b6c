import type { Arena } from "./arena.ts";
import { bytesOfPeople, type PartAway, type SharedPerson, type WantedShare } from "./peopleLists.ts";

/** Writes what the kernel reads about people to the scratch of an arena, as packages/core/kernel/assembly/people.ts reads it. */
export interface PeopleWriter {
  /** The list's address; undefined where the arena has too little left. */
  wanted(list: readonly WantedShare[]): number | undefined;
  shared(person: SharedPerson): number | undefined;
}

export function peopleWriter(buffer: ArrayBuffer, arena: Arena): PeopleWriter {
  const memory = new Float64Array(buffer, 0, Math.floor(buffer.byteLength / 8));
  let next = 0;
  /** Makes the address a whole number of doubles. */
  const begin = (holds: number, others: number, absences: number): number | undefined => {
    const bytes = bytesOfPeople(holds, others, absences) + 8;
    if (bytes > arena.room) return undefined;
    next = Math.ceil(arena.scratch(bytes) / 8);
    return 8 * next;
  };
  const put = (value: number) => {
    memory[next++] = value;
  };
  const putAbsences = (partial: readonly PartAway[]) => {
    for (const { from, to, gone } of partial) {
      put(from);
      put(to);
      put(gone);
    }
  };
  return {
    wanted(list) {
      let others = 0;
      let absences = 0;
      for (const { shares, partial } of list) {
        others += shares.length;
        absences += partial.length;
      }
      const at = begin(list.length, others, absences);
      if (at === undefined) return undefined;
      for (const { room, shares, starts, finishes, partial } of list) {
        put(room);
        put(shares.length);
        put(partial.length);
        for (let i = 0; i < shares.length; i++) {
          put(shares[i] as number);
          put((starts[i] as Float64Array).byteOffset);
          put((finishes[i] as Float64Array).byteOffset);
        }
        putAbsences(partial);
      }
      return at;
    },
    shared({ share, capacity, sharers, partial }) {
      const at = begin(1, sharers.length, partial.length);
      if (at === undefined) return undefined;
      put(share);
      put(capacity);
      put(sharers.length);
      put(partial.length);
      for (const sharer of sharers) {
        put(sharer.share);
        put(sharer.before ? 1 : 0);
        put(sharer.frees ? 1 : 0);
        put(sharer.start.byteOffset);
        put(sharer.finish.byteOffset);
        put(sharer.duration.byteOffset);
        put(sharer.moves.byteOffset);
        put(sharer.pushed.byteOffset);
        put(sharer.calendar.everyDay ? 0 : sharer.calendar.days.byteOffset);
      }
      putAbsences(partial);
      return at;
    },
  };
}
