import type { Id } from "../../plan/types.ts";
import type { Pair, Side } from "./changes/pair.ts";
import type { Player } from "./gather.ts";

/**
 * About how many tasks have to be placed again when each player's groups change: those it touches and all that follow
 * them. It only decides in which order hybrids are run (every other one differs from the one before by the first
 * player), never a number.
 */
export function reachOfPlayers(pair: Pair, players: readonly Player[]): number[] {
  const followers = followersOf(pair);
  const all = new Set([...pair.older.tasks.keys(), ...pair.newer.tasks.keys()]).size;
  return players.map(({ groups }) => {
    const reached = new Set<Id>();
    for (const place of groups.flatMap((group) => [...group.places])) {
      const touched = touchedBy(pair, place);
      if (touched === undefined) return all;
      const queue = [...touched];
      for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
        if (reached.has(id)) continue;
        reached.add(id);
        queue.push(...(followers.get(id) ?? []));
      }
    }
    return reached.size;
  });
}

function followersOf({ older, newer }: Pair): Map<Id, Id[]> {
  const followers = new Map<Id, Id[]>();
  for (const { tasks } of [older, newer]) {
    for (const { id, after } of tasks.values()) {
      for (const link of after) {
        const known = followers.get(link.task);
        if (known === undefined) followers.set(link.task, [id]);
        else known.push(id);
      }
    }
  }
  return followers;
}

/** Tasks a place is about; undefined: all of them. */
function touchedBy({ older, newer }: Pair, place: string): Id[] | undefined {
  const [path = "", part] = place.split("/");
  const [kind, id = ""] = path.split(":");
  const inBoth = (find: (side: Side) => Id[]) => [...find(older), ...find(newer)];
  switch (kind) {
    case "task":
      return part === "money" ? [] : [id];
    case "entry":
    case "response":
      return inBoth(({ entries }) => entries.get(id)?.impacts.flatMap(({ tasks }) => tasks) ?? []);
    case "person":
    case "joins":
      if (part === "rate") return [];
      return inBoth(({ tasks }) =>
        [...tasks.values()]
          .filter(({ people }) => people.some((one) => one.id === id))
          .map((task) => task.id),
      );
    case "overhead":
      return [];
    default:
      return undefined;
  }
}
