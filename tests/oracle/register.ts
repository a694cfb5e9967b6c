import type { Plan, RegisterEntry } from "../../packages/core/src/plan/types.ts";

/** Risks and assumptions together, in id order. */
export function registerOf(plan: Plan): RegisterEntry[] {
  return [...plan.risks, ...plan.assumptions].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Ids of the responses that are adopted. */
export function adoptedResponses(plan: Plan): Set<string> {
  const responses = registerOf(plan).flatMap((entry) => entry.responses);
  return new Set(responses.filter((r) => r.adopted).map((r) => r.id));
}

/** What adopted responses leave of an entry's impacts: their scales multiplied. */
export function impactScale(entry: RegisterEntry): number {
  return entry.responses.reduce((scale, r) => (r.adopted ? scale * r.scale : scale), 1);
}

/** Own probability times each adopted response's ratio to it, at most 1. */
function probabilityAfterResponses(entry: RegisterEntry): number {
  const own = entry.probability;
  if (own === 0) return 0;
  let probability = own;
  for (const r of entry.responses) {
    if (r.adopted && r.probability !== undefined) probability *= r.probability / own;
  }
  return Math.min(1, probability);
}

/** The chance that an entry occurs, by the page's order: facts, expiry, `onlyIf`, group, responses. */
export function chanceOf(plan: Plan, entry: RegisterEntry): number {
  if (entry.status === "occurred") return 1;
  if (entry.status === "closed") return 0;
  if (entry.expires !== undefined && plan.statusDate !== undefined && entry.expires < plan.statusDate)
    return 0;
  if (entry.onlyIf !== undefined && !adoptedResponses(plan).has(entry.onlyIf)) return 0;
  const groupHasOccurred = registerOf(plan).some(
    (other) => other.group !== undefined && other.group === entry.group && other.status === "occurred",
  );
  return groupHasOccurred ? 0 : probabilityAfterResponses(entry);
}
