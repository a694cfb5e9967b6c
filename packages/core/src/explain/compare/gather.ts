import type { MoveKind } from "../types.ts";
import type { Group } from "./groups/groupChanges.ts";
import type { Value } from "./run/runner.ts";

/** Up to so many groups each stand for themselves. */
const mostAlone = 12;
/** Beyond, so many are left: few enough for every order to be taken. */
const leftOver = 8;

/** A group, or minor ones of a kind as one. */
export interface Player {
  groups: Group[];
  kind: MoveKind;
}

/**
 * The groups as players of the averaging. Where there are many, those that move least by themselves are gathered by
 * kind, so that the list can be read and every order taken.
 *
 * @param effectsOf  What each group moves alone; asked only where some are gathered.
 */
export function gather(groups: readonly Group[], effectsOf: () => readonly Value[]): Player[] {
  const alone = (group: Group): Player => ({ groups: [group], kind: group.kind });
  if (groups.length <= mostAlone) return groups.map(alone);
  const effects = effectsOf();
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
    return [...ranked.slice(0, kept).map(({ group }) => alone(group)), ...minor];
  }
}
