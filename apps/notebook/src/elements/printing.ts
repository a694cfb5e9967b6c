import { PageElement } from "./pageElement.ts";
import { pageTurns } from "./pageTurns.ts";

/** What unfolds on paper; the rest is left out there, and the foot of the page says so. */
const unfolds =
  "main details.findings:not([open]), .findings details:not([open]), #changes details:not([open], figure details)";

/**
 * On paper nothing waits and nothing is folded: what was still to be drawn is drawn, and lists that were folded are open
 * until the print is made. Returns a function that ends it.
 */
export function printing(on: Document): () => void {
  const media = matchMedia("print");
  let opened: HTMLDetailsElement[] = [];
  const change = (): void => {
    for (const one of opened.splice(0)) one.open = false;
    if (!media.matches) return;
    drawAll(on);
    opened = [...on.querySelectorAll<HTMLDetailsElement>(unfolds)];
    for (const one of opened) one.open = true;
  };
  const before = (): void => drawAll(on);
  addEventListener("beforeprint", before);
  media.addEventListener("change", change);
  return () => {
    removeEventListener("beforeprint", before);
    media.removeEventListener("change", change);
  };
}

/** An element that is drawn hands on to those within it, which then wait in their turn. */
const deepest = 4;

function drawAll(on: Document): void {
  for (let depth = 0; depth < deepest; depth++)
    for (const one of on.querySelectorAll("main *, footer *"))
      if (one instanceof PageElement) one.drawForPaper();
  pageTurns.all();
}
