import { plainName } from "@leeway/charts";
import type { Brief, BriefFigure, FigureSource, RunStamp } from "@leeway/core";
import { explanationHead, explanationStamp } from "./confidenceHead.ts";
import { type Page, wrap } from "./page.ts";
import { shellWord } from "./shellWord.ts";

/** Figures listed at most; the JSON has them all. */
const MOST = 60;

/** Where the figures of a brief come from, and how to get each of them again. */
export function traceText(brief: Brief, word: string, page: Page, planWord: string): string {
  const { stamp, plan, trace = [] } = brief;
  const { width, strong } = page;
  const found = trace.filter((one) => word === "all" || holds(one, word));
  const shown = found.slice(0, MOST);
  const more = found.length - shown.length;
  const sources = [...new Set(shown.map(({ from }) => from))];
  const blocks = [
    [explanationHead(plainName(plan.title), stamp, page)],
    wrap(headOf(found.length, trace.length, word), width).map(strong),
    shown.flatMap(({ figure, value, from, at }) => [
      `  ${figure} = ${value}`,
      `    ${from}${at === undefined ? "" : ` ${at}`}`,
    ]),
    more > 0 ? [`  and ${more} more; brief --json has them all as \`trace\``] : [],
    sources.length === 0
      ? []
      : [
          "To get them again",
          ...sources
            .flatMap((from) => wrap(`${from}: ${again(from, stamp, planWord)}`, width - 2, "  "))
            .map((line) => `  ${line}`),
        ],
    wrap(explanationStamp(stamp), width),
  ];
  return `${blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n")}\n`;
}

function holds({ figure, value }: BriefFigure, word: string): boolean {
  const plain = word.toLowerCase().replaceAll(",", "");
  return figure.toLowerCase().includes(plain) || String(value).includes(plain);
}

function headOf(found: number, all: number, word: string): string {
  if (word === "all") return `All ${all} figures of the brief, and where each comes from.`;
  if (found === 0)
    return `None of the ${all} figures of the brief has “${plainName(word)}” in its place or its value.`;
  return `${found} of the ${all} figures of the brief, and where each comes from.`;
}

/** The call that prints the answer a figure stands in, on the same draws. */
function again(from: FigureSource, { seed, iterations, design }: RunStamp, planWord: string): string {
  if (from === "plan") return "the plan says so";
  if (from === "brief") return "added up from the figures beside it";
  const plain = design === "plain" ? " --design plain" : "";
  return `leeway ${from} ${planWord} --json --seed ${shellWord(seed)} --iterations ${iterations}${plain}`;
}
