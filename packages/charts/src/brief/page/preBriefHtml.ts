import type { PreBrief } from "@leeway/core";
import { preBriefSheet } from "../preBriefSheet.ts";
import { blockHtml } from "./blockHtml.ts";
import { type BriefHtmlOptions, sectionHtml } from "./briefHtml.ts";
import { escapeHtml } from "./escapeHtml.ts";
import { page } from "./page.ts";

/** The pre-brief of one approver as one self-contained HTML file, as `briefHtml`; on paper as long as it needs. */
export function preBriefHtml(pre: PreBrief, { fonts }: BriefHtmlOptions = {}): string {
  const sheet = preBriefSheet(pre);
  const [opening, ask, ...rest] = sheet.sections;
  const run = rest.find(({ key }) => key === "run");
  const main = [
    `<header><h1>${escapeHtml(sheet.title)}</h1><p class="head">${escapeHtml(sheet.head)}</p></header>`,
    ask === undefined ? "" : sectionHtml({ ...ask, key: "decision" }),
    `<div class="columns">${[...(opening === undefined ? [] : [opening]), ...rest]
      .filter(({ key }) => key !== "run")
      .map((each) => sectionHtml(each))
      .join("")}</div>`,
    run === undefined
      ? ""
      : `<footer><h2>${escapeHtml(run.title)}</h2>${run.blocks.map(blockHtml).join("")}</footer>`,
  ].join("");
  return page({
    title: `Pre-brief: ${sheet.title}`,
    main: `<main class="prebrief">${main}</main>`,
    ...(fonts === undefined ? {} : { fonts }),
  });
}
