import type { MoveKind } from "../types.ts";
import type { Group } from "./groups/groupChanges.ts";
import type { Value } from "./run/valuesOfPlans.ts";

/** Up to so many groups each stand for themselves. */
export const mostAlone = 12;
/** Beyond, those that move most do, and the others stand together by kind: few enough for every order to be taken. */
const keptAlone = 5;
const keptKinds = 2;

/** A group, or minor ones as one. */
export interface Player {
  groups: Group[];
  /** `other` where minor ones of several kinds stand together. */
  kind: MoveKind;
}

export function playerOf(group: Group): Player {
  return { groups: [group], kind: group.kind };
}

/**
 * Many groups as at most eight players: the five that move most by themselves; the others by kind, the two kinds
 * that move most and the rest of them, so that the list can be read and every order taken. Within a player, what moves
 * most comes first.
 *
 * @param effects  What each group moves alone.
 */
export function gather(groups: readonly Group[], effects: readonly Value[]): Player[] {
  // One that cannot be run alone has no finite effect: it weighs more than any.
  const most = [0, 1].map((d) =>
    effects.reduce((largest, effect) => {
      const size = Math.abs(effect[d] ?? 0);
      return Number.isFinite(size) ? Math.max(largest, size) : largest;
    }, 0),
  );
  const weight = (at: number) =>
    Math.max(...[0, 1].map((d) => Math.abs(effects[at]?.[d] ?? 0) / (most[d] || 1)));
  const ranked = groups
    .map((group, at) => ({ group, at, weight: weight(at) }))
    .sort((a, b) => b.weight - a.weight || a.at - b.at);
  const rest = new Map<MoveKind, { groups: Group[]; weight: number }>();
  for (const { group, weight } of ranked.slice(keptAlone)) {
    const kind = rest.get(group.kind) ?? { groups: [], weight: 0 };
    rest.set(group.kind, kind);
    kind.groups.push(group);
    kind.weight += weight;
  }
  const kinds = [...rest].sort(([a, x], [b, y]) => y.weight - x.weight || (a < b ? -1 : 1));
  const last = kinds.slice(keptKinds);
  const [only] = last;
  return [
    ...ranked.slice(0, keptAlone).map(({ group }) => playerOf(group)),
    ...kinds.slice(0, keptKinds).map(([kind, own]): Player => ({ kind, groups: own.groups })),
    ...(only === undefined
      ? []
      : [
          {
            kind: last.length === 1 ? only[0] : ("other" as const),
            groups: last.flatMap(([, own]) => own.groups),
          },
        ]),
  ];
}
