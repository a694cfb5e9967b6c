/** Less than this, in px, is no movement. */
const still = 0.5;

/**
 * Keeps the section the reader is at where it is on the screen while sections above it take or give up room. Browsers
 * hold what they find first in sight, if they hold anything: that may be the empty foot of the section above. Returns a
 * function that ends it.
 */
export function holdInPlace(sections: Iterable<Element>): () => void {
  const list = [...sections];
  let held: { section: Element; top: number } | undefined;

  const look = (): void => {
    const tops = list.map((section) => ({ section, top: section.getBoundingClientRect().top }));
    const at = tops.filter(({ top }) => top >= 0 && top <= innerHeight / 3).at(-1);
    const above = at !== undefined && isInEarlier(document.activeElement, at.section);
    held = at === undefined || above || scrollY <= 0 ? undefined : at;
  };
  // Sizes are told after layout and before anything is painted: nothing is seen to move.
  const sizes = new ResizeObserver(() => {
    if (held !== undefined && !isInEarlier(document.activeElement, held.section)) {
      const moved = held.section.getBoundingClientRect().top - held.top;
      if (Math.abs(moved) > still) scrollBy({ top: moved, behavior: "instant" });
    }
    look();
  });
  for (const section of list) sizes.observe(section);
  addEventListener("scroll", look, { passive: true });
  // Before whoever else hears of the focus: the page is laid out then, and would have to be once more after them.
  addEventListener("focusin", look, { capture: true });
  return () => {
    sizes.disconnect();
    removeEventListener("scroll", look);
    removeEventListener("focusin", look, { capture: true });
  };
}

/** Whoever works in a section further up, and sees the next one begin, keeps their own place. */
function isInEarlier(element: Element | null, section: Element): boolean {
  const own = element?.closest("section[id]");
  if (own === null || own === undefined || own === section) return false;
  const { top, bottom } = own.getBoundingClientRect();
  const before = (own.compareDocumentPosition(section) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  return before && bottom > 0 && top < innerHeight;
}
