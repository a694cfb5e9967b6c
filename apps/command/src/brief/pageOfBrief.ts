/// <reference path="./woff2.d.ts" />
import sans from "@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline";
import serif from "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2?inline";
import { briefHtml, preBriefHtml } from "@leeway/charts/brief";
import type { Brief, BriefAnswers, PreBrief } from "@leeway/core";

/** A brief or a pre-brief as one HTML file with its type in it. Brings some 100 kB of fonts: import it where needed. */
export function pageOfBrief(answer: Brief | PreBrief, answers: BriefAnswers): string {
  const fonts = { serif, sans };
  return "brief" in answer ? preBriefHtml(answer, { fonts }) : briefHtml(answer, answers.forecast, { fonts });
}
