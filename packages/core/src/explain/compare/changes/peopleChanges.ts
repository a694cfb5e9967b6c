import type { Absence, Person } from "../../../plan/types.ts";
import { datesWords, listWords, moneyWords, numberWords, percentWords } from "../words/numbers.ts";
import type { Change } from "./change.ts";
import { idsOf, memberPlace, type Pair, personCalendarPlace } from "./pair.ts";
import { places } from "./places.ts";

/** Changes of the people both plans have: rate, usual share, capacity, calendar, absences. */
export function peopleChanges(pair: Pair): Change[] {
  const { older, newer } = pair;
  return idsOf(older.people, newer.people).flatMap((id): Change[] => {
    const before = older.people.get(id);
    const after = newer.people.get(id);
    if (before === undefined || after === undefined) return [];
    const base = { ids: [id], subject: after.name };
    const list: Change[] = [];
    if (before.rate !== after.rate) {
      const { currency } = newer.plan;
      const text = `rate from ${moneyWords(before.rate, currency)} to ${moneyWords(after.rate, currency)} a day`;
      list.push({ ...base, kind: "money", places: [places.rate(id)], text });
    }
    if (before.share !== after.share && usualShareMatters(pair, id)) {
      const text = `usual share from ${numberWords(before.share)} to ${numberWords(after.share)}`;
      list.push({ ...base, kind: "people", places: [places.usualShare(id)], text });
    }
    const time = timeWords(before, after);
    const place = personCalendarPlace(pair, id);
    if (place === places.availability(id)) time.push(`calendar from ${before.calendar} to ${after.calendar}`);
    for (const text of time) list.push({ ...base, kind: "people", places: [places.availability(id)], text });
    return list;
  });
}

function usualShareMatters(pair: Pair, person: string): boolean {
  return [...pair.newer.tasks.values()].some((task) => {
    const before = pair.older.tasks.get(task.id);
    return before !== undefined && memberPlace(pair, before, task, person) === places.usualShare(person);
  });
}

function timeWords(before: Person, after: Person): string[] {
  const parts: string[] = [];
  if (before.capacity !== after.capacity) {
    parts.push(`capacity from ${numberWords(before.capacity)} to ${numberWords(after.capacity)}`);
  }
  const was = new Map(before.away.map((absence) => [absenceKey(absence), absence]));
  const is = new Map(after.away.map((absence) => [absenceKey(absence), absence]));
  const only = (a: typeof was, b: typeof was) =>
    [...a.keys()]
      .filter((key) => !b.has(key))
      .sort()
      .map((key) => absenceWords(a.get(key) as Absence)); // the key is a's own
  const came = only(is, was);
  const went = only(was, is);
  if (came.length > 0) parts.push(`away ${listWords(came)}`);
  if (went.length > 0) parts.push(`no longer away ${listWords(went)}`);
  return parts;
}

export function absenceKey({ from, to, share }: Absence): string {
  return `${from} ${to} ${share}`;
}

function absenceWords(absence: Absence): string {
  return `${datesWords(absence)}${absence.share === 1 ? "" : ` (${percentWords(absence.share)})`}`;
}
