import { plainName } from "@leeway/charts";
import type { Plan } from "@leeway/core";
import type { Standing } from "../history/computeStanding.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { nextLines } from "./nextLines.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { triggerLines } from "./triggerLines.ts";

const HOW =
  "Agree on them with your approvers and write them into the plan, e.g. `returnTriggers: [{ id: date-at-risk, " +
  "chanceOfDateBelow: 0.6 }]`. Each has one condition: chanceOfDateBelow, chanceOfBudgetBelow, " +
  "contingencyCoverBelow, signpost, finishLaterThan or costAbove.";

/** When the plan comes back to its approvers, and where each condition stands. */
export function triggersText(
  plan: Plan,
  { forecast, triggers }: Standing,
  page: Page,
  planWord: string,
): string {
  const stamp = { ...forecast, sha256: forecast.plan.sha256 };
  const none = triggers.triggers.length === 0;
  const blocks = [
    [explanationHead(plainName(plan.title), stamp, page)],
    triggerLines(plainTexts(triggers), page),
    none ? wrap(HOW, page.width) : [],
    nextLines(
      [
        [`leeway forecast ${planWord}`, "the figures behind them"],
        [`leeway reach ${planWord}`, "what it would take to keep to what was agreed"],
      ],
      page.width,
    ),
    wrap(explanationStamp(stamp), page.width),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}
