import type { Explanation, Share } from "@leeway/core";
import { formatChance } from "../words/formatChance.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { spends, supportedSum } from "./explainMoney.ts";
import { nothingMoves } from "./nothingMoves.ts";
import { statedSum } from "./statedSum.ts";

/** What is explained: from where to where, and how far that is. */
export function gapSentence(explanation: Explanation): string {
  const { asWritten, committed, contingency, plan, confidence } = explanation;
  const money = spends(explanation);
  if (nothingMoves(explanation)) {
    const sum = money ? ` and costs ${statedSum(asWritten.cost, plan.currency)}` : "";
    return `Every future ends on ${formatDate(asWritten.date, "long")}${sum}, as the plan is written.`;
  }
  const from =
    formatDate(asWritten.date, "long") + (money ? ` and ${statedSum(asWritten.cost, plan.currency)}` : "");
  const to =
    formatDate(committed.date, "long") + (money ? ` and ${supportedSum(explanation, committed.cost)}` : "");
  const days = formatDays(contingency.workingDays);
  const sum = money ? ` and ${supportedSum(explanation, contingency.money)}` : "";
  return (
    `The plan as written says ${from}; ${to} is what holds ${formatChance(confidence)}. ` +
    (contingency.workingDays < 0 || contingency.money < 0
      ? `The difference is ${days}${sum}.`
      : `Between the two lie ${days}${sum}.`)
  );
}

/** What the largest parts come from. */
export function reasonSentence(explanation: Explanation): string {
  const { shares, contingency } = explanation;
  if (nothingMoves(explanation))
    return "Nothing in the plan is uncertain, so there is no contingency to explain.";
  const named = shares.filter(({ gathers }) => gathers === undefined);
  // Where the commitment lies before the plan as written, the causes of that are those that bring it forward.
  const days = contingency.workingDays < 0 ? -1 : 1;
  const sums = contingency.money < 0 ? -1 : 1;
  const byDays = largest(named, (share) => days * share.workingDays);
  const byMoney = largest(named, (share) => sums * share.money);
  const parts: string[] = [];
  if (byDays !== undefined && days * byDays.workingDays >= 0.05) {
    const of =
      Math.abs(contingency.workingDays) > Math.abs(byDays.workingDays)
        ? ` of the ${formatDays(contingency.workingDays, "")}`
        : "";
    parts.push(`The largest cause of the time is “${byDays.name}”: ${formatDays(byDays.workingDays)}${of}`);
  }
  if (spends(explanation) && byMoney !== undefined && sums * byMoney.money > 0) {
    parts.push(
      `${parts.length > 0 ? "that of the money" : "The largest cause of the money"} is “${byMoney.name}”: ${supportedSum(explanation, byMoney.money)}`,
    );
  }
  return parts.length === 0 ? "No single cause adds to it." : `${parts.join("; ")}.`;
}

function largest(shares: readonly Share[], of: (share: Share) => number): Share | undefined {
  return shares.reduce(
    (best: Share | undefined, share) => (best === undefined || of(share) > of(best) ? share : best),
    undefined,
  );
}

/** What a share is, and that the other columns answer another question. */
export function meaningSentence({ orders }: Explanation): string {
  if (orders.causes === 1) {
    return '"If gone": how the commitment would move if the cause vanished. With one cause its share is the whole.';
  }
  const how = orders.all
    ? `every order in which the ${orders.causes} causes can come`
    : `${orders.taken} orders in which the ${orders.causes} causes can come`;
  return (
    `A share is what a cause adds, averaged over ${how}; shares add up to the whole. "If gone" is another question: ` +
    `how the commitment would move if that cause alone vanished; those figures do not add up.`
  );
}

/** How far sampled shares may be off; undefined where every order was taken. */
export function errorSentence(explanation: Explanation): string | undefined {
  const { orders, shares } = explanation;
  if (orders.all) return undefined;
  const days = Math.max(...shares.map(({ error }) => error.workingDays));
  const money = Math.max(...shares.map(({ error }) => error.money));
  const sum = spends(explanation)
    ? ` and ${formatMoney(roundSignificant(money, 2), explanation.plan.currency)}`
    : "";
  return `Standard error of a share from the orders sampled: at most ${formatDays(days)}${sum}.`;
}
