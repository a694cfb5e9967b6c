import { dayNumber } from "../calendar/dates.ts";
import type { Benefit, Plan } from "../plan/types.ts";
import type { Model, ModelBenefit } from "./model.ts";
import type { SlotList } from "./slots.ts";

interface MoneyContext {
  startDay: number;
  taskIndex: ReadonlyMap<string, number>;
  list: SlotList;
  adopted: ReadonlySet<string>;
}

/** Money that does not belong to one task: adopted responses, overheads, lateness, benefits. All in id order. */
export function compileMoney(
  plan: Plan,
  { startDay, taskIndex, list, adopted }: MoneyContext,
): Pick<Model, "responses" | "overheads" | "lateness" | "benefits"> {
  const index = (id: string | undefined) => (id === undefined ? -1 : (taskIndex.get(id) ?? -1));
  const responses = [...plan.risks, ...plan.assumptions]
    .flatMap((entry) => entry.responses)
    .filter((response) => adopted.has(response.id))
    .sort(byId)
    .map((response) => ({
      id: response.id,
      name: response.action,
      dueDay: response.due === undefined ? 0 : Math.max(0, dayNumber(response.due) - startDay),
      cost: list.amount(response.cost, {
        key: `${response.id}:cost`,
        item: response.was ?? response.id,
        purpose: "cost",
        cut: true,
      }),
    }));
  const overheads = [...plan.overheads].sort(byId).map((overhead) => ({
    id: overhead.id,
    name: overhead.name,
    perDay: list.amount(overhead.perDay, {
      key: `${overhead.id}:perDay`,
      item: overhead.was ?? overhead.id,
      purpose: "perDay",
      cut: true,
    }),
    from: index(overhead.from),
    to: index(overhead.to),
  }));
  const after = plan.lateness?.after ?? plan.commitment.finishBy;
  const lateness =
    plan.lateness === undefined || after === undefined
      ? undefined
      : {
          afterDay: dayNumber(after) - startDay,
          perWeek: list.amount(plan.lateness.perWeek, lateAddress("perWeek")),
          once: list.amount(plan.lateness.once, lateAddress("once")),
        };
  const benefits = [...plan.benefits].sort(byId).map((benefit): ModelBenefit => {
    const source = benefit.amount ?? benefit.quantity;
    return {
      id: benefit.id,
      name: benefit.name,
      amount: list.amount(source, {
        key: `${benefit.id}:amount`,
        item: benefit.was ?? benefit.id,
        purpose: "amount",
        cut: false,
      }),
      worth: monthly(benefit) * (benefit.amount !== undefined ? 1 : (benefit.worth ?? 0)),
      once: benefit.per === "once",
      starts: index(benefit.starts),
      lag: ((benefit.lag ?? 0) * 365.25) / 12,
      ramp: benefit.ramp ?? 0,
      lasts: benefit.lasts ?? Number.POSITIVE_INFINITY,
      untilDay:
        benefit.until === undefined ? Number.POSITIVE_INFINITY : dayNumber(benefit.until) - startDay + 1,
    };
  });
  return { responses, overheads, lateness, benefits };
}

function lateAddress(purpose: "perWeek" | "once") {
  return { key: `lateness:${purpose}`, item: "lateness:", purpose, cut: false };
}

/** A month is 365.25/12 days: a twelfth of a year's amount, 365.25/12 days' or 365.25/84 weeks' worth. */
function monthly(benefit: Benefit): number {
  switch (benefit.per) {
    case "day":
      return 365.25 / 12;
    case "week":
      return 365.25 / 84;
    case "year":
      return 1 / 12;
    default:
      return 1;
  }
}

function byId(a: { id: string }, b: { id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
