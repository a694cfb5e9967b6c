import { dayNumber, isoDate } from "../calendar/dates.ts";
import type { Absence, Assumption, Person, Plan, Response } from "./types.ts";

/**
 * The plan with what these people `couldAdd` taken in: their `capacity` is that much greater, and the money is
 * part of the total, once.
 *
 * Until `from` the added part counts as away, beside their own absences, which then take only what was there
 * before; from that day on an absence takes its part of the whole, added part included. So nothing but
 * `capacity` and `away` changes, and every rule about them holds as it stands. (People who go `along` are not
 * limited by absences: for them the added part counts from the start.)
 *
 * What has been added cannot be added again: `couldAdd` is gone.
 *
 * The money stands in the register, as the adopted response `capacity:ID` of a closed entry: it is spent
 * whatever happens, falls due on `from`, and shows by name wherever responses do. Its ids hold a colon, which no
 * written id may.
 *
 * @param ids  People with `couldAdd`; others are left as they are.
 */
export function addCapacity(plan: Plan, ids: ReadonlySet<string>): Plan {
  const taken = plan.people.filter((person) => person.couldAdd !== undefined && ids.has(person.id));
  if (taken.length === 0) return plan;
  const paid = taken.map(
    (person): Assumption => ({
      kind: "assumption",
      id: `extra:${person.id}`,
      name: capacityPayment(person).action,
      probability: 0,
      impacts: [],
      status: "closed",
      responses: [capacityPayment(person)],
    }),
  );
  return {
    ...plan,
    people: plan.people.map((person) => (taken.includes(person) ? extended(person, plan.start) : person)),
    assumptions: [...plan.assumptions, ...paid],
  };
}

function extended(person: Person, start: string): Person {
  const { couldAdd, ...rest } = person;
  const { capacity } = person;
  if (couldAdd === undefined) return person;
  const whole = capacity + couldAdd.capacity;
  const grown: Person = { ...rest, capacity: whole };
  if (couldAdd.from === undefined || couldAdd.from <= start) return grown;
  const eve = isoDate(dayNumber(couldAdd.from) - 1);
  const from = couldAdd.from;
  const before = person.away
    .filter((absence) => absence.from <= eve)
    .map(
      (absence): Absence => ({
        ...absence,
        to: absence.to < eve ? absence.to : eve,
        share: (absence.share * capacity) / whole,
      }),
    );
  const after = person.away
    .filter((absence) => absence.to >= from)
    .map((absence): Absence => ({ ...absence, from: absence.from > from ? absence.from : from }));
  const notYet: Absence = {
    from: start,
    to: eve,
    share: couldAdd.capacity / whole,
    why: "not yet added",
  };
  return { ...grown, away: [notYet, ...before, ...after] };
}

/** The money of what a person `couldAdd`, as the adopted response it is counted as. */
export function capacityPayment(person: Person): Response {
  const { couldAdd } = person;
  return {
    id: `capacity:${person.id}`,
    action: `${couldAdd?.capacity ?? 0} more of ${person.name}`,
    cost: { kind: "fixed", value: couldAdd?.cost ?? 0, unit: "days" },
    adopted: true,
    scale: 1,
    ...(couldAdd?.from === undefined ? {} : { due: couldAdd.from }),
  };
}
