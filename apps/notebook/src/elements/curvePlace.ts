/** Px above and below the row that are left free with it: enough to read a neighbour. */
const spare = 68;

/**
 * Where the curve of an estimate is shown: over the page at its lower edge, or below the line that stays at its upper
 * edge where the row that is worked in stands low. So it hides neither that row nor its neighbours, and moves none. Only where
 * neither edge has the room, the page is scrolled a little.
 *
 * Nor does it hide an entry that waits for another one, and what is said of it: it goes to the other edge, or away.
 *
 * Its cell is a popover: whatever is painted later on the page stays under it.
 */
export class CurvePlace {
  #cell: HTMLElement;
  #row: HTMLElement | undefined;
  #above = false;
  /** What the page says of entries that wait: a list that the browser keeps. */
  #messages = document.getElementsByClassName("message");
  #told = 0;
  /** Rows that grow move the one that is worked in. */
  #grown = new ResizeObserver(() => {
    if (this.#row !== undefined) this.#follow();
  });
  /** A message that came is kept in sight, also where its row has the room for it and does not grow. */
  #changed = new MutationObserver(() => {
    const more = this.#messages.length > this.#told;
    this.#told = this.#messages.length;
    if (more && this.#row !== undefined) this.#settle();
  });

  /** Its curve is drawn once it is loaded, and its words go on in further lines. */
  #drawn = new MutationObserver(() => {
    if (this.#row !== undefined) this.#follow();
  });

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
    this.#told = this.#messages.length;
    this.#unwatch();
    const table = row.closest("table");
    if (table !== null) {
      this.#grown.observe(table);
      this.#changed.observe(table, { childList: true, subtree: true });
    }
    this.#drawn.observe(this.#cell, { childList: true, characterData: true, subtree: true });
    this.#cell.showPopover();
    this.#settle();
  }

  #unwatch(): void {
    this.#grown.disconnect();
    this.#drawn.disconnect();
    this.#changed.disconnect();
  }

  /** The page is scrolled where the row and what is below it are not to be seen otherwise. */
  #settle(): void {
    this.#cell.style.visibility = "";
    const missing = this.#put();
    if (missing === 0 || (missing < 0 && this.#cell.style.visibility !== "hidden")) return;
    scrollBy({ top: missing, behavior: "instant" });
    this.#follow();
  }

  close(): void {
    this.#row = undefined;
    this.#unwatch();
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
    this.#show(!away);
    if (!away) this.#put();
  };

  #show(shown: boolean): void {
    this.#cell.style.visibility = shown ? "" : "hidden";
    if (!shown) keepFree(0, 0);
  }

  /** Where the line that stays ends. */
  #top(): number {
    return Math.max(0, document.querySelector("leeway-bar")?.getBoundingClientRect().bottom ?? 0);
  }

  /** Where the table's head ends that stays below that line. */
  #headBelow(top: number): number {
    const head = this.#row?.closest("table")?.querySelector("thead")?.getBoundingClientRect();
    return head === undefined || head.top > top + 1 ? top : Math.max(top, head.bottom);
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
    this.#fit();
    const { height } = cell.getBoundingClientRect();
    const waiting = this.#waiting(top, bottom);
    const freeBelow = waiting.every((one) => one.bottom <= bottom - height);
    const freeAbove = waiting.every((one) => one.top >= top + height);
    const fitsBelow = row.bottom + spare <= bottom - height && freeBelow;
    const fitsAbove = row.top - spare >= top + height && freeAbove;
    // Where it is, it stays as long as it can.
    if (this.#above ? !fitsAbove : !fitsBelow) this.#above = fitsAbove;
    cell.style.top = `${this.#above ? top : bottom - height}px`;
    keepFree(this.#above ? height : 0, this.#above ? 0 : height);
    if (fitsBelow || fitsAbove) return 0;
    // Over neighbours it may lie, as there is no room; over a message it does not, nor beside one over the row itself.
    const hides = !freeBelow || (waiting.length > 0 && row.bottom > bottom - height);
    if (hides && !cell.contains(document.activeElement)) this.#show(false);
    const first = Math.min(row.top, ...waiting.map((one) => one.top));
    // Where it is away, what is said stands clear of the lines that stay above, as far as the row allows.
    const away = cell.style.visibility === "hidden";
    const head = this.#headBelow(top);
    if (away && first < head + 8) return Math.max(first - head - 8, row.bottom + 8 - bottom);
    return Math.min(row.bottom + spare - (bottom - height), first - top - 8);
  }

  /** Half a curve says nothing: where there is no room for it, its reading stands alone. */
  #fit(): void {
    const cell = this.#cell;
    cell.classList.remove("short");
    const curve = cell.querySelector("svg")?.getBoundingClientRect();
    if (curve === undefined) return;
    const end = curve.bottom - cell.getBoundingClientRect().top + cell.scrollTop;
    cell.classList.toggle("short", end > cell.clientHeight);
  }

  /** From the first field that waits to the end of what is said of it, for all such rows in sight but the one worked in. */
  #waiting(top: number, bottom: number): { top: number; bottom: number }[] {
    const found: { top: number; bottom: number }[] = [];
    for (const message of this.#messages) {
      const row = message.closest("tr");
      if (row === this.#row) continue;
      const said = message.getBoundingClientRect();
      const fields = [...(row ?? message).querySelectorAll("[aria-invalid]")];
      const first = Math.min(said.top, ...fields.map((one) => one.getBoundingClientRect().top));
      if (said.bottom > top && first < bottom) found.push({ top: first, bottom: said.bottom });
    }
    return found;
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
