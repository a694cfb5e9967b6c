import type { ContingencyLeft } from "@leeway/core";
import { formatDate } from "../words/formatDate.ts";
import { formatPercent } from "../words/formatPercent.ts";
import type { LeftMeasure } from "./leftMeasure.ts";

/** How far the contingency that is left covers what it has to, in one sentence without its stop. */
export function leftFinding({ ahead, confidence }: ContingencyLeft, measure: LeftMeasure): string {
  const { cover, say, amount, round } = measure;
  const first = ahead[0] === undefined ? 0 : amount(ahead[0].exposure);
  if (cover === undefined)
    return `${say(first)} of contingency would cover what remains in ${formatPercent(confidence)} of futures; no ${measure.what} was agreed to hold it against`;
  const { left, exposure, spare, ratio } = cover;
  if (left < 0)
    return `No contingency is left: the plan as written is ${say(-left)} over what was agreed, and ${say(Math.max(0, exposure))} may still come`;
  if (exposure <= 0 || ratio === undefined)
    return `${say(left)} of contingency is left and nothing remains to cover`;
  const against = `${say(left)} of contingency left against ${say(exposure)} that may still be needed`;
  if (spare >= 0) return `${against}: enough, with ${say(round(left) - round(exposure))} to spare`;
  const later = ahead.find(({ exposure: one }) => amount(one) <= left);
  const when =
    later === undefined ? "" : `; if all goes as written, enough from ${formatDate(later.date)} on`;
  return `${against}: ${formatPercent(ratio)} of it${when}`;
}
