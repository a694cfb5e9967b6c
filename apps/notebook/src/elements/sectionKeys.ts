import { isGivenUp, isTyped } from "./field.ts";

/** What the keys do, in a few words beside the heading that has the focus. */
export const sectionKeyWords = "↑ ↓ go to other sections, Escape comes back here.";

/**
 * Keys between sections, so that nobody has to tab through one to reach the next: Escape goes from wherever the reader
 * is in a section to its heading, and on the headings the arrows, Home and End go from one to another. An Escape that
 * gives something up (an entry, a list of suggestions, a panel) does only that. Returns a function that ends it.
 *
 * Source: keyboard interaction of the accordion pattern, WAI-ARIA Authoring Practices. Recalled.
 */
export function sectionKeys(on: Document): () => void {
  let givesUp = false;
  // Before anything hears the key: afterwards it can no longer be told.
  const before = (event: KeyboardEvent): void => {
    givesUp = event.key === "Escape" && hasToGiveUp(event.target);
  };
  const after = (event: KeyboardEvent): void => {
    const { target } = event;
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (!(target instanceof HTMLElement)) return;
    if (event.key === "Escape") {
      if (givesUp) return;
      // Free text stands below its section.
      const section = target.closest("section[id]") ?? target.closest("leeway-texts")?.previousElementSibling;
      section?.querySelector<HTMLElement>(heading)?.focus();
      return;
    }
    if (!target.matches(heading)) return;
    const all = [...on.querySelectorAll<HTMLElement>(heading)];
    const at = all.indexOf(target);
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    const next = to === undefined ? undefined : all[to];
    if (next === undefined) return;
    event.preventDefault();
    next.focus({ preventScroll: true });
    next.closest("section")?.scrollIntoView();
  };
  on.addEventListener("keydown", before, true);
  on.addEventListener("keydown", after);
  return () => {
    on.removeEventListener("keydown", before, true);
    on.removeEventListener("keydown", after);
  };
}

const heading = "section[id] > h1, section[id] > h2 > button";

/** Something is open or typed that Escape closes or gives up where the reader is. */
function hasToGiveUp(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return true;
  if (target.closest("[popover], .new-row, .curve-cell") !== null) return true;
  if (target.ownerDocument.querySelector(":popover-open:not(.curve-cell)") !== null) return true;
  if (target instanceof HTMLTextAreaElement && target.dataset.shown === undefined)
    return target.closest("leeway-texts") !== null || target.dataset.typing === "true";
  if (!isTyped(target)) return false;
  if (isGivenUp(target) || target.matches("[role=combobox][aria-expanded=true]")) return true;
  // The curve of an estimate lies over other rows: an Escape takes it away. One that is not seen takes none.
  const curve = target.closest("tr")?.querySelector(".curve-cell");
  return curve?.checkVisibility({ visibilityProperty: true }) === true;
}
