import type { Responses, ResponseWorth } from "../../explain/types.ts";
import type { Plan } from "../../plan/types.ts";
import { someoneOf } from "../someone.ts";
import type { BriefResponse, BriefResponses } from "../types.ts";

/** Responses bought, worth buying (they save more on average than they cost) and not, each with who sees to it. */
export function briefResponses(plan: Plan, { responses }: Responses): BriefResponses {
  const someone = someoneOf(plan);
  const stated = new Map(
    [...plan.risks, ...plan.assumptions]
      .flatMap((entry) => entry.responses)
      .map((response) => [response.id, response]),
  );
  const told = (worth: ResponseWorth): BriefResponse => {
    const response = stated.get(worth.id);
    const owner = someone(response?.owner);
    return {
      ...worth,
      ...(owner === undefined ? {} : { owner }),
      ...(response?.due === undefined ? {} : { due: response.due }),
    };
  };
  const all = responses.map(told);
  const open = all.filter(({ adopted }) => !adopted);
  return {
    adopted: all.filter(({ adopted }) => adopted),
    worthBuying: open.filter(pays),
    others: open.filter((each) => !pays(each)),
    latenessCounted: all.some(({ given }) => given.latenessAvoided !== undefined),
  };
}

/** Saves more than it costs, and by more than the 95 % sampling limits of the difference. */
function pays({ given }: ResponseWorth): boolean {
  return given.netWorth > 1.96 * given.netWorthError;
}
