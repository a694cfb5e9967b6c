/// <reference path="./woff2.d.ts" />
// What writes a brief out, with its type: loaded when there is one to write.
import sans from "@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline";
import serif from "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?inline";
import { briefHtml, briefSheet, preBriefHtml, preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { type Brief, type BriefAnswers, type Plan, preBriefOf } from "@leeway/core";
import { sheetView } from "./sheetView.ts";

export interface Written {
  brief: Brief;
  answers: BriefAnswers;
  plan: Plan;
  /** Id of the approver whose questions are answered; undefined: the brief itself. */
  who: string | undefined;
}

/** The fonts a page carries so that it looks the same everywhere, as data URLs. */
export const fonts = { serif, sans };

/** One HTML file with its type in it. */
export function writtenHtml({ brief, answers, plan, who }: Written): string {
  return who === undefined
    ? briefHtml(brief, answers.forecast, { fonts })
    : preBriefHtml(preBriefOf(plan, brief, answers, who), { fonts });
}

export function writtenMarkdown(written: Written): string {
  return sheetMarkdown(writtenSheet(written));
}

export function writtenSheet({ brief, answers, plan, who }: Written) {
  return who === undefined ? briefSheet(brief) : preBriefSheet(preBriefOf(plan, brief, answers, who));
}

/** The same to be read on the page. */
export function view(written: Written) {
  return sheetView(writtenSheet(written));
}
