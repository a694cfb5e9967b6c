import type { MoveKind } from "../types.ts";
import type { Group } from "./groups/groupChanges.ts";
import type { Value } from "./run/valuesOfPlans.ts";

/** Up to so many groups each stand for themselves. */
export const mostAlone = 12;
/** Beyond, so many are left: few enough for every order to be taken. */
const leftOver = 8;

/** A group, or minor ones of a kind as one. */
export interface Player {
  groups: Group[];
  kind: MoveKind;
}

export function playerOf(group: Group): Player {
  return { groups: [group], kind: group.kind };
}

/**
 * Many groups as few players: those that move least by themselves are gathered by kind, so that the list can be read
 * and every order taken.
 *
 * @param effects  What each group moves alone.
 */
export function gather(groups: readonly Group[], effects: readonly Value[]): Player[] {
  const most = [0, 1].map((d) => Math.max(...effects.map((effect) => Math.abs(effect[d] ?? 0))));
  const weight = (at: number) =>
    Math.max(...[0, 1].map((d) => Math.abs(effects[at]?.[d] ?? 0) / (most[d] || 1)));
  const ranked = groups
    .map((group, at) => ({ group, at }))
    .sort((a, b) => weight(b.at) - weight(a.at) || a.at - b.at);
  for (let kept = leftOver - 1; ; kept--) {
    const rest = ranked.slice(kept);
    const kinds = [...new Set(rest.map(({ group }) => group.kind))];
    if (kept > 0 && kept + kinds.length > leftOver) continue;
    const minor = kinds.map((kind): Player => {
      const own = rest.filter(({ group }) => group.kind === kind).sort((a, b) => a.at - b.at);
      return { groups: own.map(({ group }) => group), kind };
    });
    return [...ranked.slice(0, kept).map(({ group }) => playerOf(group)), ...minor];
  }
}
