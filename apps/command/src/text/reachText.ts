import { otherSentences, reachSentence, samplingSentence } from "@leeway/charts";
import type { Reach, ReachWay, ScenarioChoice } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { stepLines } from "./reachSteps.ts";
import { scenarioLines } from "./scenarioLines.ts";
import { scenarioOptions } from "./scenarioOptions.ts";

/**
 * What it would take, as a person reads it: what to do and what chance that leaves, another way where there is one,
 * the steps in order, and how they were found. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function reachText(
  given: Reach,
  page: Page,
  planName: string,
  beforehand: ScenarioChoice = {},
): string {
  const reach = plainTexts(given);
  const { width, strong } = page;
  const [first, second] = reach.ways;
  const shown = first ?? reach.best;
  const blocks: string[][] = [
    [explanationHead(reach.plan.title, reach.stamp, page)],
    scenarioLines(beforehand, width),
    [
      ...wrap(reachSentence(reach), width).map(strong),
      ...otherSentences(reach).flatMap((text) => wrap(text, width)),
    ],
    shown === undefined
      ? []
      : stepLines(reach, shown, first === undefined ? "As close as it comes" : "Step by step", width),
    second === undefined ? [] : stepLines(reach, second, "The other way, step by step", width),
    wrap(`${reach.how.text} ${samplingSentence(reach)}`, width),
    reach.notes.flatMap((note) => wrap(`Note: ${note}`, width, "  ")),
    shown === undefined || shown.steps.length === 0
      ? []
      : [
          "What to look at next",
          `  leeway forecast ${planName}${scenarioOptions(together(shown, beforehand))}`,
          `  leeway responses ${planName}${scenarioOptions(beforehand)}`,
        ],
    wrap(explanationStamp(reach.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

/** The scenario in which `forecast` shows the plan with these steps taken. */
function together(
  { steps }: ReachWay,
  { with: taken = [], without: left = [] }: ScenarioChoice,
): ScenarioChoice {
  const ids = (dropped: boolean) =>
    steps.filter(({ kind }) => (kind === "scope") === dropped).map(({ id }) => id);
  return { with: [...taken, ...ids(false)], without: [...left, ...ids(true)] };
}
