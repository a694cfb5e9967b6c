import type { LitElement, ReactiveController } from "lit";

const controls = "input, select, textarea, button, summary, a[href]";

/**
 * A long table is not hundreds of stops for the Tab key: it is stopped at in the row that was worked in last, and the
 * arrow keys lead to the others (`tableKeys`). Rows are marked by `data-item`. With `groups`, the heading of its group
 * (a row `phase`) and the button that adds to it (a row `adds-row`) are stopped at with the row.
 *
 * Source: managing focus in composites (roving tabindex), WAI-ARIA Authoring Practices. Recalled.
 */
export class RowStops implements ReactiveController {
  #host: LitElement;
  #groups: boolean;
  #row: HTMLElement | undefined;
  #known = new WeakSet<Element>();

  constructor(host: LitElement, { groups }: { groups: boolean }) {
    this.#host = host;
    this.#groups = groups;
    host.addController(this);
  }

  hostConnected(): void {
    this.#host.addEventListener("focusin", this.#enter);
  }

  hostDisconnected(): void {
    this.#host.removeEventListener("focusin", this.#enter);
  }

  hostUpdated(): void {
    const rows = this.#groups ? "tr[data-item], tr.phase, tr.adds-row" : "tr[data-item]";
    for (const row of this.#host.querySelectorAll<HTMLElement>(rows)) {
      if (this.#known.has(row)) continue;
      this.#known.add(row);
      if (row !== this.#row) setStops(row, isEmptyGroup(row));
    }
    if (this.#row !== undefined && this.#host.contains(this.#row)) {
      this.#stopAt(this.#row, true);
      return;
    }
    this.#row = undefined;
    const first = this.#host.querySelector<HTMLElement>("tr[data-item]");
    if (first !== null) this.#goTo(first);
  }

  #enter = (event: Event): void => {
    const row = event.target instanceof Element ? event.target.closest<HTMLElement>("tr[data-item]") : null;
    if (row !== null) this.#goTo(row);
  };

  #goTo(row: HTMLElement): void {
    if (this.#row !== undefined && this.#row !== row) this.#stopAt(this.#row, false);
    this.#row = row;
    this.#stopAt(row, true);
  }

  #stopAt(row: HTMLElement, stops: boolean): void {
    setStops(row, stops);
    if (!this.#groups) return;
    let above = row.previousElementSibling;
    while (above?.matches("[data-item], .new-row")) above = above.previousElementSibling;
    if (above?.matches(".phase")) setStops(above, stops);
    let below = row.nextElementSibling;
    while (below?.matches("[data-item], .new-row")) below = below.nextElementSibling;
    if (below?.matches(".adds-row")) setStops(below, stops);
  }
}

/** No row of it can be gone to: it is stopped at itself. */
function isEmptyGroup(row: Element): boolean {
  return row.matches(".adds-row") && row.previousElementSibling?.matches("[data-item]") !== true;
}

function setStops(row: Element, stops: boolean): void {
  for (const control of row.querySelectorAll<HTMLElement>(controls)) control.tabIndex = stops ? 0 : -1;
}
