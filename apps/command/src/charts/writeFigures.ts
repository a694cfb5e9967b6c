import { join } from "node:path";
import { type ChartOptions, type Figure, figureSvg } from "@leeway/charts";
import { JSDOM } from "jsdom";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printNote, printProblems } from "../output.ts";

/** File name without `.svg`, and what is drawn. */
export type FigureFile = [name: string, draw: (options: ChartOptions) => Figure];

/**
 * Draws figures into a folder as SVG files, each written whole, and lists them on standard error. Takes half a second
 * to load: import it only where something is drawn.
 *
 * @returns false when one could not be written, after saying so
 */
export function writeFigures(files: readonly FigureFile[], folder: string): boolean {
  const { document } = new JSDOM("").window;
  // All are drawn before the first is written: a chart that fails leaves no half set behind.
  const drawn = files.map(([name, draw]) => ({
    path: join(folder, `${name}.svg`),
    text: figureSvg(draw({ document })),
  }));
  for (const { path, text } of drawn) {
    try {
      writeWhole(path, text, true);
    } catch (error) {
      const rule = "It could not be written: a file has that name.";
      printProblems([whyNotWritten(path, error, [rule, "Name a folder that may be written to."])]);
      return false;
    }
  }
  printNote(`Wrote ${drawn.map(({ path }) => path).join(", ")}.`);
  return true;
}
