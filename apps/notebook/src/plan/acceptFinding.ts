import type { AcceptedFinding, Plan } from "@leeway/core";
import type { ToldFinding } from "../asking/tellFindings.ts";
import type { Edit } from "./edit.ts";
import { leave } from "./removeTask.ts";

/** What is filled in about findings that may stay, as it was typed or chosen. */
export interface AcceptCells {
  who: string;
  why: string;
}

/** The acceptance of findings of one code for the document; or all that keeps it from being made. */
export function acceptFinding(
  findings: readonly ToldFinding[],
  { who, why }: AcceptCells,
  date: string,
): { edits: Edit[] } | { words: { who?: string; why?: string } } {
  const [first] = findings;
  const said = why.trim();
  if (first === undefined || who === "" || said === "") {
    return {
      words: {
        ...(who === "" ? { who: "Choose who answers for it." } : {}),
        ...(said === "" ? { why: "Write why it may stay: the next reader asks the same." } : {}),
      },
    };
  }
  const ids = [...new Set(findings.flatMap((one) => one.ids))];
  const value = { finding: first.code, ...(ids.length === 0 ? {} : { ids }), who, date, why: said };
  return { edits: [{ path: "acceptedFindings", value, add: "last" }] };
}

/** Takes one acceptance out of the document. */
export function acceptNoLonger(stated: unknown, at: number): Edit[] {
  return leave(stated, "acceptedFindings", [at]);
}

/** The acceptances of a plan, each with the findings it lets stand. */
export function acceptances(
  { acceptedFindings }: Plan,
  findings: readonly ToldFinding[],
): { at: number; accepted: AcceptedFinding; lets: ToldFinding[] }[] {
  return acceptedFindings.map((accepted, at) => {
    const { finding, ids, who, date, why } = accepted;
    const lets = findings.filter(
      (one) =>
        one.code === finding &&
        one.accepted?.who === who &&
        one.accepted.date === date &&
        one.accepted.why === why &&
        (ids === undefined || one.ids.some((id) => ids.includes(id))),
    );
    return { at, accepted, lets };
  });
}
