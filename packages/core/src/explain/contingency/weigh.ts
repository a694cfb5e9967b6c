import { type Cause, gathered } from "./causes.ts";

/** Rows of a table that fits a page. */
export const rows = 12;

/**
 * How much a cause moves when it alone is added to nothing, and when it alone is taken from everything: in each
 * measure, as many as there are.
 */
export interface FirstPass {
  added: readonly number[];
  removed: readonly number[];
}

const others = {
  spread: { id: "other-spread", name: "other estimates" },
  cause: { id: "other-causes", name: "other shared causes" },
  risk: { id: "other-risks", name: "other risks" },
  assumption: { id: "other-assumptions", name: "other assumptions" },
  people: { id: "people", name: "Limited people" },
} as const;

/**
 * Keeps the weightiest causes and gathers the others by kind ("14 other estimates"), so that the rows fit a page.
 *
 * A cause weighs its part of what all move in the first pass, in that measure in which it is most: days or money, at
 * the level or on average.
 *
 * @param passes  By cause.
 */
export function weightiest(causes: readonly Cause[], passes: readonly FirstPass[]): Cause[] {
  if (causes.length <= rows) return [...causes];
  const weights = weightsOf(passes);
  const ranked = causes
    .map((cause, at) => ({ cause, at, weight: weights[at] as number }))
    .sort((a, b) => Number(b.cause.people) - Number(a.cause.people) || b.weight - a.weight || a.at - b.at);
  for (let named = rows - 1; named >= 0; named--) {
    const kept = ranked.slice(0, named).map(({ cause }) => cause);
    const minor = ranked.slice(named).sort((a, b) => a.at - b.at);
    const groups = (["spread", "cause", "risk", "assumption", "people"] as const).flatMap((kind) => {
      const members = minor.filter(({ cause }) => cause.kind === kind).map(({ cause }) => cause);
      if (members.length < 2) return members;
      const { id, name } = others[kind];
      return [gathered(id, `${members.length} ${name}`, kind, members)];
    });
    if (kept.length + groups.length <= rows) return [...kept, ...groups];
  }
  return [...causes];
}

function weightsOf(passes: readonly FirstPass[]): number[] {
  const moved = passes.map(({ added, removed }) =>
    added.map((a, d) => (Math.abs(a) + Math.abs(removed[d] as number)) / 2),
  );
  const sums = (moved[0] ?? []).map((_, d) => moved.reduce((sum, row) => sum + (row[d] as number), 0));
  return moved.map((row) =>
    Math.max(0, ...row.map((x, d) => ((sums[d] as number) > 0 ? x / (sums[d] as number) : 0))),
  );
}
