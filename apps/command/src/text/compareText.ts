import { meaningOfMoves, movedSentence, standsSentences } from "@leeway/charts";
import type { Comparison } from "@leeway/core";
import { alsoLines, moveLines } from "./compareMoves.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";

/**
 * What moved between two plans, as a person reads it: how far date and sum moved, what moved them change by change
 * with the sum of all, what a move is, and what changed without moving anything. Every figure is the comparison's own.
 *
 * @param planName  The new plan as the caller named it, for the commands that come next.
 * @returns text ending with a newline
 */
export function compareText(given: Comparison, page: Page, planName: string): string {
  const comparison = plainTexts(given);
  const { width, strong } = page;
  const { plan, stamp, warnings } = comparison;
  const meaning = meaningOfMoves(comparison);
  const blocks: string[][] = [
    [explanationHead(plan.title, stamp, page)],
    [
      ...wrap(movedSentence(comparison), width).map(strong),
      ...standsSentences(comparison).flatMap((sentence) => wrap(sentence, width)),
    ],
    moveLines(comparison, width),
    meaning === undefined ? [] : wrap(meaning, width),
    alsoLines(comparison, width),
    warnings.flatMap((warning) => wrap(`Warning: ${warning}`, width, "  ")),
    ["What to look at next", `  leeway forecast ${planName}`, `  leeway explain ${planName}`],
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
