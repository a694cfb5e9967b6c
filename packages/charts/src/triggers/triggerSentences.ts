import type { CoverNow, TriggerNow, TriggersNow } from "@leeway/core";
import { enumerated } from "../sentences/enumerated.ts";
import { statedSum } from "../sentences/statedSum.ts";
import { formatDate } from "../words/formatDate.ts";
import { formatDays } from "../words/formatDays.ts";
import { formatMoney } from "../words/formatMoney.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { roundSignificant } from "../words/roundSignificant.ts";
import { limitStep, roundToLimits, roundToStep } from "../words/roundToLimits.ts";

/** The condition of a return trigger, as it follows "we come back when". */
export function triggerCondition({ currency }: Pick<TriggersNow, "currency">, trigger: TriggerNow): string {
  const { chance, cover, signpost, finish, cost } = trigger;
  if (chance !== undefined) {
    return `${triggerMeasure({ currency }, trigger)} is below ${formatPercent(chance.limit)}`;
  }
  if (cover !== undefined)
    return cover.limit === 1
      ? "the contingency left is less than the exposure left"
      : `the contingency left is less than ${coverPercent(cover.limit)} of the exposure left`;
  if (signpost !== undefined) {
    const sign = signpost.sign?.trim().replace(/\.$/, "");
    return sign === undefined || sign === ""
      ? `this no longer holds: ${plain(signpost.statement)}`
      : `this sign is seen: ${sign}`;
  }
  if (finish !== undefined) return `the committed date is later than ${formatDate(finish.limit, "weekday")}`;
  if (trigger.approval !== undefined) {
    const { name, conditions, by } = trigger.approval;
    return `the condition of ${name} is not met by ${formatDate(by, "weekday")}: ${plain(conditions)}`;
  }
  if (cost !== undefined) return `the committed sum is above ${statedSum(cost.limit, currency)}`;
  return CONDITIONS[trigger.condition];
}

/** What is measured of a chance, with the date or the sum it is of and who says that one: "the chance of finishing by …". */
export function triggerMeasure({ currency }: Pick<TriggersNow, "currency">, { chance }: TriggerNow): string {
  if (chance === undefined) return "";
  const { asked, from } = chance;
  return typeof asked === "string"
    ? `the chance of finishing by ${formatDate(asked, "weekday")}, the date ${AGREED[from]},`
    : `the chance of keeping within ${statedSum(asked, currency)}, the sum ${AGREED[from]},`;
}

/** How it stands, in a sentence, and plainly where it is reached; the limits of sampling beside a value that has them. */
export function triggerStands({ currency }: Pick<TriggersNow, "currency">, trigger: TriggerNow): string {
  const { chance, cover, signpost, finish, cost, unknown } = trigger;
  const reached = trigger.state === "tripped";
  if (unknown !== undefined) return unknown;
  if (chance !== undefined) {
    const { value, low, high, limit } = chance;
    const is = `${formatPercent(value)} (${percentSpan(low, high)})`;
    return `${reached ? `Reached: ${is} is below ${formatPercent(limit)}` : `It is ${is}`}.${signedWords(chance, currency)}`;
  }
  if (cover !== undefined) {
    const said = cover.parts.map((part) => coverWords(part, currency, cover.limit)).join("; ");
    return reached ? `Reached: ${said}.` : `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`;
  }
  if (signpost !== undefined) {
    if (signpost.status === "occurred") return "Reached: the assumption has proved wrong.";
    if (signpost.tripped !== undefined) return `Reached: seen on ${formatDate(signpost.tripped, "weekday")}.`;
    if (signpost.status === "closed") return "Not seen, and it can no longer prove wrong.";
    return signpost.reviewDue === undefined
      ? `${signpost.sign === undefined ? "It still holds" : "Not seen: the assumption still holds"}, as far as anybody has said.`
      : `Not seen, but nobody says it was looked at: the review was due on ${formatDate(signpost.reviewDue, "weekday")}.`;
  }
  if (trigger.approval !== undefined) {
    const { met } = trigger.approval;
    if (met !== undefined) return `Met on ${formatDate(met, "weekday")}.`;
    return trigger.state === "tripped"
      ? "Reached: the day has passed, and nobody says that it was met."
      : "Not met yet.";
  }
  if (finish !== undefined) {
    const { value, low, high } = finish;
    const span =
      low === high
        ? ""
        : ` (${formatDate(low, "weekday-no-year")} to ${formatDate(high, "weekday-no-year")})`;
    const is = `${formatDate(value, "weekday")}${span}`;
    return reached ? `Reached: ${is} is later than ${formatDate(finish.limit, "weekday")}.` : `It is ${is}.`;
  }
  if (cost !== undefined) {
    const { value, low, high } = cost;
    const sum = (of: number) => formatMoney(roundToLimits(of, low, high), "");
    const span = sum(low) === sum(high) ? "" : ` (${sum(low)} to ${sum(high)})`;
    const is = `${currency} ${sum(value)}${span}`;
    return reached ? `Reached: ${is} is above ${statedSum(cost.limit, currency)}.` : `It is ${is}.`;
  }
  return "";
}

/** What a trigger that stands like this asks for. */
export function triggerAsks({ state, uncertain }: TriggerNow): string {
  if (state === "tripped") {
    const doubt = uncertain ? " It lies within the limits of sampling: more futures would settle it." : "";
    return `Come back to the approvers.${doubt}`;
  }
  if (state === "close") return "Close: look for what would help before it trips.";
  return "";
}

/** How many trip and how many are close, in a sentence. */
export function triggersSentence({ triggers }: TriggersNow): string {
  if (triggers.length === 0) return "The plan agrees on no return triggers.";
  const count = (state: TriggerNow["state"]) => triggers.filter((each) => each.state === state).length;
  const tripped = count("tripped");
  const close = count("close");
  const unknown = count("unknown");
  const all =
    triggers.length === 1 ? "The agreed return trigger" : `Of ${triggers.length} agreed return triggers`;
  if (triggers.length === 1) {
    const is = {
      tripped: "has tripped",
      close: "is close",
      quiet: "is quiet",
      unknown: "cannot be measured",
    };
    return `${all} ${is[triggers[0]?.state ?? "quiet"]}.`;
  }
  const parts = [
    tripped === 0 ? "none has tripped" : `${tripped} ${tripped === 1 ? "has" : "have"} tripped`,
    ...(close === 0 ? [] : [`${close} ${close === 1 ? "is" : "are"} close`]),
    ...(unknown === 0 ? [] : [`${unknown} cannot be measured`]),
  ];
  return `${all} ${enumerated(parts)}.`;
}

/** What is agreed is what was signed; until then what was asked for stands in. */
function signedWords(
  { asked, from, onceSigned }: NonNullable<TriggerNow["chance"]>,
  currency: string,
): string {
  if (from !== "plan") return "";
  const what = typeof asked === "string" ? "date" : "sum";
  if (onceSigned === undefined)
    return ` The ${what} that was signed is not known here, so the ${what} asked for counts.`;
  const then =
    typeof onceSigned === "string"
      ? formatDate(onceSigned, "weekday")
      : `about ${formatMoney(roundSignificant(onceSigned, 3), currency)}`;
  return ` Once this plan is signed, the ${what} it commits to counts in its place: ${then}.`;
}

/** Who says the date or the sum that a chance is of. */
const AGREED = { given: "given", signed: "signed", plan: "asked for" };
const CONDITIONS = {
  chanceOfDateBelow: "the chance of the date falls too low",
  chanceOfBudgetBelow: "the chance of the sum falls too low",
  contingencyCoverBelow: "the contingency left no longer covers the exposure left",
  signpost: "a sign is seen",
  finishLaterThan: "the committed date is too late",
  costAbove: "the committed sum is too high",
  conditionsBy: "a condition of an approval is not met by its day",
};

function coverWords(cover: CoverNow, currency: string, limit: number): string {
  const { kind, left, exposure, ratio, committed, low, high } = cover;
  const step = limitStep(committed, low, high);
  const amount = (value: number) =>
    kind === "money" ? formatMoney(roundToStep(value, step), currency) : formatDays(value);
  if (exposure <= 0) return `in ${kind}, ${amount(left)} left and no exposure`;
  const gone = left < 0 ? `none left, ${amount(-left)} over,` : `${amount(left)} left`;
  const part =
    ratio === undefined || left < 0
      ? ""
      : ` (${coverPercent(ratio)} of it${cover.state === "tripped" ? `, below ${coverPercent(limit)}` : ""})`;
  return `in ${kind}, ${gone} for ${amount(exposure)} of exposure${part}`;
}

/** A cover may be above 100 %. */
function coverPercent(ratio: number): string {
  return ratio <= 1 ? formatPercent(ratio) : `${groupDigits(Math.round(ratio * 100))} %`;
}

function percentSpan(low: number, high: number): string {
  const [from, to] = [formatPercent(low), formatPercent(high)];
  return from === to ? `limits ${from}` : `${from.replace(/ %$/, "")} to ${to}`;
}

function plain(statement: string): string {
  return statement.trim().replace(/\.$/, "");
}
