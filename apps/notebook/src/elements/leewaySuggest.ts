import { html, nothing } from "lit";
import { shownNames } from "../plan/shownName.ts";
import { optionsOf, partAt, type Suggestion, suggestions, withPart } from "../plan/suggest.ts";
import { isTyped, type Typed } from "./field.ts";
import { PageElement } from "./pageElement.ts";

/** Id of the list, which its inputs name. */
export const suggestionsId = "suggestions";

/**
 * One list of suggestions for all inputs that take names: it shows under the input that is typed in. Down and Up choose,
 * Enter takes what is chosen, Escape closes it; whoever writes on without it is not hindered. Inputs say by
 * `data-suggest` what they name (`tasks`, `who`), by `data-suggest-not` what is left out. What is put in is the name, or
 * the id where several have it.
 */
export class LeewaySuggest extends PageElement {
  static override properties = {
    stated: { attribute: false },
    found: { state: true },
    active: { state: true },
  };
  /** The document as plain data. */
  stated: unknown;
  found: readonly Suggestion[] = [];
  active = -1;
  #input: Typed | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("input", this.#typed, true);
    document.addEventListener("keydown", this.#keys, true);
    document.addEventListener("focusout", this.#close, true);
    addEventListener("resize", this.#close);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener("input", this.#typed, true);
    document.removeEventListener("keydown", this.#keys, true);
    document.removeEventListener("focusout", this.#close, true);
    removeEventListener("resize", this.#close);
  }

  protected override render() {
    if (this.found.length === 0) return nothing;
    return html`<ul class="suggestions" id=${suggestionsId} role="listbox" aria-label="Suggestions"
      @pointerdown=${(event: Event) => event.preventDefault()}>
      ${this.found.map(
        (
          { name },
          at,
        ) => html`<li id="suggestion-${at}" role="option" aria-selected=${at === this.active ? "true" : "false"}
          @click=${() => this.#take(at)}>${name}</li>`,
      )}
    </ul>`;
  }

  protected override updated(): void {
    const input = this.#input;
    const list = this.querySelector<HTMLElement>(".suggestions");
    if (input === undefined) return;
    if (input instanceof HTMLInputElement) input.setAttribute("aria-expanded", String(list !== null));
    if (this.active < 0) input.removeAttribute("aria-activedescendant");
    else input.setAttribute("aria-activedescendant", `suggestion-${this.active}`);
    if (list === null) {
      this.#input = undefined;
      return;
    }
    const box = input.getBoundingClientRect();
    const own = this.getBoundingClientRect();
    const room = document.documentElement.clientWidth - list.offsetWidth - 8;
    list.style.left = `${Math.max(8, Math.min(box.left, room)) - own.left}px`;
    list.style.top = `${box.bottom - own.top}px`;
  }

  #typed = (event: Event): void => {
    const { target } = event;
    if (!isTyped(target) || target.dataset.suggest === undefined) return;
    this.#input = target;
    this.active = -1;
    const { suggest, suggestNot } = target.dataset;
    const said = new Set(target.value.split(/[,;]/).map((part) => part.trim().toLowerCase()));
    const options = optionsOf(this.stated, suggest).filter(
      ({ id, name }) => id !== suggestNot && !said.has(id) && !said.has(name.toLowerCase()),
    );
    const { part } = partAt(target.value, target.selectionStart ?? target.value.length);
    this.found = suggestions(part, options);
  };

  #keys = (event: KeyboardEvent): void => {
    const count = this.found.length;
    if (count === 0 || event.target !== this.#input) return;
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key === "ArrowDown") this.active = (this.active + 1) % count;
    else if (event.key === "ArrowUp") this.active = this.active <= 0 ? count - 1 : this.active - 1;
    else if (event.key === "Escape") this.#close();
    else if (event.key === "Enter" && this.active >= 0) this.#take(this.active);
    else {
      if (event.key === "Enter") this.#close();
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  };

  #take(at: number): void {
    const input = this.#input;
    const one = this.found[at];
    if (input === undefined || one === undefined) return;
    const place = partAt(input.value, input.selectionStart ?? input.value.length);
    const shown = shownNames(optionsOf(this.stated, input.dataset.suggest ?? "")).get(one.id);
    const { text, caret } = withPart(input.value, place, shown ?? one.name);
    input.value = text;
    input.setSelectionRange(caret, caret);
    this.#close();
    input.dispatchEvent(new Event("change", { bubbles: true }));
  }

  #close = (): void => {
    this.found = [];
    this.active = -1;
  };
}

customElements.define("leeway-suggest", LeewaySuggest);
