import type { PlanDraft } from "../definition/draft.ts";
import type { PageText } from "../types.ts";
import { must, present } from "./must.ts";

/** Free texts in the order of the document. */
export function buildPageTexts(drafts: PlanDraft["texts"]): PageText[] {
  return (drafts ?? []).map(({ after, text, note, was }) =>
    present({ after: must(after), text: must(text), note, was }),
  );
}
