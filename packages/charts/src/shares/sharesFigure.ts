import type { Explanation } from "@leeway/core";
import { emptyDrawing } from "../draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "../figure/types.ts";
import { errorText } from "../measure/errorText.ts";
import type { Measure } from "../measure/types.ts";
import { drawWaterfall } from "../waterfall/drawWaterfall.ts";
import { largestFalls, rankFalls } from "../waterfall/largestFalls.ts";
import { standingFlags } from "../waterfall/standingFlags.ts";
import type { Fall } from "../waterfall/types.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { groupDigits } from "../words/groupDigits.ts";
import { plainName, quoteName } from "../words/plainName.ts";
import { causeTint, causeWord } from "./causeKind.ts";
import { sharesFinding } from "./sharesFinding.ts";

/** The figure both charts of shares have in common; `measure` tells days from money. */
export function sharesFigure(explanation: Explanation, measure: Measure, options: ChartOptions): Figure {
  const { shares, contingency, orders, confidence } = explanation;
  const whole = measure.amount(contingency);
  const level = formatPercent(confidence);
  const falls: Fall[] = shares.map((share) => ({
    id: share.id,
    name: share.name,
    word: wordOf(share),
    tint: causeTint(share.kind),
    gathered: (share.gathers?.length ?? 1) > 1,
    value: measure.amount(share),
    error: measure.amount(share.error),
  }));
  const ranked = rankFalls(falls);
  const byId = new Map(shares.map((share) => [share.id, share]));
  const sampled = falls.some((fall) => fall.error > 0);
  const title = sharesFinding(
    shares.map((share) => ({
      name: share.name,
      value: measure.amount(share),
      single: (share.gathers?.length ?? 1) <= 1,
    })),
    whole,
    measure,
  );
  const limits = sampled ? "; ± and whiskers: 95 % limits of the sampled orders" : "";
  const subtitle = `What each cause adds to the ${level} commitment, in ${measure.unit}, averaged over the orders in which causes can be taken${limits}`;
  const table = {
    columns: [
      { name: "Cause", align: "start" as const },
      { name: "Kind", align: "start" as const },
      { name: "Share", unit: measure.unit, align: "end" as const },
      { name: "Standard error", unit: measure.unit, align: "end" as const },
      { name: "Of the contingency", align: "end" as const },
      { name: "Commitment moves, were it to vanish", unit: measure.unit, align: "end" as const },
    ],
    rows: [
      ...ranked.map((fall) => {
        const share = byId.get(fall.id);
        return [
          plainName(fall.name),
          share === undefined ? "" : causeWord(share.kind),
          measure.column(fall.value),
          errorText(fall.error, measure),
          part(fall.value, whole, measure),
          share === undefined ? "" : measure.column(measure.amount(share.ifRemoved)),
        ];
      }),
      ["Contingency", "", measure.column(whole), "", part(whole, whole, measure), ""],
    ],
  };
  const taken = orders.all
    ? "every order of the causes was taken"
    : `${groupDigits(orders.taken)} orders of the causes were sampled`;
  const flags = standingFlags(explanation, measure, level);
  const largest = ranked
    .slice(0, 3)
    .map(
      (fall) =>
        `${quoteName(fall.name)} ${measure.say(fall.value)}${fall.value < 0 ? ` ${measure.less}` : ""}`,
    );
  const summary =
    falls.length === 0
      ? "Nothing in this plan is uncertain: it has no causes to share a contingency."
      : `A waterfall from the plan as written, ${flags.from.detail}, to the commitment, ${flags.to.detail}. Largest: ${largest.join("; ")}. Shares add up to the contingency exactly; ${taken}. A share says who owns the contingency, not what would be gained if the cause vanished.`;
  const svg =
    falls.length === 0
      ? emptyDrawing("No estimate, risk or assumption of this plan is uncertain.", options)
      : drawWaterfall(
          {
            falls: largestFalls(falls, measure.least),
            ...flags,
            total: { name: "Contingency", value: whole },
            measure,
          },
          options,
        );
  return { title, subtitle, summary, table, svg };
}

/** What kind of cause it is, where its name does not say so already. */
function wordOf({ kind, name, gathers }: Explanation["shares"][number]): string {
  const word = causeWord(kind);
  return (gathers?.length ?? 1) > 1 || name.toLowerCase() === word ? "" : word;
}

function part(value: number, whole: number, { least }: Measure): string {
  if (Math.abs(whole) < least) return "";
  const share = Math.round((value / whole) * 100);
  return `${share < 0 ? "−" : ""}${Math.abs(share)} %`;
}
