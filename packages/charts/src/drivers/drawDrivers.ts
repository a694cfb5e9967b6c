import type { Driver } from "@leeway/core";
import { itemLabel } from "../draw/itemLabel.ts";
import { kindFill, kindWord } from "../draw/kinds.ts";
import { make } from "../draw/make.ts";
import { drawingWidth, openSvg } from "../draw/openSvg.ts";
import { textWidth } from "../draw/textWidth.ts";
import type { ChartOptions } from "../figure/types.ts";
import { palette } from "../palette.ts";
import { fitScale } from "../tornado/fitScale.ts";
import { columnDays } from "../words/columnDays.ts";
import { plainName } from "../words/plainName.ts";

const gap = 7;

/** Two bars for each driver, side by side: days and money, each from its own nought. No currency: days alone. */
export function drawDrivers(
  drivers: readonly Driver[],
  currency: string | undefined,
  money: (value: number) => string,
  options: ChartOptions,
): SVGSVGElement {
  const { document } = options;
  const colours = palette(options.theme);
  const width = drawingWidth(options.width);
  const inline = width < 560;
  const names = drivers.map((driver) => plainName(driver.name));
  const nameWidth = inline
    ? width - 4
    : Math.min(width * 0.34, Math.max(90, ...names.map((name) => textWidth(name, 13) + 4)));
  const rowHeight = inline ? 54 : 40;
  const top = 28;
  const bottom = top + drivers.length * rowHeight;
  const svg = openSvg(document, width, bottom + 6, colours);
  const left = inline ? 2 : nameWidth + 20;
  const centre = (k: number) => top + k * rowHeight + (inline ? 36 : rowHeight / 2);

  const days: Measure = {
    name: "Working days",
    value: (d) => (columnDays(d.days) === "0" ? 0 : d.days),
    text: (d) => columnDays(d.days),
  };
  const panels = currency === undefined ? [{ ...days, from: left, to: width - 2 }] : both(currency);
  drivers.forEach((driver, k) => {
    const place = { x: inline ? 2 : 0, y: inline ? centre(k) - 14 : centre(k), width: nameWidth, inline };
    svg.append(itemLabel(document, names[k] ?? "", kindWord(driver.kind), place, colours));
  });
  for (const panel of panels) {
    const scale = fitScale(
      drivers.map((driver) => {
        const [value, label] = [panel.value(driver), textWidth(panel.text(driver), 13, true) + gap];
        const [from, to] = [Math.min(0, value), Math.max(0, value)];
        return { from, to, before: value < 0 ? label : 1, after: value < 0 ? 1 : label };
      }),
      panel.from,
      panel.to,
    );
    const zero = scale(0);
    svg.append(make(document, "text", { x: zero, y: 14, fill: colours.inkQuiet }, panel.name));
    const axis = { x1: zero, x2: zero, stroke: colours.ink };
    if (!inline) svg.append(make(document, "line", { ...axis, y1: top - 6, y2: bottom }));
    drivers.forEach((driver, k) => {
      const value = panel.value(driver);
      const x = scale(value);
      const bar = { x: Math.min(zero, x), y: centre(k) - 7, width: Math.abs(x - zero), height: 14 };
      if (value !== 0) svg.append(make(document, "rect", { ...bar, ...kindFill(driver.kind, colours) }));
      if (inline) svg.append(make(document, "line", { ...axis, y1: centre(k) - 11, y2: centre(k) + 11 }));
      const anchor = value < 0 ? "end" : "start";
      const at = { x: x + (value < 0 ? -gap : gap), y: centre(k) + 4.5, "text-anchor": anchor };
      svg.append(make(document, "text", { ...at, "font-size": 13, "font-weight": 600 }, panel.text(driver)));
    });
  }
  return svg;

  /** Each panel has room for its labels; what is left is shared alike. */
  function both(unit: string): (Measure & { from: number; to: number })[] {
    const sums: Measure = { name: unit, value: (d) => d.money, text: (d) => money(d.money) };
    const between = 24;
    const [needDays, needSums] = [labelRoom(drivers, days), labelRoom(drivers, sums)];
    const split = left + needDays + Math.max(0, (width - 2 - left - between - needDays - needSums) / 2);
    return [
      { ...days, from: left, to: split },
      { ...sums, from: split + between, to: width - 2 },
    ];
  }
}

interface Measure {
  name: string;
  value: (driver: Driver) => number;
  text: (driver: Driver) => string;
}

/** Px the labels of a panel need, before its bars and after them, and its name. */
function labelRoom(drivers: readonly Driver[], { name, value, text }: Measure): number {
  let [before, after] = [0, 0];
  for (const driver of drivers) {
    const label = textWidth(text(driver), 13, true) + gap;
    if (value(driver) < 0) before = Math.max(before, label);
    else after = Math.max(after, label);
  }
  return Math.max(before + after, textWidth(name, 12));
}
