import type { Plan } from "../../plan/types.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import { moneyText } from "../words.ts";

/** What a task or overhead is called that holds money or time for nothing in particular. */
const PADDING =
  /\b(contingenc(y|ies)|(schedule|time) (margin|reserve)|padding)\b|^(time )?(buffer|reserve|margin)$|\bbuffer$|^buffer (time|days|weeks)\b/i;

/** Budget, funds, contingency and who may sign for the sum. */
export const checkMoney: Check = (context) => [
  ...budgetFound(context),
  ...paddingFound(context.plan),
  ...heldFound(context.plan),
  ...fundsFound(context.plan),
  ...limitFound(context),
];

const money = (value: number, { currency }: Plan) => moneyText(value, currency);

function budgetFound({ plan, written }: CheckContext): Found[] {
  const { budget } = plan.commitment;
  const cost = written?.asWritten.cost;
  if (budget === undefined || cost === undefined || cost <= budget + 1e-6) return [];
  const says = `As written the plan costs ${money(cost, plan)}; the budget is ${money(budget, plan)}.`;
  return [{ code: "over-budget", path: "commitment.budget", ids: [], says }];
}

function paddingFound({ tasks, overheads }: Plan): Found[] {
  const found = (list: "tasks" | "overheads", named: readonly { id: string; name: string }[]) =>
    named.flatMap(({ id, name }, at): Found[] =>
      PADDING.test(name)
        ? [
            {
              code: "contingency-in-task",
              path: `${list}[${at}]`,
              ids: [id],
              says: `"${name}" holds contingency.`,
            },
          ]
        : [],
    );
  return [...found("tasks", tasks), ...found("overheads", overheads)];
}

function heldFound({ commitment: { finishBy, budget, holder } }: Plan): Found[] {
  if (holder !== undefined || (finishBy === undefined && budget === undefined)) return [];
  const says = "The commitment names nobody who holds the contingency.";
  return [{ code: "holder-missing", path: "commitment", ids: [], says }];
}

function fundsFound(plan: Plan): Found[] {
  const { budget, reserve = 0, funds } = plan.commitment;
  if (budget === undefined) return [];
  if (funds.length === 0) {
    const says = "The budget has no dates on which it may be spent.";
    return [{ code: "funds-missing", path: "commitment", ids: [], says }];
  }
  const released = funds.reduce((sum, { amount }) => sum + amount, 0);
  const sums = `${money(released, plan)} is released; the budget is ${money(budget, plan)}`;
  if (released < budget - 0.005) {
    return [{ code: "funds-below-budget", path: "commitment.funds", ids: [], says: `${sums}.` }];
  }
  if (released <= budget + 0.005 || reserve === 0) return [];
  const says = `${sums} and the reserve ${money(reserve, plan)}.`;
  return [{ code: "reserve-in-funds", path: "commitment.funds", ids: [], says }];
}

/** Approvers without a limit say nothing about what they may sign. */
function limitFound({ plan, forecast, written }: CheckContext): Found[] {
  const sum = forecast?.committed.cost ?? plan.commitment.budget ?? written?.asWritten.cost;
  const limits = new Map(plan.stakeholders.map(({ id, approvesUpTo }) => [id, approvesUpTo]));
  const asked = plan.approvals.flatMap(({ who }) => {
    const limit = limits.get(who);
    return limit === undefined ? [] : [{ who, limit }];
  });
  if (sum === undefined || asked.length === 0 || asked.some(({ limit }) => limit >= sum - 1e-6)) return [];
  const highest = Math.max(...asked.map(({ limit }) => limit));
  const what = forecast === undefined ? "asked for" : "at the level committed to";
  const says = `The sum ${what} is ${money(sum, plan)}; the highest limit of an approver is ${money(highest, plan)}.`;
  return [
    { code: "approver-limit", path: "approvals", ids: [...new Set(asked.map(({ who }) => who))], says },
  ];
}
