import { columnDays, formatDate, formatDays, formatPercent } from "@leeway/charts";
import type { ScenarioChoice, Why, WhyBound } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { inset } from "./inset.ts";
import { type Column, cut, type Page, table, wrap } from "./page.ts";
import { chainText } from "./pathsChain.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";
import { boundWords } from "./whyWords.ts";

function answerSentences({ task, asWritten, bounds, awayBefore, futures }: Why): string[] {
  const name = task.name;
  const date = formatDate(asWritten.startDate, "long");
  const binding = bounds.filter(({ binds }) => binds);
  if (asWritten.state === "finished")
    return [`${name} started on ${date} and is finished: both are recorded.`];
  const reasons = binding.map(boundWords).join("; and, just as late, ");
  const started = asWritten.state === "started";
  const held = started
    ? `${name} started on ${date}: that is recorded.`
    : `${name} starts on ${date} in the plan as written. What holds it: ${reasons}.`;
  const needed = asWritten.needed
    ? []
    : ["The plan as written does without it; it passes on what it waits for."];
  const away =
    awayBefore > 0.05
      ? [`Its people are away, or do not work, on ${formatDays(awayBefore)} before that start.`]
      : [];
  const slip = slipSentence(asWritten);
  const critical = `It is critical in ${formatPercent(futures.criticality)} of the futures.`;
  if (started) return [held, `${slip} ${critical}`];
  const { p10, p50, p90 } = futures.startDates;
  const range =
    p10 === p90
      ? `It starts on ${formatDate(p50, "weekday")} in at least 8 futures of 10`
      : `In 8 futures of 10 it starts between ${formatDate(p10, "weekday")} and ${formatDate(p90, "weekday")}`;
  return [held, ...needed, ...away, `${slip} ${range}. ${critical}`];
}

function slipSentence({ slack, state }: Why["asWritten"]): string {
  const slip = state === "started" ? "take longer" : "slip";
  if (slack === undefined) return `It could ${slip} without ever moving the finish.`;
  if (slack === 0) return `It cannot ${slip} without moving the finish as written.`;
  return `It could ${state === "started" ? "take" : "slip"} ${formatDays(slack)}${state === "started" ? " longer" : ""} before the finish as written moved.`;
}

function boundLines({ bounds }: Why, width: number): string[] {
  const columns: Column[] = [
    { heading: "what it waits for", align: "left" },
    { heading: "allows", align: "left" },
    { heading: "days earlier", align: "right" },
    { heading: "sets it in", align: "right" },
  ];
  const rows = bounds.map((bound) => [
    boundWords(bound),
    formatDate(bound.startDate, "weekday"),
    slackCell(bound),
    formatPercent(bound.share),
  ]);
  const ties = bounds.reduce((sum, { share }) => sum + share, 0) > 1.001;
  return [
    ...wrap("Each bound as written, and the share of the futures in which it set the start", width),
    ...table(columns, rows, width),
    ...(ties ? ["  where several bind at once, each counts"] : []),
  ];
}

/** A task that holds to the plan is not held by that in the plan itself. */
function slackCell({ kind, binds, slack }: WhyBound): string {
  return binds ? "holds it" : kind === "held-to-plan" ? "" : columnDays(slack);
}

/** Behind which tasks somebody was waited for, over the futures. */
function behindLines({ bounds }: Why, width: number): string[] {
  const said = bounds.flatMap(({ person, behind }: WhyBound) => {
    if (person === undefined || behind === undefined) return [];
    const list = behind.slice(0, 4).map(({ task, share }) => `${task.name} (${formatPercent(share)})`);
    const more = behind.length > 4 ? ` and ${behind.length - 4} more` : "";
    return wrap(`Waits for ${person.name} behind ${list.join(", ")}${more}.`, width);
  });
  return said;
}

/**
 * What holds a task's start, as a person reads it. Every figure is the library's own.
 *
 * @returns text ending with a newline
 */
export function whyText(given: Why, page: Page, planName: string, scenario: ScenarioChoice): string {
  const why = plainTexts(given);
  const { width, strong } = page;
  const [answer = "", ...more] = answerSentences(why);
  const chain = why.chain.map(({ task, way }) => ({ name: task.name, way }));
  const before = why.chain.at(-2)?.task.id;
  const blocks: string[][] = [
    [explanationHead(why.plan.title, why.stamp, page)],
    scenarioLines(scenario, width),
    [...wrap(answer, width).map(strong), ...more.flatMap((sentence) => wrap(sentence, width))],
    boundLines(why, width),
    behindLines(why, width),
    chain.length < 2 ? [] : ["The chain that sets it, as written", ...inset(chainText(chain), width)],
    [
      "What to look at next",
      ...(before === undefined ? [] : [`  leeway why ${planName} ${cut(before, 64)}`]),
      `  leeway paths ${planName}`,
    ],
    wrap(explanationStamp(why.stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}
