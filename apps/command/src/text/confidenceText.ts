import type { Confidence, ScenarioChoice } from "@leeway/core";
import { levelSentence, missedSentence, stopSentences } from "./confidenceAnswer.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { dateLines, moneyLines } from "./confidenceLevels.ts";
import { jointLines } from "./jointLines.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

/**
 * Why this confidence, as a person reads it: what the level means, what lateness costs says about it, the levels
 * side by side, then date and money together. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function confidenceText(
  given: Confidence,
  page: Page,
  planName: string,
  scenario: ScenarioChoice = {},
): string {
  const confidence = plainTexts(given);
  const { width, strong } = page;
  const blocks: string[][] = [
    [explanationHead(confidence.plan.title, confidence.stamp, page)],
    scenarioLines(scenario, width),
    [
      ...wrap(levelSentence(confidence), width).map(strong),
      ...stopSentences(confidence).flatMap((sentence) => wrap(sentence, width)),
      ...wrap(missedSentence(confidence), width),
    ],
    dateLines(confidence, width),
    moneyLines(confidence, width),
    jointLines(confidence, width),
    [
      "What to look at next",
      `  leeway confidence ${planName} --joint 0.7`,
      `  leeway confidence ${planName} --without IDS`,
    ],
    wrap(explanationStamp(confidence.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
