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

/** What the keys do, where they do it. */
const keyWords = "Arrow keys go through the sections, Enter goes there.";

/**
 * The sections, in the margin or as a slim bar, with a mark where something waits to be put right. They are links, and
 * one stop for the Tab key: the section that the reader is at, or the link that the arrow keys have gone on to.
 *
 * Source: managing focus in composites (roving tabindex), WAI-ARIA Authoring Practices. Recalled.
 */
export class LeewayOutline extends PageElement {
  static override properties = {
    entries: { attribute: false },
    current: { type: String },
    at: { state: true },
  };
  entries: readonly OutlineEntry[] = [];
  current = "";
  /** The link that has the focus. */
  at: string | undefined;

  protected override render() {
    const { entries } = this;
    const stop =
      [this.at, this.current].find((id) => entries.some((entry) => entry.id === id)) ?? entries[0]?.id;
    return html`<nav class="outline" aria-label="Sections">
      <ol @keydown=${this.#keys} @focusin=${this.#enter} @focusout=${this.#leave}>
        ${this.entries.map(
          (entry) => html`<li>
            <a href="#${entry.id}" aria-current=${entry.id === this.current ? "true" : nothing}
              tabindex=${entry.id === stop ? "0" : "-1"} aria-describedby=${entry.id === stop ? "outline-keys" : nothing}
              >${entry.name}${
                entry.waiting === 0
                  ? nothing
                  : html` <span class="waiting"
                      ><span aria-hidden="true">${entry.waiting}<span class="counts"> to put right</span></span
                      ><span class="unseen">, ${entry.waiting} to put right</span></span
                    >`
              }${
                entry.looks === undefined || entry.looks === 0
                  ? nothing
                  : html` <span class="looks"
                      ><span aria-hidden="true">${entry.looks}<span class="counts"> worth a look</span></span
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
      ${
        this.entries.some(({ waiting }) => waiting > 0)
          ? html`<p class="outline-note" aria-hidden="true">In a box: entries to put right</p>`
          : nothing
      }
      <p class="outline-keys" id="outline-keys">${keyWords}</p>
    </nav>`;
  }

  #enter = ({ target }: FocusEvent): void => {
    if (target instanceof HTMLAnchorElement) this.at = target.hash.slice(1);
  };

  /** Whoever comes back begins at the section they are at by then. */
  #leave = ({ relatedTarget, currentTarget }: FocusEvent): void => {
    if (
      relatedTarget instanceof Node &&
      currentTarget instanceof Node &&
      currentTarget.contains(relatedTarget)
    )
      return;
    this.at = undefined;
  };

  /** Down or right, up or left: it is a column on wide screens and a line on narrow ones. */
  #keys = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const links: EventTarget[] = [...this.querySelectorAll(".outline a")];
    const at = event.target === null ? -1 : links.indexOf(event.target);
    const to = {
      ArrowDown: at + 1,
      ArrowRight: at + 1,
      ArrowUp: at - 1,
      ArrowLeft: at - 1,
      Home: 0,
      End: links.length - 1,
    }[event.key];
    if (at < 0 || to === undefined) return;
    event.preventDefault();
    const link = links[to];
    if (link instanceof HTMLElement) link.focus();
  };

  /** Where the outline is a bar, it goes along with the reader, and with what is said behind the section they are at. */
  protected override updated(changed: PropertyValues<this>): void {
    const said = (entries: readonly OutlineEntry[] | undefined) => {
      const at = entries?.find(({ id }) => id === this.current);
      return `${at?.waiting} ${at?.looks}`;
    };
    const grown = changed.has("entries") && said(changed.get("entries")) !== said(this.entries);
    if (!changed.has("current") && !grown) return;
    const bar = this.querySelector(".outline");
    const link = bar?.querySelector("[aria-current]");
    if (bar == null || link == null || bar.scrollWidth <= bar.clientWidth) return;
    const [room, at] = [bar.getBoundingClientRect(), link.getBoundingClientRect()];
    if (at.left < room.left) bar.scrollLeft += at.left - room.left;
    else if (at.right > room.right) bar.scrollLeft += at.right - room.right;
  }
}

customElements.define("leeway-outline", LeewayOutline);
