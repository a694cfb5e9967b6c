import { groupDigits } from "@leeway/charts";
import type { Forecast, ScenarioChoice } from "@leeway/core";
import {
  askedSentence,
  asWrittenSentence,
  commitSentence,
  contingencySentence,
  stampSentence,
} from "./answer.ts";
import { driverLines, tornadoLines } from "./causes.ts";
import { levelLines } from "./levels.ts";
import { hasMoney } from "./moneyWords.ts";
import { type Next, nextLines } from "./nextLines.ts";
import { cut, type Page, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";
import { scenarioOptions } from "./scenarioOptions.ts";
import { intervalLines, targetLines } from "./watched.ts";
import { worthLines } from "./worth.ts";

function headLine(forecast: Forecast, { width, strong }: Page): string {
  const run = forecast.iterations === 1 ? "1 future" : `${groupDigits(forecast.iterations)} futures`;
  const title = cut(forecast.plan.title, width - run.length - 2);
  const space = " ".repeat(Math.max(2, width - [...title].length - run.length));
  return strong(title) + space + run;
}

/**
 * The forecast as a person reads it: the answer first, then what was asked, what the plan as written says, what
 * drives it, the neighbouring levels, and how to get the same figures again. Every figure is the forecast's own.
 *
 * @param next  The plan as the caller named it, for the commands that come next, and whether it has responses to ask
 * about.
 * @param scenario  What was taken in and left out: it is said, and the commands that come next take it along.
 * @returns text ending with a newline
 */
export function forecastText(
  given: Forecast,
  page: Page,
  next: { planName: string; responses: boolean },
  scenario: ScenarioChoice = {},
): string {
  const forecast = plainTexts(given);
  const { planName } = next;
  const { width, strong } = page;
  const asked = askedSentence(forecast);
  const blocks: string[][] = [
    [headLine(forecast, page)],
    scenarioLines(scenario, width),
    [
      ...wrap(commitSentence(forecast), width).map(strong),
      ...(asked === undefined ? [] : wrap(asked, width)),
      ...wrap(asWrittenSentence(forecast), width),
      ...wrap(contingencySentence(forecast), width),
    ],
    driverLines(forecast, width),
    ...(forecast.tornado === undefined
      ? []
      : [
          tornadoLines(
            forecast.tornado,
            { money: hasMoney(forecast), currency: forecast.plan.currency },
            width,
          ),
        ]),
    levelLines(forecast, width),
    worthLines(forecast, width),
    targetLines(forecast, width),
    intervalLines(forecast, width),
    forecast.warnings.flatMap((warning) => wrap(`Warning: ${warning}`, width, "  ")),
    nextLines(
      [
        [`leeway explain ${planName}${scenarioOptions(scenario)}`, "why this much contingency"],
        ...(next.responses
          ? [
              [
                `leeway responses ${planName}${scenarioOptions(scenario)}`,
                "what each response costs and buys",
              ] satisfies Next,
            ]
          : []),
        [`leeway check ${planName}`, "findings about the plan itself"],
      ],
      width,
    ),
    wrap(stampSentence(forecast), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
