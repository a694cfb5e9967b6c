import type { Brief, Forecast } from "@leeway/core";
import { briefSheet } from "../briefSheet.ts";
import { columnKeys } from "../sheet/columnKeys.ts";
import { fitRoom } from "../sheet/fitRoom.ts";
import type { Section, SectionKey } from "../sheet/types.ts";
import { blockHtml } from "./blockHtml.ts";
import { escapeHtml } from "./escapeHtml.ts";
import { futuresStrip } from "./futuresStrip.ts";
import { page } from "./page.ts";
import { driversHtml } from "./shareBars.ts";
import type { PageFonts } from "./style.ts";

/** How a brief's page is written. */
export interface BriefHtmlOptions {
  /** The type it carries; without it the reader's own serif and sans are used. */
  fonts?: PageFonts;
}

/**
 * The brief as one self-contained HTML file: no script, nothing fetched, every text of the plan escaped, dark or light on
 * a screen, light on paper, where it takes exactly one A4 page. A pure function of text: no document is needed.
 *
 * @param forecast  Of the same run: the fifty futures are drawn from its curve.
 */
export function briefHtml(brief: Brief, forecast: Forecast, { fonts }: BriefHtmlOptions = {}): string {
  const sheet = briefSheet(brief, fitRoom(brief));
  const section = (key: SectionKey) => sheet.sections.find((each) => each.key === key);
  const decision = section("decision");
  const outcome = section("outcome");
  const run = section("run");
  const commitment = section("commitment");
  const parts = [
    `<header><h1>${escapeHtml(sheet.title)}</h1><p class="head">${escapeHtml(sheet.head)}</p></header>`,
    decision === undefined ? "" : sectionHtml(decision),
    commitment === undefined ? "" : commitmentHtml(commitment, forecast),
    `<div class="columns">${columnKeys
      .flatMap((key) => section(key) ?? [])
      .map((each) => (each.key === "drivers" ? driversHtml(each, brief) : sectionHtml(each)))
      .join("")}</div>`,
    outcome === undefined ? "" : sectionHtml(outcome, "scroll"),
    run === undefined
      ? ""
      : `<footer><h2>${escapeHtml(run.title)}</h2>${run.blocks.map(blockHtml).join("")}</footer>`,
  ];
  return page({
    title: `Brief: ${sheet.title}`,
    main: `<main class="brief">${parts.join("")}</main>`,
    ...(fonts === undefined ? {} : { fonts }),
  });
}

/** One section of a brief as HTML, every text escaped. */
export function sectionHtml({ key, title, blocks }: Section, more = ""): string {
  return `<section${placed(key)} class="${`${key} ${more}`.trim()}"><h2>${escapeHtml(title)}</h2>${blocks.map(blockHtml).join("")}</section>`;
}

/** A section that figures elsewhere lead to can be gone to. */
function placed(key: SectionKey): string {
  return key === "commitment" ? ` id="${key}"` : "";
}

/** The table over the full width, then its words beside the fifty futures. */
function commitmentHtml({ key, title, blocks }: Section, forecast: Forecast): string {
  const [table, ...words] = blocks;
  const caption = "Each dot is one way this could go; rings finish after the committed date.";
  return `<section${placed(key)} class="${key} scroll"><h2>${escapeHtml(title)}</h2>${table === undefined ? "" : blockHtml(table)}<div class="beside"><div>${words.map(blockHtml).join("")}</div><figure>${futuresStrip(forecast)}<figcaption>${escapeHtml(caption)}</figcaption></figure></div></section>`;
}
