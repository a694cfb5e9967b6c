import type { Reach, ReachWay } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { otherSentences, reachSentence, samplingSentence } from "./reachAnswer.ts";
import { stepLines } from "./reachSteps.ts";

/**
 * What it would take, as a person reads it: what to do and what chance that leaves, another way where there is one,
 * the steps in order, and how they were found. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function reachText(given: Reach, page: Page, planName: string): string {
  const reach = plainTexts(given);
  const { width, strong } = page;
  const [first, second] = reach.ways;
  const shown = first ?? reach.best;
  const blocks: string[][] = [
    [explanationHead(reach.plan.title, reach.stamp, page)],
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
          `  leeway forecast ${planName}${scenario(shown)}`,
          `  leeway responses ${planName}`,
        ],
    wrap(explanationStamp(reach.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

/** The options with which `forecast` shows the plan with these steps taken. */
function scenario({ steps }: ReachWay): string {
  const ids = (dropped: boolean) =>
    steps
      .filter(({ kind }) => (kind === "scope") === dropped)
      .map(({ id }) => id)
      .join(",");
  const [taken, left] = [ids(false), ids(true)];
  return `${taken === "" ? "" : ` --with ${taken}`}${left === "" ? "" : ` --without ${left}`}`;
}
