import { html, nothing } from "lit";
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
    </nav>`;
  }
}

customElements.define("leeway-outline", LeewayOutline);
