import { formatDate, formatDays, formatPercent } from "@leeway/charts";
import { togetherCoefficient, type Wave, type WaveComparison, type WaveRange } from "@leeway/core";
import { amount } from "./amountWords.ts";
import { inset } from "./inset.ts";
import { type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";

export interface DetailAbout {
  title: string;
  currency: string;
  stamp: string;
}

/** Outline tasks beside the detail that replaced them. */
export function detailText(given: WaveComparison, about: DetailAbout, page: Page): string {
  const { waves, gone, still } = plainTexts(given);
  const { width, strong } = page;
  const names = (tasks: readonly { name: string; id: string }[]) =>
    tasks.map(({ name, id }) => `${name} (${id})`).join(", ");
  const blocks: string[][] = [
    [strong(plainTexts(about.title)), ...wrap(summary(waves.length, still.length, gone.length), width)],
    ...waves.map((wave) => waveLines(wave, about.currency, page)),
    [
      ...(still.length === 0 ? [] : wrap(`Outline still: ${names(still)}.`, width, "  ")),
      ...(gone.length === 0
        ? []
        : wrap(
            `Gone without detail: ${names(gone)}. Give its detail \`detailOf\`, or say why it is gone.`,
            width,
            "  ",
          )),
    ],
    waves.length === 0
      ? []
      : wrap(
          "Each side runs alone from the plan's start, with its people and calendars and without the register: ranges " +
            "are compared, not positions in the plan. What it does to the commitment: leeway compare.",
          width,
        ),
    wrap(about.stamp, width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function summary(waves: number, still: number, gone: number): string {
  if (waves === 0 && still + gone === 0)
    return "The old plan has no outline task, and no task of the new one details one.";
  const broken = waves === 1 ? "One outline task has" : `${waves === 0 ? "No" : waves} outline tasks have`;
  return `${broken} become detail; ${still} ${still === 1 ? "is" : "are"} outline still.`;
}

function waveLines(wave: Wave, currency: string, { width, strong }: Page): string[] {
  const { outline, detail, before, after, together, reasons } = wave;
  const money = [before, after].some(({ money: { p10, p90 } }) => p10 !== 0 || p90 !== 0);
  const row = (name: string, { workingDays, money: sum }: WaveRange) => [
    name,
    ...[workingDays.p10, workingDays.p50, workingDays.p90].map(amount),
    ...(money ? [`${amount(sum.p10)} to ${amount(sum.p90)}`] : []),
  ];
  return [
    ...wrap(`${outline.name} (${outline.id}): ${finding(wave)}`, width).map((line, k) =>
      k === 0 ? strong(line) : line,
    ),
    ...table(
      [
        { heading: "working days", align: "left" },
        { heading: "1 in 10 below", align: "right" },
        { heading: "middle", align: "right" },
        { heading: "1 in 10 above", align: "right" },
        ...(money ? [{ heading: `${currency}, 8 in 10`, align: "right" as const }] : []),
      ],
      [
        row("as outline", before),
        row(`as detail, ${detail.length} ${detail.length === 1 ? "task" : "tasks"}`, after),
        ...(together === undefined ? [] : [row("... moving together", together)]),
      ],
      width,
    ),
    ...inset(`Detail: ${detail.map(({ name }) => name).join(", ")}.`, width),
    ...splitNote(wave, width),
    ...(reasons.length === 0
      ? inset("No reason is logged: add one to the plan's `changes`, naming the task.", width)
      : reasons.flatMap(({ date, who, what, why }) =>
          inset(
            [
              date === undefined ? "" : `${formatDate(date, "short")}:`,
              what === undefined ? "" : `${what.replace(/\.$/, "")}.`,
              why === undefined ? "" : `Why: ${why}`,
              who === undefined ? "" : `(${who})`,
            ]
              .filter((part) => part !== "")
              .join(" "),
            width,
          ),
        )),
  ];
}

function finding({ before, after, widthRatio }: Wave): string {
  const moved = after.workingDays.p50 - before.workingDays.p50;
  const middle =
    Math.abs(moved) < 0.05
      ? "the middle stays"
      : `the middle is ${formatDays(Math.abs(moved))} ${moved > 0 ? "longer" : "shorter"}`;
  if (widthRatio === undefined) return `${middle}; it had no range as an outline.`;
  const change = Math.abs(widthRatio - 1);
  const range =
    change < 0.01
      ? "the range is as wide"
      : `the range is ${formatPercent(change)} ${widthRatio > 1 ? "wider" : "narrower"}`;
  return `${range}, ${middle}.`;
}

function splitNote({ widthRatio, correlated, together }: Wave, width: number): string[] {
  if (widthRatio === undefined || widthRatio >= 1 || correlated || together === undefined) return [];
  return inset(
    `The parts vary on their own here, which narrows a sum without anybody knowing more. Where they share a cause, say so ` +
      `in \`correlations\`; at ${togetherCoefficient} for each pair it would be as in the last row.`,
    width,
  );
}
