import { countSentences, groupDigits, responsesSpend, worthSentence } from "@leeway/charts";
import type { Responses, ScenarioChoice } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { bestLines } from "./responsesBest.ts";
import { responseLines } from "./responsesTable.ts";
import { scenarioLines } from "./scenarioLines.ts";
import { scenarioOptions } from "./scenarioOptions.ts";

/**
 * What each response buys, as a person reads it: the one most worth having, how many pay for themselves, the best set
 * for a sum where one is named, then all side by side. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function responsesText(
  given: Responses,
  page: Page,
  planName: string,
  scenario: ScenarioChoice = {},
): string {
  const answer = plainTexts(given);
  const { width, strong } = page;
  const { responses, best, notes } = answer;
  const some = responses.length > 0;
  const adopted = responses.some((one) => one.adopted);
  const total = responses.reduce((sum, { cost, adopted: is }) => (is ? sum : sum + cost), 0);
  const blocks: string[][] = [
    [explanationHead(answer.plan.title, answer.stamp, page)],
    scenarioLines(scenario, width),
    [
      ...wrap(worthSentence(answer), width).map(strong),
      ...countSentences(answer).flatMap((text) => wrap(text, width)),
    ],
    bestLines(answer, width),
    responseLines(answer, "given", width),
    adopted ? responseLines(answer, "alone", width) : [],
    notes.flatMap((note) => wrap(`Note: ${note}`, width, "  ")),
    some
      ? [
          "What to look at next",
          ...(best === undefined
            ? !responsesSpend(answer)
              ? []
              : [`  leeway responses ${planName}${scenarioOptions(scenario)} --sum ${halfOf(total)}`]
            : best.ids.length > 0
              ? [
                  `  leeway forecast ${planName}${scenarioOptions({ ...scenario, with: [...(scenario.with ?? []), ...best.ids] })}`,
                ]
              : []),
          `  leeway reach ${planName}${scenarioOptions(scenario)}`,
        ]
      : [],
    wrap(explanationStamp(answer.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

/** A sum to try: about half of what all responses cost, of one digit. */
function halfOf(total: number): string {
  const half = Math.max(1, total / 2);
  const unit = 10 ** Math.floor(Math.log10(half));
  return groupDigits(Math.round(half / unit) * unit).replaceAll(",", "");
}
