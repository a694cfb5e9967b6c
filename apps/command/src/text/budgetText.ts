import type { Budget, ScenarioChoice } from "@leeway/core";
import { budgetSentences } from "./budgetAnswer.ts";
import { componentLines } from "./budgetComponents.ts";
import { leftLines } from "./budgetLeft.ts";
import { monthLines } from "./budgetMonths.ts";
import { worthLines } from "./budgetWorth.ts";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

/**
 * The money of a plan as a person reads it. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function budgetText(
  given: Budget,
  page: Page,
  planName: string,
  scenario: ScenarioChoice = {},
): string {
  const budget = plainTexts(given);
  const { width, strong } = page;
  const { first, others } = budgetSentences(budget);
  const spends = budget.components.length > 0;
  const blocks: string[][] = [
    [explanationHead(budget.plan.title, budget.stamp, page)],
    scenarioLines(scenario, width),
    spends
      ? [...wrap(first, width).map(strong), ...others.flatMap((one) => wrap(one, width))]
      : wrap("The plan speaks of no money: give tasks a `cost`, people a `rate`, or `overheads`.", width),
    ...(spends ? componentLines(budget, width) : []),
    ...monthLines(budget, width),
    ...(budget.left === undefined ? [] : leftLines(budget.left, spends, width)),
    ...worthLines(budget, width),
    [
      "What to look at next",
      `  leeway confidence ${planName}`,
      `  leeway reach ${planName}`,
      `  leeway money ${planName} --charts charts`,
    ],
    spends
      ? wrap(
          "The figures support a decision about money; your own rules for approval and the advice of those answerable for accounts come first.",
          width,
        )
      : [],
    wrap(explanationStamp(budget.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
