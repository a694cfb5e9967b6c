import type { Forecast } from "@leeway/core";

/** Light or dark. */
export type Theme = "light" | "dark";

/** What every chart is told: the document to draw in, width in px, theme. */
export interface ChartOptions {
  /** Where the elements are made: the page's document, or jsdom's in Node. */
  document: Document;
  /** Width of the drawing in px; 320 to 1,600, default 720. Height follows from the content. */
  width?: number;
  theme?: Theme;
}

/** A chart as a table: what the picture shows, in words a screen reader and a spreadsheet can take. */
export interface FigureTable {
  columns: { name: string; unit?: string; align: "start" | "end" }[];
  rows: string[][];
}

/** One chart with everything around it. The title is not inside `svg`; `figureSvg` puts it there. */
export interface Figure {
  /** The finding, in words, with its date and unit. */
  title: string;
  /** What is plotted, and the unit. */
  subtitle: string;
  /** Text alternative: one or two sentences. */
  summary: string;
  table: FigureTable;
  svg: SVGSVGElement;
}

/** A chart reads the forecast and nothing else: no clock, no state, no measuring of the page. */
export type Chart = (forecast: Forecast, options: ChartOptions) => Figure;
