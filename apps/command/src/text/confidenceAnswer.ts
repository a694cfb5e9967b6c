import { formatDate, formatDays, formatPercent, groupDigits } from "@leeway/charts";
import type { Confidence, ConfidenceStep } from "@leeway/core";
import { roughSum, spendsMoney, sumAt } from "./confidenceMoney.ts";

/** What the level committed to means, and the neighbours a meeting would ask about. */
export function levelSentence(confidence: Confidence): string {
  const { committed } = confidence;
  const level = formatPercent(confidence.confidence);
  const sum = spendsMoney(confidence) ? ` and ${sumAt(confidence, committed.cost)}` : "";
  return `At ${level} the plan commits to ${formatDate(committed.date, "long")}${sum}.`;
}

/** What lateness costs says about the level; or that the plan does not say what lateness costs. */
export function stopSentences(confidence: Confidence): string[] {
  const { stop, missing, steps } = confidence;
  if (missing !== undefined) return [missing];
  if (stop === undefined) return [];
  const level = confidence.confidence;
  const own = steps.find(({ p }) => p === level);
  const best = steps.find(({ p }) => p === stop.p);
  if (own === undefined || best === undefined) return [];
  const close = stop.clear ? "" : " The figures on either side are too close to call with this many futures.";
  return [verdict(confidence, own, best) + close, ...heldSentence(confidence, best)];
}

function verdict(confidence: Confidence, own: ConfidenceStep, best: ConfidenceStep): string {
  const { stop, steps } = confidence;
  const at = formatPercent(best.p);
  const lowest = best === steps[0] ? ", the lowest level looked at" : "";
  const next =
    stop?.next === undefined
      ? `No step up to it costs more than it avoids.`
      : `The next step, to ${formatPercent(stop.next.p)}, holds ${roughSum(confidence, stop.next.costs)} more and ` +
        `avoids ${roughSum(confidence, stop.next.avoids)} of expected lateness.`;
  if (best.p === own.p) return `By what lateness costs, ${at} is where to stop. ${next}`;
  if (best.p < own.p) {
    const more = own.cost - best.cost;
    const avoided = (best.latenessLeft ?? 0) - (own.latenessLeft ?? 0);
    return (
      `By what lateness costs, ${at} would do${lowest}. ${next} All the steps up to ${formatPercent(own.p)} hold ` +
      `${roughSum(confidence, more)} more and avoid ${roughSum(confidence, avoided)}.`
    );
  }
  const more = best.cost - own.cost;
  const avoided = (own.latenessLeft ?? 0) - (best.latenessLeft ?? 0);
  return (
    `By what lateness costs, go on to ${at}: it holds ${roughSum(confidence, more)} more than ` +
    `${formatPercent(own.p)} and avoids ${roughSum(confidence, avoided)} of expected lateness.`
  );
}

/** Money held is not money spent: what holding it may cost for the next step to pay after all. */
function heldSentence(confidence: Confidence, best: ConfidenceStep): string[] {
  const next = confidence.stop?.next;
  if (next === undefined || !(next.costs > 0) || !spendsMoney(confidence)) return [];
  const share = Math.max(0, next.avoids / next.costs);
  const each = `${confidence.plan.currency} 1`;
  return [
    `The step from ${formatPercent(best.p)} is priced as if all the money held were gone. Held money is spent only ` +
      `when needed: where holding ${each} costs less than ${groupDigits(share, 2)}, that step pays too.`,
  ];
}

/** What it looks like when the commitment fails: how late, how dear. */
export function missedSentence(confidence: Confidence): string {
  const own = confidence.steps.find(({ p }) => p === confidence.confidence);
  if (own === undefined) return "";
  const late =
    own.late.chance === 0
      ? "No future ends later"
      : `In the ${formatPercent(own.late.chance)} that end later it is by ${formatDays(own.late.days, "calendar day")} on average`;
  if (!spendsMoney(confidence)) return `${late}.`;
  const over =
    own.over.chance === 0
      ? "none costs more"
      : `in the ${formatPercent(own.over.chance)} that cost more it is by ${roughSum(confidence, own.over.money)}`;
  return `${late}; ${over}.`;
}
