import { formatDate, formatPercent } from "@leeway/charts";
import { type Estimate, estimateQuantile, type Pooling, type Task } from "@leeway/core";
import { amount, amountIn } from "./amountWords.ts";
import { inset } from "./inset.ts";
import { nextLines } from "./nextLines.ts";
import { type Page, table, wrap } from "./page.ts";
import { plainTexts } from "./plainText.ts";

export interface Pooled {
  task: Task;
  pooling: Pooling;
  unitWords: string;
}
interface About {
  name: (id: string) => string;
  /** The plan as a shell word. */
  file: string;
}

const BOUNDS = {
  extremes: ["least", "most"],
  "p10-p90": ["1 in 10 below", "1 in 10 above"],
  "p5-p95": ["1 in 20 below", "1 in 20 above"],
} as const;

/** What people said, task by task, what it makes together and how far apart they are. */
export function poolText(title: string, pooled: readonly Pooled[], page: Page, about: About): string {
  const { width, strong } = page;
  if (pooled.length === 0) {
    return `${[strong(title), "", ...wrap(`No task has opinions yet. Ask with leeway interview ${about.file} TASK --by PERSON.`, width)].join("\n")}\n`;
  }
  const apart = pooled.filter(({ pooling }) => pooling.disagreement.level === "apart").length;
  const head = [
    strong(title),
    ...wrap(
      `${pooled.length === 1 ? "One estimate has" : `${pooled.length} estimates have`} opinions${apartWords(apart, pooled.length)}`,
      width,
    ),
  ];
  const blocks = pooled.map((each) => poolingLines(each, page, about));
  const how = wrap(
    "Pooled: the average of what people say at the same chance, everybody weighing the same. Nothing is settled by this.",
    width,
  );
  const task = pooled.length === 1 ? pooled[0]?.task.id : "TASK";
  const next = nextLines(
    [
      [`leeway interview ${about.file} ${task} --by PERSON`, "ask somebody else, or again"],
      [`leeway pool ${about.file} ${task} --write`, "settle the estimate with it, naming the people"],
    ],
    width,
  );
  return `${[head, ...blocks, how, next].map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

function apartWords(apart: number, of: number): string {
  if (apart === 0) return ".";
  const where = of === 1 ? "and people are" : `and on ${apart === of ? "all" : apart} of them people are`;
  return `, ${where} apart: talk before pooling.`;
}

function poolingLines(given: Pooled, { width, strong }: Page, { name }: About): string[] {
  const { task, pooling, unitWords } = given;
  const [low, high] = BOUNDS[pooling.bounds];
  const rows = pooling.voices.map((voice) => [
    plainTexts(name(voice.by)),
    amount(voice.low),
    amount(voice.likely),
    amount(voice.high),
    voice.date === undefined ? "" : formatDate(voice.date, "short"),
  ]);
  const settled = settledRow(task, pooling);
  const several = pooling.voices.length > 1;
  return [
    strong(plainTexts(`${task.name} (${task.id}), ${pooling.of} in ${unitWords}`)),
    ...table(
      [
        { heading: "", align: "left" },
        { heading: low, align: "right" },
        { heading: "likely", align: "right" },
        { heading: high, align: "right" },
        { heading: "said", align: "left" },
      ],
      [
        ...rows,
        ...(several
          ? [["Pooled", amount(pooling.low), amount(pooling.likely), amount(pooling.high), ""]]
          : []),
        ...settled,
      ],
      width,
    ),
    ...(several ? disagreementSentences(given, name).flatMap((text) => inset(text, width)) : []),
    ...pooling.voices.flatMap(({ by, basis, dissent }) => [
      ...(basis === undefined ? [] : inset(plainTexts(`${name(by)} knows from: ${basis}`), width)),
      ...(dissent === undefined ? [] : inset(plainTexts(`${name(by)} does not agree: ${dissent}`), width)),
    ]),
  ];
}

/** What the plan counts now, in the bounds of the table. */
function settledRow(task: Task, { of, bounds, unit }: Pooling): string[][] {
  const estimate: Estimate | undefined = task[of];
  if (estimate === undefined) return [];
  if (estimate.unit !== unit && of !== "cost") return [["In the plan", "", `in ${estimate.unit}`, "", ""]];
  const p = { extremes: 0, "p10-p90": 0.1, "p5-p95": 0.05 }[bounds];
  const likely =
    "likely" in estimate && estimate.likely !== undefined ? estimate.likely : estimateQuantile(estimate, 0.5);
  const three = [estimateQuantile(estimate, p), likely, estimateQuantile(estimate, 1 - p)];
  return [["In the plan", ...three.map(amount), ""]];
}

/** How far apart people are, in words and figures. */
export function disagreementSentences(
  { pooling, unitWords }: Pooled,
  name: (id: string) => string,
): string[] {
  const { disagreement, voices, restated, curveGap } = pooling;
  const { level, likelyLow, likelyHigh, apart, farOut, common, either, pooled } = disagreement;
  const who = (id: string) => plainTexts(name(id));
  const spread =
    likelyLow === likelyHigh
      ? `All ${voices.length} give the same likely value.`
      : `Likely values go from ${amount(likelyLow)} to ${amountIn(likelyHigh, unitWords)}.`;
  const pairs = apart.map(([lower, higher]) => `${who(lower)} and ${who(higher)}`);
  const apartText =
    pairs.length === 0
      ? ""
      : ` The ranges of ${pairs.slice(0, 3).join(", of ")}${pairs.length > 3 ? " and others" : ""} have no value in ` +
        "common: they may not be speaking of the same work. Find out before pooling.";
  const out = farOut.map(
    ({ by, side, others }) =>
      ` ${who(by)} is ${side === "between" ? "in nobody else's range" : `far ${side === "low" ? "below" : "above"} all others, who span ${amount(others.low)} to ${amount(others.high)}`}.`,
  );
  const shared =
    common === undefined || level === "one"
      ? ""
      : ` ${voices.length === 2 ? "Both" : "All"} hold ${amount(common.low)} to ${amount(common.high)} possible.`;
  return [
    `${level === "agree" ? "They agree. " : ""}${spread}${shared}${apartText}${out.join("")}`,
    `If one of them is right and nobody knows who, eight times in ten it is ${amount(either.low)} to ` +
      `${amountIn(either.high, unitWords)}; pooled it is ${amount(pooled.low)} to ${amount(pooled.high)}.`,
    ...(restated
      ? [
          "Not all were stated in the same way; they are compared as one-in-ten values, in days where it is time.",
        ]
      : []),
    ...(curveGap > 0.02
      ? [
          `Their curves lean differently: the pooled curve is off the average by up to ${formatPercent(curveGap)} of its range.`,
        ]
      : []),
  ];
}
