import {
  columnDays,
  formatDate,
  formatDays,
  formatMoney,
  formatPercent,
  groupDigits,
  roundMove,
} from "@leeway/charts";
import type { AssumptionsTested, AssumptionTested, ScenarioChoice } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { nextLines } from "./nextLines.ts";
import { type Column, type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { scenarioLines } from "./scenarioLines.ts";
import { scenarioOptions } from "./scenarioOptions.ts";

/**
 * What the plan counts on, the most load-bearing first, and what each would move were it false.
 *
 * @returns text ending with a newline
 */
export function assumptionsText(
  given: AssumptionsTested,
  page: Page,
  planWord: string,
  scenario: ScenarioChoice = {},
): string {
  const answer = plainTexts(given);
  const { width, strong } = page;
  const { assumptions, plan, stamp } = answer;
  const first = assumptions.find(({ ifFalse, noImpact }) => ifFalse !== undefined && noImpact === undefined);
  const blocks: string[][] = [
    [explanationHead(plan.title, stamp, page)],
    scenarioLines(scenario, width),
    wrap(headSentence(answer, first), width).map(strong),
    tableLines(answer, width),
    ...assumptions.map((one) => watchLines(one, width)),
    nextLines(
      [
        ...(first === undefined || assumptions.length === 1
          ? []
          : ([
              [
                `leeway assumptions ${planWord} --if-false ${first.id}${scenarioOptions(scenario)}`,
                "this one alone, as JSON with --json",
              ],
            ] as [string, string][])),
        [`leeway responses ${planWord}`, "what can be done about them, and what it buys"],
        [`leeway triggers ${planWord}`, "whether a signpost was seen"],
      ],
      width,
    ),
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function headSentence(answer: AssumptionsTested, first: AssumptionTested | undefined): string {
  const { assumptions, base, confidence } = answer;
  if (assumptions.length === 0) return "The plan states no assumption that could still prove wrong.";
  if (first?.ifFalse === undefined)
    return `No assumption of this plan moves its date${spends(answer) ? " or its sum" : ""}: none states what happens when it is wrong.`;
  const { standing, moved } = first.ifFalse;
  return (
    `The most load-bearing: “${first.statement}”. Were it false, the ${formatPercent(confidence)} level would go from ` +
    `${formatDate(base.date, "weekday")} to ${formatDate(standing.date, "weekday")}: ${movedWords(moved, answer)}.`
  );
}

/** Whether the plan speaks of money: as it stands, or were one of them false. */
function spends({ base, asked, assumptions }: AssumptionsTested): boolean {
  return (
    asked.budget !== undefined ||
    base.cost !== 0 ||
    assumptions.some(({ ifFalse }) => ifFalse !== undefined && ifFalse.moved.money !== 0)
  );
}

function movedWords(
  { workingDays, money }: { workingDays: number; money: number },
  answer: AssumptionsTested,
): string {
  const days = formatDays(Math.abs(workingDays));
  const time = days.startsWith("0 ") ? "no day" : `${days} ${workingDays < 0 ? "earlier" : "later"}`;
  if (!spends(answer)) return time;
  const { plan } = answer;
  const sum = roundMove(money);
  return sum === 0
    ? `${time}, for the same sum`
    : `${time}, and ${formatMoney(Math.abs(sum), plan.currency)} ${sum < 0 ? "less" : "more"}`;
}

function tableLines(answer: AssumptionsTested, width: number): string[] {
  const { assumptions, plan, asked, chance } = answer;
  const money = spends(answer);
  const tested = assumptions.filter(({ ifFalse }) => ifFalse !== undefined);
  if (tested.length === 0) return [];
  const right = (heading: string): Column => ({ heading, align: "right" });
  const date = asked.finishBy !== undefined;
  const sum = asked.budget !== undefined;
  const rows = tested.map(({ statement, chanceWrong, ifFalse }) => [
    statement,
    formatPercent(chanceWrong),
    columnDays(ifFalse?.moved.workingDays ?? 0, true),
    ...(money ? [signed(roundMove(ifFalse?.moved.money ?? 0))] : []),
    ...(date ? [formatPercent(ifFalse?.chance.finishBy ?? 0)] : []),
    ...(sum ? [formatPercent(ifFalse?.chance.budget ?? 0)] : []),
  ]);
  const now = [
    ...(date
      ? [`by ${formatDate(asked.finishBy ?? "", "short")} ${formatPercent(chance.finishBy ?? 0)}`]
      : []),
    ...(sum
      ? [`within ${formatMoney(asked.budget ?? 0, plan.currency)} ${formatPercent(chance.budget ?? 0)}`]
      : []),
  ];
  return [
    "Were it false: what the commitment moves by, from the plan as it stands",
    ...table(
      [
        { heading: "", align: "left" },
        right("wrong"),
        right("days"),
        ...(money ? [right(plan.currency)] : []),
        ...(date ? [right("date asked")] : []),
        ...(sum ? [right("sum asked")] : []),
      ],
      rows,
      width,
    ),
    ...(now.length === 0
      ? []
      : wrap(`As it stands: ${now.join(", ")}.`, width - 2).map((line) => `  ${line}`)),
  ];
}

function signed(value: number): string {
  return value > 0 ? `+${groupDigits(value)}` : groupDigits(value);
}

/** How it would be noticed, and by whom. */
function watchLines(one: AssumptionTested, width: number): string[] {
  const { statement, owner, signpost, reviewBy, tripped, noImpact, occurred } = one;
  const parts = [
    ...(occurred === true ? ["It has proved wrong, and every figure counts it."] : []),
    ...(noImpact === true && occurred !== true
      ? [
          "It states no impact, so nothing moves were it false: say in `impacts` what would, or name the risk that does.",
        ]
      : []),
    signpost === undefined ? "No signpost is stated." : `Signpost: ${ended(signpost)}`,
    ...(tripped === undefined ? [] : [`Seen on ${formatDate(tripped, "weekday")}.`]),
    owner === undefined ? "Nobody owns it." : `${owner.name} watches it.`,
    reviewBy === undefined
      ? "No day of review is stated."
      : `To be looked at by ${formatDate(reviewBy, "weekday")}.`,
  ];
  return [...wrap(ended(statement), width), ...wrap(parts.join(" "), width - 2).map((line) => `  ${line}`)];
}

function ended(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
