import { type Forecast, forecast, readPlan } from "@leeway/core";
import "../src/elements/all.ts";
import { LeewayPage } from "../src/elements/leewayPage.ts";
import { createKeeper } from "../src/keeping/keeper.ts";
import { createStore } from "../src/store/store.ts";
import type { Reader } from "../src/worker/reader.ts";

/** What the page shows before its own scripts have run. */
export interface Opening {
  forecast: Forecast;
  /** Outline, bar and answer as the page itself draws them on a first visit; nothing in it is an element of ours yet. */
  html: string;
}

/**
 * Draws the top of the page with the page's own elements. Needs the globals of a page (`drawApart.mjs`) before
 * it is imported.
 *
 * @param text  The plan that the page opens on; throws when it is none.
 */
export async function drawOpening(text: string): Promise<Opening> {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(problems.map(({ rule }) => rule).join("\n"));
  const { forecast: answer } = forecast(plan);
  if (answer === undefined) throw new Error("The plan that the page opens on has no answer.");
  const never = new Promise<never>(() => {});
  const reader: Reader = { read: () => never, try: () => never, hurry() {} };
  const store = createStore(text, reader, () => ({ run() {}, stop() {} }), undefined, answer);
  const page = new LeewayPage();
  page.opening = text;
  // Watching nothing, it opens no channel, which would keep the build from ending.
  page.keeper = createKeeper(
    store,
    () => never,
    undefined,
    () => 0,
    () => {},
  );
  page.store = store;
  document.body.append(page);
  // Elements inside elements draw one after the other, all before the next task.
  await new Promise((resolve) => setTimeout(resolve));
  const html = top(page);
  page.remove();
  return { forecast: answer, html };
}

/** Outline, bar and answer, as plain markup; what is folded away is left out, today's date with it. */
function top(page: LeewayPage): string {
  const parts = page.querySelectorAll(
    "main > :not(#answer), footer, .skip, #announcement, details > :not(summary)",
  );
  for (const part of parts) part.remove();
  const comments = document.createTreeWalker(page, NodeFilter.SHOW_COMMENT);
  const marks: Node[] = [];
  while (comments.nextNode() !== null) marks.push(comments.currentNode);
  for (const mark of marks) mark.parentNode?.removeChild(mark);
  // Once the page's elements are defined they would take these for theirs.
  return page.innerHTML
    .replaceAll(/(<\/?)leeway-/g, "$1still-")
    .replaceAll(/\s+/g, " ")
    .trim();
}
