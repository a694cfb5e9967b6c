import type { TornadoBar } from "@leeway/core";
import { formatMoney } from "../words/formatMoney.ts";
import { plainName } from "../words/plainName.ts";

/**
 * What an item is held at, in the words of a chart: sums as everywhere else, and of an assumption that it
 * holds or is wrong, since "occurs" could be read as either.
 */
export function heldText(bar: TornadoBar, side: "low" | "high", currency: string): string {
  if (bar.kind === "assumption" && bar.sides === "absent-occurs")
    return side === "low" ? "holds" : "is wrong";
  const text = plainName(side === "low" ? bar.lowText : bar.highText, 40);
  const sum = /^(-?\d+(?:\.\d+)?) (\S+)$/.exec(text);
  return sum !== null && sum[2] === currency ? formatMoney(Number(sum[1]), currency) : text;
}
