import {
  errorSentence,
  gapSentence,
  meaningSentence,
  nothingMoves,
  reasonSentence,
  spends,
} from "@leeway/charts";
import type { Explanation, ScenarioChoice } from "@leeway/core";
import { tornadoLines } from "./causes.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { shareLines, walkLines } from "./explainShares.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

/**
 * Why this much contingency, as a person reads it: how much it is and what most of it is held for, the shares of all
 * causes, what a share is, the way there step by step, and one item at a time. Every figure is the explanation's own.
 *
 * @param scenario  What was taken in and left out: it is said.
 * @returns text ending with a newline
 */
export function explainText(
  given: Explanation,
  page: Page,
  planName: string,
  scenario: ScenarioChoice = {},
): string {
  const explanation = plainTexts(given);
  const { width, strong } = page;
  const { plan, stamp, tornado = [] } = explanation;
  const error = errorSentence(explanation);
  const some = !nothingMoves(explanation);
  const blocks: string[][] = [
    [explanationHead(plan.title, stamp, page)],
    scenarioLines(scenario, width),
    [...wrap(gapSentence(explanation), width).map(strong), ...wrap(reasonSentence(explanation), width)],
    some ? shareLines(explanation, width) : [],
    some
      ? [...wrap(meaningSentence(explanation), width), ...(error === undefined ? [] : wrap(error, width))]
      : [],
    some ? walkLines(explanation, width) : [],
    some ? tornadoLines(tornado, { money: spends(explanation), currency: plan.currency }, width) : [],
    [
      "What to look at next",
      `  leeway confidence ${planName}`,
      ...(some ? [`  leeway forecast ${planName} --without IDS`] : []),
    ],
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
