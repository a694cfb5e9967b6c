import { join } from "node:path";
import {
  type Chart,
  costCurve,
  driversBars,
  fiftyFutures,
  figureSvg,
  finishCurve,
  tornadoDays,
  tornadoMoney,
} from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { JSDOM } from "jsdom";
import { callProblem } from "../call/callProblem.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printNote, printProblems } from "../output.ts";

/** File name without `.svg`, and what is drawn, in reading order. */
const CHARTS: readonly [name: string, chart: Chart][] = [
  ["finish-curve", finishCurve],
  ["fifty-futures", fiftyFutures],
  ["cost-curve", costCurve],
  ["drivers", driversBars],
];
/** Only where the tornado was asked for. */
const TORNADOS: readonly [name: string, chart: Chart][] = [
  ["tornado-days", tornadoDays],
  ["tornado-money", tornadoMoney],
];

/**
 * Draws every chart of a forecast into a folder as SVG files, each written whole, and lists them on standard
 * error.
 *
 * @returns false when one could not be written, after saying so
 */
export function drawCharts(forecast: Forecast, folder: string): boolean {
  const { document } = new JSDOM("").window;
  // All are drawn before the first is written: a chart that fails leaves no half set behind.
  const charts = forecast.tornado === undefined ? CHARTS : [...CHARTS, ...TORNADOS];
  const files = charts.map(([name, chart]) => ({
    path: join(folder, `${name}.svg`),
    text: figureSvg(chart(forecast, { document })),
  }));
  for (const { path, text } of files) {
    try {
      writeWhole(path, text, true);
    } catch (error) {
      const reason = error instanceof Error ? error.message : String(error);
      const rule = `It could not be written (${reason}).`;
      printProblems([callProblem("unwritable", path, rule, "Name a folder that may be written to.")]);
      return false;
    }
  }
  printNote(`Wrote ${files.map(({ path }) => path).join(", ")}.`);
  return true;
}
