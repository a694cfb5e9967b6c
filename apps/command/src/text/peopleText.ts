import type { PeopleLoad, ScenarioChoice } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { limitsSentence, lossSentences } from "./peopleAnswer.ts";
import { lossLines } from "./peopleLosses.ts";
import { waitLines } from "./peopleWaits.ts";
import { personLines, personWeeks, weekStrips } from "./peopleWeeks.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

/**
 * Load against capacity as a person reads it: what limited people cost, who is missed when away, who waits for whom,
 * then the load. Every figure is the library's own.
 *
 * @param wanted  Id of a person to be shown week by week.
 * @returns text ending with a newline
 */
export function peopleText(
  given: PeopleLoad,
  page: Page,
  planName: string,
  scenario: ScenarioChoice = {},
  wanted?: string,
): string {
  const load = plainTexts(given);
  const { width, strong } = page;
  const person = load.people.find(({ id }) => id === wanted);
  const loss = lossSentences(load);
  const [first] = load.people;
  const blocks: string[][] = [
    [explanationHead(load.plan.title, load.stamp, page)],
    scenarioLines(scenario, width),
    [
      ...loss.flatMap((sentence, k) => wrap(sentence, width).map(k === 0 ? strong : String)),
      ...wrap(limitsSentence(load), width).map(loss.length === 0 ? strong : String),
    ],
    lossLines(load, width),
    waitLines(load, width),
    personLines(load, width),
    person === undefined ? weekStrips(load, width) : personWeeks(load, person, width),
    first === undefined
      ? []
      : [
          "What to look at next",
          `  leeway people ${planName} --person ${first.id}`,
          `  leeway people ${planName} --lose-each --days 10`,
        ],
    wrap(explanationStamp(load.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
