import type { Id } from "../../../plan/types.ts";
import type { MoveKind } from "../../types.ts";
import type { Change } from "../changes/change.ts";
import type { Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import { joinIds } from "./joinIds.ts";
import { joinLinks } from "./joinLinks.ts";
import { joinPeople } from "./joinPeople.ts";
import { joinRegister } from "./joinRegister.ts";
import { joinTasks } from "./joinTasks.ts";
import { together } from "./together.ts";

/** Changes that are taken from the new plan together, or not at all. */
export interface Group {
  places: ReadonlySet<string>;
  changes: Change[];
  kind: MoveKind;
  ids: Id[];
}

/**
 * The changes as groups such that any choice of groups gives a correct plan. One item's changes of one kind are
 * one group; more only where they could contradict each other.
 *
 * @param apart  Further places to be taken together, found when a plan could not be run.
 */
export function groupChanges(
  pair: Pair,
  changes: readonly Change[],
  apart: readonly (readonly string[])[] = [],
): Group[] {
  const all = new Set(changes.flatMap((change) => change.places));
  const sets = together(all);
  for (const change of changes) sets.join(change.places);
  joinLinks(pair, sets);
  joinTasks(pair, sets);
  joinPeople(pair, sets);
  joinRegister(pair, sets);
  joinIds(pair, sets);
  for (const more of apart) sets.join(more);
  joinEntries(pair, sets, all);

  const groups = new Map<string, { places: Set<string>; changes: Change[] }>();
  for (const change of changes) {
    const root = sets.rootOf(change.places[0] ?? "");
    const known = groups.get(root) ?? { places: new Set(), changes: [] };
    groups.set(root, known);
    for (const place of change.places) known.places.add(place);
    known.changes.push(change);
  }
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, group]) => ({
      ...group,
      kind: kindOf(group.changes),
      ids: [...new Set(group.changes.flatMap((change) => change.ids))],
    }));
}

/** An entry's chance and impacts are one item's changes, unless its impacts have to go with a task. */
function joinEntries({ newer }: Pair, sets: ReturnType<typeof together>, all: ReadonlySet<string>): void {
  const size = new Map<string, number>();
  for (const place of all) {
    const root = sets.rootOf(place);
    size.set(root, (size.get(root) ?? 0) + 1);
  }
  for (const id of newer.entries.keys()) {
    const place = places.impacts(id);
    if (all.has(place) && size.get(sets.rootOf(place)) === 1) sets.join([places.odds(id), place]);
  }
}

const order: MoveKind[] = [
  "scope",
  "actuals",
  "logic",
  "people",
  "calendar",
  "risks",
  "estimates",
  "money",
  "other",
];

function kindOf(changes: readonly Change[]): MoveKind {
  const kinds = new Set(changes.map(({ kind }) => kind));
  return order.find((kind) => kinds.has(kind)) ?? "other";
}
