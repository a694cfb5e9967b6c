import type { Brief, BriefAnswers, PreBrief } from "@leeway/core";

export function pageOfBrief(_answer: Brief | PreBrief, _answers: BriefAnswers): string {
  return "";
}
