import type { Comparison, MoveKind } from "@leeway/core";
import { emptyDrawing } from "../draw/emptyDrawing.ts";
import type { ChartOptions, Figure } from "../figure/types.ts";
import { errorText } from "../measure/errorText.ts";
import type { Measure } from "../measure/types.ts";
import { drawWaterfall } from "../waterfall/drawWaterfall.ts";
import { largestFalls, rankFalls } from "../waterfall/largestFalls.ts";
import { standingWords } from "../waterfall/standingFlags.ts";
import type { Fall } from "../waterfall/types.ts";
import { formatPercent } from "../words/formatPercent.ts";
import { plainName, quoteName } from "../words/plainName.ts";

/** The figure both charts of what moved have in common; `measure` tells days from money. */
export function movesFigure(comparison: Comparison, measure: Measure, options: ChartOptions): Figure {
  const { from, to, moves, confidence } = comparison;
  const level = formatPercent(confidence);
  const whole = measure.amount(comparison.difference);
  const also = comparison.alsoChanged.length;
  const nothing =
    also === 0 ? "" : ` ${also === 1 ? "One change" : `${also} changes`} besides moved nothing.`;
  const falls: Fall[] = moves.map((move, k) => ({
    id: String(k).padStart(6, "0"),
    name: move.what,
    word: kindWord(move.kind),
    tint: move.kind === "risks" ? "register" : move.kind === "people" ? "people" : "range",
    value: measure.amount(move),
    error: measure.amount(move.error),
  }));
  const ranked = rankFalls(falls);
  const [before, after] = [standingWords(from, measure), standingWords(to, measure)];
  const limits = falls.some((fall) => fall.error > 0)
    ? "; ± and whiskers: 95 % limits of the sampled orders"
    : "";
  const largest = ranked
    .slice(0, 3)
    .map((fall) => `${quoteName(fall.name)} ${say(fall.value, measure)}`)
    .join("; ");
  return {
    title: finding(ranked, whole, measure, { before, after }),
    subtitle: `What each group of changes did to the ${level} commitment, in ${measure.unit}, on the same draws, averaged over the orders in which they can be made${limits}`,
    summary:
      moves.length === 0
        ? `Between the two plans nothing moved the commitment: it is ${after} in both.${nothing}`
        : `A waterfall from the earlier commitment, ${before}, to the present one, ${after}, in ${moves.length === 1 ? "one step" : `${moves.length} steps`} that add up exactly. ${moves.length === 1 ? "" : "Largest: "}${largest}.${nothing}`,
    table: {
      columns: [
        { name: "Change", align: "start" },
        { name: "Kind", align: "start" },
        { name: "Moved", unit: measure.unit, align: "end" },
        { name: "Standard error", unit: measure.unit, align: "end" },
        { name: "In detail", align: "start" },
      ],
      rows: [
        ...ranked.map((fall) => [
          plainName(fall.name),
          fall.word,
          measure.column(fall.value),
          errorText(fall.error, measure),
          plainName((moves[Number(fall.id)]?.changes ?? []).join("; "), 600),
        ]),
        ["All together", "", measure.column(whole), "", ""],
      ],
    },
    svg:
      moves.length === 0
        ? emptyDrawing("No change between the two plans touches a date or a sum.", options)
        : drawWaterfall(
            {
              falls: largestFalls(falls, measure.least),
              from: { level: "half", title: "Before", detail: before },
              to: { level: "committed", title: "Now", detail: `${after} · ${level}` },
              total: { name: "All together", value: whole },
              measure,
              nameShare: 0.42,
              nameLines: 6,
            },
            options,
          ),
  };
}

function kindWord(kind: MoveKind): string {
  switch (kind) {
    case "actuals":
      return "progress";
    case "other":
      return "";
    default:
      return kind;
  }
}

function say(value: number, { say: size, less, more, least }: Measure): string {
  if (Math.abs(value) < least) return "no change";
  return `${size(value)} ${value < 0 ? less : more}`;
}

/** "moves 17 working days earlier", "falls by EUR 19,200". */
function moves(whole: number, measure: Measure): string {
  if (measure.what === "date") return `moves ${say(whole, measure)}`;
  return `${whole < 0 ? "falls" : "rises"} by ${measure.say(whole)}`;
}

function finding(
  ranked: readonly Fall[],
  whole: number,
  measure: Measure,
  { before, after }: { before: string; after: string },
): string {
  const { least, what } = measure;
  const real = ranked.filter((fall) => Math.abs(fall.value) >= least);
  const first = real[0];
  // What was moved by less than it is rounded to must not read as a move to where it was.
  const where = before === after ? `still ${after} as rounded` : `to ${after}`;
  const moved =
    Math.abs(whole) < least
      ? `The committed ${what} stays ${after}`
      : `The committed ${what} ${moves(whole, measure)}, ${where}`;
  if (first === undefined) return Math.abs(whole) < least ? `${moved}: nothing moved it` : moved;
  // "Permit decided: P90 from 45 to 60 days": a title has room for what changed, not for how.
  const name = `“${plainName(first.name.split(": ")[0] ?? "", 44)}”`;
  if (real.length === 1) return `${moved}: ${name}`;
  if (Math.abs(whole) < least)
    return `${moved}: changes cancel out, the largest ${name}, ${say(first.value, measure)}`;
  const against = first.value < 0 === whole < 0 ? measure.say(first.value) : say(first.value, measure);
  return `${moved}, most by ${name}, ${against}`;
}
