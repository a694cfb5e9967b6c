import { nearest } from "../plan/definition/nearest.ts";
import type { Plan } from "../plan/types.ts";
import { checkRules } from "./checkRules.ts";
import type { Found } from "./context.ts";
import type { Finding } from "./types.ts";

/**
 * Marks what was accepted: findings of that code that are about nothing but the ids it names, or all of that code where
 * it names none. Nothing else about any finding changes. Answers what the acceptances that found nothing say themselves.
 */
export function acceptFindings({ acceptedFindings }: Plan, findings: readonly Finding[]): Found[] {
  return acceptedFindings.flatMap(({ finding, ids, who, date, why }, a): Found[] => {
    const named = ids === undefined ? undefined : new Set(ids);
    const matched = findings.filter(
      (each) =>
        each.code === finding &&
        (named === undefined || (each.ids.length > 0 && each.ids.every((id) => named.has(id)))),
    );
    for (const each of matched) each.accepted ??= { who, date, why };
    const found = new Set(matched.flatMap((each) => each.ids));
    const left = (ids ?? []).filter((id) => !found.has(id));
    if (matched.length > 0 && left.length === 0) return [];
    const about = left.length === 0 ? "" : ` about ${left.join(", ")}`;
    const says = `No finding \`${finding}\`${about} is there to accept.`;
    return [
      { code: "acceptance-unused", path: `acceptedFindings[${a}]`, ids: [], says, ...adviceOn(finding) },
    ];
  });
}

/** Of a code there is not: the one that was meant. */
function adviceOn(code: string): { advice?: string } {
  const codes = checkRules.map((rule) => rule.code);
  if (codes.some((known) => known === code)) return {};
  const meant = nearest(code, codes);
  return meant === undefined ? {} : { advice: `There is no such finding; did you mean \`${meant}\`?` };
}
