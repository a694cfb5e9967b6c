import { tolerance } from "../../../calendar/tolerance.ts";
import type { Id, RegisterEntry } from "../../../plan/types.ts";
import { idsOf, type Pair } from "../changes/pair.ts";
import { places } from "../changes/places.ts";
import type { Together } from "./together.ts";

/** Groups exclude each other: chances that sum to at most 1, one that has occurred, responses that only narrow. */
export function joinRegister(pair: Pair, { join }: Together): void {
  const { older, newer } = pair;
  const labels = new Set<string>();
  for (const id of idsOf(older.entries, newer.entries)) {
    const versions = versionsOf(pair, id);
    for (const { group } of versions) if (group !== undefined) labels.add(group);
    if (versions.some(({ group }) => group !== undefined)) {
      join([places.odds(id), ...responsePlaces(versions)]);
    }
    // Responses of an entry that comes or goes come and go with it.
    if (versions.length === 1) join([places.entry(id), ...responsePlaces(versions)]);
  }
  for (const label of [...labels].sort()) {
    let sum = 0;
    let occurred = 0;
    const members: string[] = [];
    for (const id of idsOf(older.entries, newer.entries)) {
      const inside = versionsOf(pair, id).filter(({ group }) => group === label);
      if (inside.length === 0) continue;
      sum += Math.max(...inside.map(({ probability }) => probability));
      if (inside.some(({ status }) => status === "occurred")) occurred++;
      members.push(places.odds(id), places.entry(id));
    }
    if (sum > 1 + tolerance || occurred > 1) join(members);
  }
  joinOffers(pair, join);
}

function versionsOf({ older, newer }: Pair, id: Id): RegisterEntry[] {
  return [older.entries.get(id), newer.entries.get(id)].filter((entry) => entry !== undefined);
}

function responsePlaces(versions: readonly RegisterEntry[]): string[] {
  return versions.flatMap((entry) => entry.responses.map(({ id }) => places.response(entry.id, id)));
}

/** What hangs on a response goes with an entry that only one plan has, where the response is one of that entry's. */
function joinOffers(pair: Pair, join: Together["join"]): void {
  const { older, newer } = pair;
  const home = new Map<Id, Set<Id>>();
  for (const { entries } of [older, newer]) {
    for (const { id, responses } of entries.values()) {
      for (const response of responses) {
        const known = home.get(response.id);
        if (known === undefined) home.set(response.id, new Set([id]));
        else known.add(id);
      }
    }
  }
  const with_ = (response: Id | undefined, own: readonly string[]) => {
    if (response === undefined) return;
    for (const entry of home.get(response) ?? []) {
      if (older.entries.has(entry) && newer.entries.has(entry)) continue;
      for (const place of own) join([place, places.entry(entry)]);
    }
  };
  for (const { tasks, entries } of [older, newer]) {
    for (const { id, onlyIf } of tasks.values()) with_(onlyIf, [places.need(id), places.task(id)]);
    for (const { id, onlyIf } of entries.values()) with_(onlyIf, [places.odds(id), places.entry(id)]);
  }
  // The same response under another entry: never twice at once.
  for (const [response, entries] of home) {
    if (entries.size < 2) continue;
    join([...entries].flatMap((entry) => [places.response(entry, response), places.entry(entry)]));
  }
}
