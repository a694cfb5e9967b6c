import { type Plan, scorecard } from "@leeway/core";

/** How the estimates of finished tasks did, in a sentence; undefined where none was a range. */
export function scoreLine(after: Plan, before: readonly Plan[]): string | undefined {
  const { overall } = scorecard(after, ...before);
  if (overall === undefined) return undefined;
  const { n, inside, below, above, ranges } = overall;
  if (n === 1) {
    const where = inside.k === 1 ? "within" : above === 1 ? "above" : "below";
    return `The one finished task with a range lay ${where} its one-in-ten limits.`;
  }
  const outside = [...(above > 0 ? [`${above} above`] : []), ...(below > 0 ? [`${below} below`] : [])];
  const rest = outside.length === 0 ? "" : ` (${outside.join(", ")})`;
  return `Of ${n} finished tasks with a range ${inside.k} lay within their one-in-ten limits${rest}: ${JUDGED[ranges]}.`;
}

const JUDGED = {
  "too-few": "too few to judge by",
  "as-meant": "as ranges are meant",
  "too-narrow": "ranges are too narrow",
  "too-wide": "ranges are too wide",
};
