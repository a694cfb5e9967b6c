import { html, nothing, type PropertyValues } from "lit";
import { PageElement } from "./pageElement.ts";

export interface OutlineEntry {
  id: string;
  name: string;
  /** Things to put right in that section. */
  waiting: number;
  /** Findings of that section. */
  looks?: number;
}

/** The sections, in the margin or as a slim bar, with a mark where something waits to be put right. */
export class LeewayOutline extends PageElement {
  static override properties = { entries: { attribute: false }, current: { type: String } };
  entries: readonly OutlineEntry[] = [];
  current = "";

  protected override render() {
    return html`<nav class="outline" aria-label="Sections">
      <ol>
        ${this.entries.map(
          (entry) => html`<li>
            <a href="#${entry.id}" aria-current=${entry.id === this.current ? "true" : nothing}
              >${entry.name}${
                entry.waiting === 0
                  ? nothing
                  : html` <span class="waiting"
                      ><span aria-hidden="true">${entry.waiting}</span
                      ><span class="unseen">, ${entry.waiting} to put right</span></span
                    >`
              }${
                entry.looks === undefined || entry.looks === 0
                  ? nothing
                  : html` <span class="looks"
                      ><span aria-hidden="true">${entry.looks}</span
                      ><span class="unseen">, ${entry.looks} worth a look</span></span
                    >`
              }</a
            >
          </li>`,
        )}
      </ol>
      ${
        this.entries.some(({ looks = 0 }) => looks > 0)
          ? html`<p class="outline-note" aria-hidden="true">Small figures: findings worth a look</p>`
          : nothing
      }
    </nav>`;
  }

  /** Where the outline is a bar, it goes along with the reader. */
  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has("current")) return;
    const bar = this.querySelector(".outline");
    const link = bar?.querySelector("[aria-current]");
    if (bar == null || link == null || bar.scrollWidth <= bar.clientWidth) return;
    const [room, at] = [bar.getBoundingClientRect(), link.getBoundingClientRect()];
    if (at.left < room.left) bar.scrollLeft += at.left - room.left;
    else if (at.right > room.right) bar.scrollLeft += at.right - room.right;
  }
}

customElements.define("leeway-outline", LeewayOutline);
