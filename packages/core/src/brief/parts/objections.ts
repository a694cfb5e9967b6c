import type { Objection, Plan } from "../../plan/types.ts";
import { someoneOf } from "../someone.ts";
import type { BriefObjection, BriefObjections } from "../types.ts";

/** Objections with the names of those who raised them; open ones apart. In order of their dates, then ids. */
export function briefObjections(plan: Plan): BriefObjections {
  const someone = someoneOf(plan);
  const told = ({ who, acceptedBy, reopenedBy, ...rest }: Objection): BriefObjection => {
    const [raiser, accepter, reopener] = [someone(who), someone(acceptedBy), someone(reopenedBy)];
    return {
      ...rest,
      ...(raiser === undefined ? {} : { who: raiser }),
      ...(accepter === undefined ? {} : { acceptedBy: accepter }),
      ...(reopener === undefined ? {} : { reopenedBy: reopener }),
    };
  };
  const all = [...plan.objections].sort((a, b) => compare(a.date ?? "", b.date ?? "") || compare(a.id, b.id));
  return {
    open: all.filter(({ state }) => state === "open").map(told),
    settled: all.filter(({ state }) => state !== "open").map(told),
  };
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
