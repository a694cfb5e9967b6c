import type { Pooling } from "@leeway/core";
import type { ChartOptions, Figure } from "./figure/types.ts";
import { drawRanges } from "./ranges/drawRanges.ts";
import { plainName, quoteName } from "./words/plainName.ts";

/** Whose estimates of what are drawn. */
export interface OpinionsAbout {
  /** Name of the task. */
  task: string;
  unitWords: string;
  /** The name of a person by id. */
  name: (id: string) => string;
}

const ENDS = {
  extremes: "least and most",
  "p10-p90": "one in ten at each end",
  "p5-p95": "one in twenty at each end",
};

/** What each person said of one task, and what it comes to. Reads a pooling and nothing else. */
export function opinionsBars(pooling: Pooling, about: OpinionsAbout, options: ChartOptions): Figure {
  const { voices, disagreement } = pooling;
  const { task, unitWords, name } = about;
  const { apart, farOut, level, common } = disagreement;
  const [pair] = apart;
  const [out] = farOut;
  const who = (id: string) => plainName(name(id), 40);
  const title =
    out !== undefined
      ? `${who(out.by)} stands alone on ${quoteName(task)}`
      : pair !== undefined
        ? `${who(pair[0])} and ${who(pair[1])} have no value in common on ${quoteName(task)}`
        : level === "one"
          ? `${who(voices[0]?.by ?? "")} alone has spoken of ${quoteName(task)}`
          : level === "agree"
            ? `They agree on ${quoteName(task)}`
            : `They differ on ${quoteName(task)}, with values in common`;
  const row = (label: string, three: { low: number; likely: number; high: number }, strong: boolean) => ({
    name: label,
    word: "",
    ...three,
    text: [three.low, three.likely, three.high].map(short).join(" · "),
    strong,
  });
  const { low, likely, high } = pooling;
  const rows = [
    ...voices.map((voice) => row(who(voice.by), voice, false)),
    ...(voices.length > 1 ? [row("Pooled", { low, likely, high }, true)] : []),
  ];
  const shared =
    common === undefined
      ? "No value is possible to all."
      : `Possible to all: ${short(common.low)} to ${short(common.high)}.`;
  return {
    title,
    subtitle: `Bars: ${ENDS[pooling.bounds]}; tick: likely; in ${unitWords}. Pooled: the average, everybody weighing the same`,
    summary: `${rows.map((each) => `${each.name}: ${each.text}`).join("; ")} ${unitWords}. ${shared}`,
    table: {
      columns: [
        { name: "Who", align: "start" },
        { name: "Low", unit: unitWords, align: "end" },
        { name: "Likely", unit: unitWords, align: "end" },
        { name: "High", unit: unitWords, align: "end" },
      ],
      rows: rows.map((each) => [each.name, short(each.low), short(each.likely), short(each.high)]),
    },
    svg: drawRanges(rows, { name: unitWords.replace(/^./, (letter) => letter.toUpperCase()) }, options),
  };
}

function short(value: number): string {
  const text = String(Number(value.toPrecision(Math.abs(value) >= 100 ? 4 : 3)));
  return text.replace("-", "−");
}
