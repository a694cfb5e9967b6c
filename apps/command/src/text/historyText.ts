import {
  driftSentence,
  formatDate,
  formatPercent,
  groupDigits,
  keptSum,
  largestSentence,
  movedSentence,
  plainName,
  termsWords,
} from "@leeway/charts";
import type { Break, Comparison, Drift, DriftPoint, HistoryEntry } from "@leeway/core";
import { besidePlan } from "../history/besidePlan.ts";
import type { Standing } from "../history/computeStanding.ts";
import type { Kept } from "../history/keptHistory.ts";
import type { PlanFile } from "../history/planFile.ts";
import { mostOf } from "./mostOf.ts";
import { type Next, nextLines } from "./nextLines.ts";
import { type Column, cut, type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";
import { triggerLines } from "./triggerLines.ts";

/** From one kept forecast to the next; without `comparison` one of the two versions was not kept. */
export interface Step {
  from: HistoryEntry;
  to: HistoryEntry;
  comparison?: Comparison;
}
export interface HistoryAnswer {
  file: PlanFile;
  kept: Kept;
  drift: Drift | undefined;
  steps: readonly Step[] | undefined;
  standing: Standing;
}

/** How date and sum drifted, in words and as a table; whether the lines hold together; which triggers trip. */
export function historyText(answer: HistoryAnswer, page: Page, planWord: string): string {
  const { width, strong } = page;
  const { file, kept, standing } = answer;
  const drift = answer.drift === undefined ? undefined : plainTexts(answer.drift);
  const triggers = plainTexts(standing.triggers);
  const { history } = besidePlan(file.path);
  const count = kept.entries.length;
  const head = `${groupDigits(count)} ${count === 1 ? "forecast" : "forecasts"} kept`;
  const title = cut(plainName(file.plan.title), width - head.length - 2);
  const largest = drift && largestSentence(drift);
  const last = kept.entries.at(-1);
  const explained: Next = [`leeway history ${planWord} --explain`, "what moved from each to the next"];
  const blocks: string[][] = [
    [strong(title) + " ".repeat(Math.max(2, width - [...title].length - head.length)) + head],
    drift === undefined
      ? wrap(`No forecast was kept yet: \`leeway history ${planWord} --add\` keeps the present one.`, width)
      : [
          ...wrap(driftSentence(drift), width).map(strong),
          ...(largest === undefined ? [] : wrap(largest, width)),
        ],
    drift === undefined ? [] : driftTable(drift, width),
    drift === undefined ? [] : changeLines(drift, width),
    answer.steps === undefined ? [] : stepLines(plainTexts(answer.steps), width),
    last !== undefined && last.sha256 !== file.plan.sha256
      ? wrap(
          `The plan is not the one last kept: \`leeway history ${planWord} --add --why "..."\` keeps its forecast.`,
          width,
        )
      : [],
    count + kept.breaks.length === 0 && kept.torn === undefined ? [] : chainLines(kept, history, width),
    triggers.triggers.length === 0 ? [] : triggerLines(triggers, page),
    nextLines(
      [
        ...(answer.steps === undefined && count > 1 ? [explained] : []),
        [`leeway forecast ${planWord}`, "the forecast of today"],
      ],
      width,
    ),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}

function driftTable({ points }: Drift, width: number): string[] {
  const sums = points.some((point) => keptSum(point) !== undefined);
  const dated = points.some(({ entry }) => entry.chance.finishBy !== undefined);
  const currency = points.at(-1)?.entry.currency ?? "";
  // The currency stands once, over its column; only another one beside its sum.
  const sumOf = (point: DriftPoint) => (keptSum(point) ?? "").replace(`${currency} `, "");
  const columns: Column[] = [
    { heading: "as of", align: "left" },
    { heading: "committed", align: "right" },
    { heading: "days", align: "right" },
    { heading: "P10", align: "right" },
    { heading: "P90", align: "right" },
    ...(sums ? [{ heading: currency, align: "right" } as const] : []),
    ...(dated ? [{ heading: "chance", align: "right" } as const] : []),
  ];
  const rows = points.map((point) => {
    const { finish, chance } = point.entry;
    const moved = point.moved?.days;
    return [
      formatDate(point.asOf, "short"),
      formatDate(finish.committed.date, "short"),
      moved === undefined ? "" : moved > 0 ? `+${moved}` : moved < 0 ? `−${-moved}` : "0",
      formatDate(finish.p10.date, "short"),
      formatDate(finish.p90.date, "short"),
      ...(sums ? [sumOf(point)] : []),
      ...(dated ? [chance.finishBy === undefined ? "" : formatPercent(chance.finishBy)] : []),
    ];
  });
  const said = `Committed date${sums ? " and sum" : ""}; calendar days since the line before${dated ? "; chance of the date asked for" : ""}`;
  return [...wrap(said, width), ...table(columns, rows, width)];
}

/** Why each forecast was kept, who signed it, and what makes it less than alike to the one before. */
function changeLines({ points }: Drift, width: number): string[] {
  return [
    "Why they were kept",
    ...points.flatMap((point) => {
      const { change, approvals } = point.entry;
      const parts = [
        change.what,
        ...(change.why === undefined ? [] : [change.why]),
        ...(change.who === undefined ? [] : [`recorded by ${change.who}`]),
        ...approvals.map(({ who, decision }) => `${who}: ${decision.replaceAll("-", " ")}`),
        ...(termsWords(point) === undefined ? [] : [`not only progress: ${termsWords(point)}`]),
      ];
      return hanging(`${formatDate(point.asOf, "short")}  ${parts.join("; ")}`, width);
    }),
  ];
}

function hanging(text: string, width: number): string[] {
  const [first = "", ...rest] = wrap(text, width - 4);
  return [`  ${first}`, ...rest.map((line) => `    ${line}`)];
}

function stepLines(steps: readonly Step[], width: number): string[] {
  if (steps.length === 0) return ["Nothing moved: every forecast kept is of the same plan."];
  return [
    "What moved from each to the next, with the later one's seed and futures",
    ...steps.flatMap(({ from, to, comparison }) => {
      const when = formatDate(to.statusDate ?? to.date, "short");
      if (comparison === undefined) {
        const kept = `${from.sha256.slice(0, 12)} or ${to.sha256.slice(0, 12)}`;
        return hanging(
          `${when}  One of the two versions, ${kept}, was not kept: nothing can be said.`,
          width,
        );
      }
      return hanging(`${when}  ${[movedSentence(comparison), ...mostOf(comparison)].join(" ")}`, width);
    }),
  ];
}

/** Whether every line follows from the one before it, and where not. */
function chainLines({ entries, breaks, torn }: Kept, history: string, width: number): string[] {
  const said = breaks.map((each) => breakWords(each, history));
  if (torn !== undefined) {
    said.push(
      `${history}:${torn.line}: this line was never finished. The next forecast kept moves the piece aside; nothing else is lost.`,
    );
  }
  const hash = entries.at(-1)?.hash ?? "";
  const holds =
    breaks.length === 0
      ? [
          `The history holds together: each of ${entries.length === 1 ? "1 line" : `${entries.length} lines`} is linked to the one before. ` +
            `Last link ${hash.slice(0, 16)}; noted elsewhere, it also shows that none is missing at the end.`,
        ]
      : ["The history does not hold together:"];
  return [...(entries.length === 0 ? [] : holds), ...said].flatMap((text) => wrap(text, width));
}

function breakWords({ line, what }: Break, history: string): string {
  const at = `${history}:${line}:`;
  if (what === "unreadable") return `${at} this is no line of a history.`;
  if (what === "changed") return `${at} this line was changed after it was written.`;
  return `${at} this line does not follow from the one before: a line was taken out, put in or moved.`;
}
