import { formatDate, formatPercent, groupDigits } from "@leeway/charts";
import type { Paths, ScenarioChoice } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { pathLines } from "./pathsChain.ts";
import { indexLines, stakeLines } from "./pathsTasks.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";

function answerSentences({ paths, different, confidence, committed }: Paths): string[] {
  const [first] = paths;
  if (first === undefined || (different === 1 && first.tasks.length === 0))
    return ["Nothing is left to do, so nothing sets the finish."];
  const level = `${formatDate(committed.date, "long")} at ${formatPercent(confidence)}`;
  if (different === 1) return [`One chain of tasks set the finish in every future (${level}).`];
  const shown = paths.reduce((sum, { share }) => sum + share, 0);
  const listed =
    paths.length < different ? `the ${paths.length} below in ${formatPercent(shown)}` : "all are below";
  return [
    `${groupDigits(different)} different chains of tasks set the finish (${level}): the most frequent in ` +
      `${formatPercent(first.share)} of the futures, ${listed}.`,
    ...commonSentence(paths),
  ];
}

/** The tasks that all of the paths lead over, the ends aside. */
function commonSentence(paths: Paths["paths"]): string[] {
  const [first, ...others] = paths;
  if (first === undefined || others.length === 0) return [];
  const common = first.names.filter((_, at) =>
    others.every(({ tasks }) => tasks.includes(first.tasks[at] ?? "")),
  );
  if (common.length === 0) return ["No task is on all of these."];
  const list = common.length > 6 ? [...common.slice(0, 5), `${common.length - 5} more`] : common;
  return [`On all of these: ${list.join(", ")}.`];
}

/** Told where a task is critical clearly less often than it is on the listed paths. */
function daysOffSentence({ paths, tasks }: Paths): string[] {
  const criticality = new Map(tasks.map((task) => [task.id, task.criticality]));
  const on = new Map<string, number>();
  for (const { tasks: ids, share } of paths) for (const id of ids) on.set(id, (on.get(id) ?? 0) + share);
  const slips = [...on].some(([id, share]) => share > (criticality.get(id) ?? 1) + 0.02);
  return slips
    ? [
        "Days off lie between tasks of these paths: those before them set the finish, yet can slip over the days " +
          "off, so they are critical less often than they are on a path.",
      ]
    : [];
}

/**
 * Which chains of tasks set the finish, and what is at stake near them, as a person reads it. Every figure is the
 * library's own.
 *
 * @param indices  Also the trade's indices.
 * @returns text ending with a newline
 */
export function pathsText(
  given: Paths,
  page: Page,
  planName: string,
  scenario: ScenarioChoice,
  indices: boolean,
): string {
  const paths = plainTexts(given);
  const { width, strong } = page;
  const [answer = "", ...more] = answerSentences(paths);
  const shares = paths.paths.map(({ share }) => formatPercent(share));
  const blocks: string[][] = [
    [explanationHead(paths.plan.title, paths.stamp, page)],
    scenarioLines(scenario, width),
    [...wrap(answer, width).map(strong), ...more.flatMap((sentence) => wrap(sentence, width))],
    paths.paths.length === 0
      ? []
      : [
          "Driving paths, most frequent first",
          ...pathLines(paths.paths, shares, width),
          ...daysOffSentence(paths).flatMap((sentence) => wrap(sentence, width)),
        ],
    stakeLines(paths, width),
    indices ? indexLines(paths, width) : [],
    [
      "What to look at next",
      `  leeway why ${planName} TASK`,
      `  leeway future ${planName} --at ${paths.confidence}`,
      ...(indices ? [] : [`  leeway paths ${planName} --indices`]),
    ],
    wrap(explanationStamp(paths.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
