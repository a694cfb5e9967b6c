/** Px above and below the row that are left free with it: enough to read a neighbour. */
const spare = 68;

/**
 * Where the curve of an estimate is shown: over the page at its lower edge, or below the line that stays at its upper
 * edge where the row that is worked in stands low. So it hides neither that row nor its neighbours, and moves none. Only where
 * neither edge has the room, the page is scrolled a little.
 *
 * Its cell is a popover: whatever is painted later on the page stays under it.
 */
export class CurvePlace {
  #cell: HTMLElement;
  #row: HTMLElement | undefined;
  #above = false;

  constructor(cell: HTMLElement) {
    this.#cell = cell;
  }

  open(row: HTMLElement): void {
    if (this.#row === undefined) {
      addEventListener("scroll", this.#follow, { passive: true });
      addEventListener("resize", this.#follow);
      // The keyboard of a phone takes its room from the window that is seen, and no more than that is told.
      visualViewport?.addEventListener("resize", this.#follow);
    }
    this.#row = row;
    this.#cell.style.visibility = "";
    this.#cell.showPopover();
    const missing = this.#put();
    if (missing > 0) scrollBy({ top: missing, behavior: "instant" });
  }

  close(): void {
    this.#row = undefined;
    removeEventListener("scroll", this.#follow);
    removeEventListener("resize", this.#follow);
    visualViewport?.removeEventListener("resize", this.#follow);
    keepFree(0, 0);
  }

  /**
   * A row out of sight needs no curve: what the reader has gone to may stand under it, a question with its buttons too. One
   * that has the focus stays, or the focus would be lost.
   */
  #follow = (): void => {
    const row = this.#row?.getBoundingClientRect();
    const outside = row === undefined || row.bottom <= this.#top() || row.top >= innerHeight;
    const away = outside && !this.#cell.contains(document.activeElement);
    this.#cell.style.visibility = away ? "hidden" : "";
    if (away) keepFree(0, 0);
    else this.#put();
  };

  /** Where the line that stays ends. */
  #top(): number {
    return Math.max(0, document.querySelector("leeway-bar")?.getBoundingClientRect().bottom ?? 0);
  }

  /** Returns by how much the page has to be scrolled for the row and what is below it to be seen. */
  #put(): number {
    const cell = this.#cell;
    const row = this.#row?.getBoundingClientRect();
    const report = cell.closest(".report")?.getBoundingClientRect();
    if (row === undefined || report === undefined) return 0;
    const top = this.#top();
    const seen = visualViewport;
    // What is zoomed into is not a smaller window.
    const bottom = seen !== null && seen.scale === 1 ? Math.min(innerHeight, seen.height) : innerHeight;
    cell.style.left = `${report.left}px`;
    cell.style.width = `${report.width}px`;
    cell.style.maxHeight = `${Math.max(160, bottom - top - row.height - spare - 8)}px`;
    const { height } = cell.getBoundingClientRect();
    const fitsBelow = row.bottom + spare <= bottom - height;
    const fitsAbove = row.top - spare >= top + height;
    // Where it is, it stays as long as it can.
    if (this.#above ? !fitsAbove : !fitsBelow) this.#above = fitsAbove;
    cell.style.top = `${this.#above ? top : bottom - height}px`;
    keepFree(this.#above ? height : 0, this.#above ? 0 : height);
    if (fitsBelow || fitsAbove) return 0;
    return Math.min(row.bottom + spare - (bottom - height), row.top - top - 8);
  }
}

let kept = { above: 0, below: 0 };

/**
 * What the browser scrolls to, and the words that stay at the lower edge, keep clear of it. Where they do already nothing is
 * written; and the root's values are not inherited (page.css): else every element of the page would be styled anew.
 */
function keepFree(above: number, below: number): void {
  if (kept.above === above && kept.below === below) return;
  kept = { above, below };
  const { style } = document.documentElement;
  style.setProperty("--curve-above", `${above}px`);
  style.setProperty("--curve-below", `${below}px`);
  for (const told of document.querySelectorAll<HTMLElement>(".rows-told")) told.style.bottom = `${below}px`;
}
