import type { Forecast, TornadoBar, TornadoSide } from "@leeway/core";
import { emptyDrawing } from "../draw/emptyDrawing.ts";
import type { FlagText } from "../draw/flags.ts";
import { kindWord } from "../draw/kinds.ts";
import type { ChartOptions, Figure } from "../figure/types.ts";
import { plainName, quoteName } from "../words/plainName.ts";
import { drawTornado } from "./drawTornado.ts";
import { heldText } from "./heldText.ts";
import { rankBars, reach } from "./rankBars.ts";

type Held = (bar: TornadoBar, side: "low" | "high") => string;

/** What tells the tornado in days from the one in money. */
export interface TornadoMeasure {
  amount: (side: TornadoSide) => number;
  /** Changes below this are not worth a bar. */
  least: number;
  /** What moves: "the committed finish". */
  what: string;
  unit: string;
  less: string;
  more: string;
  /** A change with its sign and no unit. */
  format: (change: number) => string;
  /** A change in words, with its unit: "8.2 working days earlier". */
  say: (change: number) => string;
  flag: FlagText;
}

/** The figure both tornados share. */
export function tornadoFigure(forecast: Forecast, measure: TornadoMeasure, options: ChartOptions): Figure {
  const bars = forecast.tornado ?? [];
  const { amount, what } = measure;
  const held: Held = (bar, side) => heldText(bar, side, forecast.plan.currency);
  const { shown, rest } = rankBars(bars, amount, measure.least);
  const all = [...shown, ...rest];
  const first = shown[0];
  const table = {
    columns: [
      { name: "Item", align: "start" as const },
      { name: "Kind", align: "start" as const },
      { name: "Low side", align: "end" as const },
      { name: "Change", unit: measure.unit, align: "end" as const },
      { name: "High side", align: "end" as const },
      { name: "Change", unit: measure.unit, align: "end" as const },
    ],
    rows: all.map((bar) => [
      plainName(bar.name),
      kindWord(bar.kind) || "task",
      held(bar, "low"),
      measure.format(amount(bar.low)),
      held(bar, "high"),
      measure.format(amount(bar.high)),
    ]),
  };
  const subtitle = `Change of ${what}, in ${measure.unit}, when one item alone is held at its low side (ring: P10, or absent) or its high side (disc: P90, or occurring)`;
  if (first === undefined) {
    const tried = forecast.tornado !== undefined;
    const title = tried ? `No single item moves ${what}` : "No item has been held at its ends yet";
    const sentence = !tried
      ? "This forecast was made without that part of the explanation."
      : bars.length === 0
        ? "No estimate, risk or assumption in this plan has two sides to be held at."
        : `Each item was held at its low and at its high side in turn; ${what} stayed where it was.`;
    return { title, subtitle, summary: `${title}. ${sentence}`, table, svg: emptyDrawing(sentence, options) };
  }
  const svg = drawTornado(
    {
      bars: shown,
      amount,
      format: measure.format,
      held,
      flag: measure.flag,
      less: measure.less,
      more: measure.more,
      rest: restText(rest, measure),
    },
    options,
  );
  const title = `${quoteName(first.name)} moves ${what} most: ${sides(first, measure, held)}`;
  const second = shown[1];
  const next =
    second === undefined
      ? "No other item moves it."
      : `Next comes ${quoteName(second.name)}: ${sides(second, measure, held)}.`;
  return { title, subtitle, summary: `${title}. ${next}`, table, svg };
}

/** "from 8.2 working days earlier (20 days) to 12 working days later (45 days)", low side first. */
function sides(bar: TornadoBar, { amount, say }: TornadoMeasure, held: Held): string {
  return `from ${say(amount(bar.low))} (${held(bar, "low")}) to ${say(amount(bar.high))} (${held(bar, "high")})`;
}

function restText(rest: readonly TornadoBar[], measure: TornadoMeasure): string {
  const largest = rest[0];
  if (largest === undefined) return "";
  const span = measure.format(reach(largest, measure.amount)).replace("+", "");
  return `and ${rest.length} more, none reaching further than ${span}`;
}
