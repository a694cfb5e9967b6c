import { formatDate, formatDays, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import type { Future, ScenarioChoice } from "@leeway/core";
import { explanationStamp } from "./confidenceHead.ts";
import { costTable } from "./futureCost.ts";
import { drawLines, eventLines } from "./futureEvents.ts";
import { taskLines } from "./futureTasks.ts";
import { inset } from "./inset.ts";
import { cut, type Page, wrap } from "./page.ts";
import { chainText } from "./pathsChain.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

function headLine({ plan, iteration, stamp }: Future, { width, strong }: Page): string {
  const run = `future ${groupDigits(iteration)} of ${groupDigits(stamp.iterations)}`;
  const shown = cut(plan.title, width - run.length - 2);
  return strong(shown) + " ".repeat(Math.max(2, width - [...shown].length - run.length)) + run;
}

function answerSentences({ finish, cost, asWritten, at, plan }: Future): string[] {
  const late = finish.workingDays - asWritten.workingDays;
  const against =
    Math.abs(late) < 0.05
      ? "as the plan is written"
      : `${formatDays(Math.abs(late))} ${late > 0 ? "after" : "before"} the plan as written`;
  const money = cost.lines.length > 0;
  const sum = money ? `, and costs ${formatMoney(Math.round(cost.total), plan.currency)}` : "";
  const answer = `This future finishes on ${formatDate(finish.date, "long")}, ${against}${sum}.`;
  const dearer = money ? `; ${formatPercent(cost.level)} cost no more` : "";
  const chosen =
    at === undefined ? [] : [`Of those that finish where ${formatPercent(at)} of all have, it is the first.`];
  return [answer, `${formatPercent(finish.level)} of the futures finish no later${dearer}.`, ...chosen];
}

/**
 * One future told as a person reads it: the answer, what occurred, the chain that set the finish, every task, the cost.
 * Every figure is the library's own.
 *
 * @param draws  Also every draw that counted.
 * @returns text ending with a newline
 */
export function futureText(
  given: Future,
  page: Page,
  planName: string,
  scenario: ScenarioChoice,
  draws: boolean,
): string {
  const future = plainTexts(given);
  const { width, strong } = page;
  const [answer = "", ...more] = answerSentences(future);
  const chain = future.path.map(({ task, way }) => ({ name: task.name, way }));
  const blocks: string[][] = [
    [headLine(future, page)],
    scenarioLines(scenario, width),
    [...wrap(answer, width).map(strong), ...more.flatMap((sentence) => wrap(sentence, width))],
    eventLines(future, width),
    chain.length === 0 ? [] : ["What set the finish", ...inset(chainText(chain), width)],
    taskLines(future, width),
    costTable(future, width),
    draws ? drawLines(future, width) : [],
    [
      "What to look at next",
      ...(draws ? [] : [`  leeway future ${planName} --iteration ${future.iteration} --draws`]),
      `  leeway paths ${planName}`,
    ],
    wrap(explanationStamp(future.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
