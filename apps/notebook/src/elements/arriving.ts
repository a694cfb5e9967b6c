/**
 * A link to a place of the page takes the reader's keys along: what it leads to has the focus afterwards, in sight. In
 * a row that is what the link names within it, or its estimate, or else its first field; in a section its heading.
 * Browsers scroll there and leave the focus on nothing. Returns a function that ends it.
 */
export function arriving(on: Document): () => void {
  const arrive = (event: MouseEvent): void => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const link = event.target instanceof Element ? event.target.closest<HTMLElement>("a[href^='#']") : null;
    const id = link?.getAttribute("href")?.slice(1) ?? "";
    if (id === "") return;
    // The browser goes there first, and takes the focus away as it does.
    setTimeout(() => {
      const place = on.getElementById(id);
      const named = link?.dataset.within;
      const within = named === undefined ? null : place?.querySelector<HTMLElement>(named);
      const first = within ?? (place === null ? null : firstOf(place));
      first?.focus({ preventScroll: true });
    });
  };
  on.addEventListener("click", arrive);
  return () => on.removeEventListener("click", arrive);
}

function firstOf(place: Element): HTMLElement | null {
  if (place.matches("section")) return place.querySelector<HTMLElement>("h1, h2 > button");
  const estimate = place.querySelector<HTMLElement>("input[data-estimate]");
  return estimate ?? place.querySelector<HTMLElement>("input, textarea, select, button, a[href]");
}
