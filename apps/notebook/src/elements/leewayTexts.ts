import type { PageSection, Plan } from "@leeway/core";
import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { moveText } from "../plan/moveText.ts";
import { leave, place } from "../plan/removeTask.ts";
import type { Pending } from "../store/state.ts";
import { keepTyping } from "./keepTyping.ts";
import "./leewayMarkdown.ts";
import { PageElement } from "./pageElement.ts";
import { RowTools } from "./rowTools.ts";

type Button = "edit" | "up" | "down";

/** Ms that the focus waits for a text to stand where it goes to. */
const patience = 5000;

/** Free text below one section: written in Markdown, shown as it reads, edited where it stands. */
export class LeewayTexts extends PageElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    below: { type: String },
    name: { type: String },
    editing: { state: true },
    told: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  /** The section it stands below. */
  below: PageSection = "answer";
  /** The name of that section. */
  name = "";
  /** Place in the plan's list of the text that is being edited; `new` before it is part of the plan. */
  editing: number | "new" | undefined;
  told = "";
  #tools = new RowTools(this, { move: () => undefined, remove: () => ({ refused: "" }), name: () => "" });
  #warned = false;

  protected override render() {
    const { plan, below, readonly } = this;
    if (plan === undefined) return nothing;
    const own = plan.texts.flatMap((one, at) => (one.after === below ? [{ ...one, at }] : []));
    return html`${repeat(
      own,
      ({ at }) => at,
      (
        { text, at },
        k,
      ) => html`<div class="text-cell" role="group" aria-label="Text ${k + 1} below ${this.name}" data-at=${at}>
        ${this.editing === at ? this.#editor(text) : html`<leeway-markdown .text=${text}></leeway-markdown>${readonly ? nothing : this.#buttons(at, k)}`}
      </div>`,
    )}
    ${this.editing === "new" ? html`<div class="text-cell" role="group" aria-label="New text below ${this.name}">${this.#editor("")}</div>` : nothing}
    ${readonly || this.editing === "new" ? nothing : html`<button type="button" class="adds-button add-text" @click=${() => this.#open("new")}>Add a text<span class="unseen"> below ${this.name}</span></button>`}
    <p class="unseen" role="status">${this.told}</p>`;
  }

  #buttons(at: number, k: number) {
    const which = html`<span class="unseen">: text ${k + 1} below ${this.name}</span>`;
    return html`<p class="text-tools">
      <button type="button" data-does="edit" @click=${() => this.#open(at)}>Edit${which}</button>
      <button type="button" data-does="up" @click=${() => this.#move(at, -1)}>Up${which}</button>
      <button type="button" data-does="down" @click=${() => this.#move(at, 1)}>Down${which}</button>
      <button type="button" data-does="remove" @click=${() => this.#remove(at)}>Remove${which}</button>
    </p>`;
  }

  #editor(text: string) {
    return html`<label class="text-label">Text in Markdown: **strong**, *emphasis*, # heading, - list, [words](https://…)
        <textarea class="text-editor" rows="6" spellcheck="true" dir="auto" ${keepTyping(text)} @input=${this.#typing} @change=${this.#keep}
          @keydown=${this.#keys} @focusout=${this.#left}></textarea></label>
      <p class="text-tools"><button type="button" @click=${this.#done}>Done</button> <span class="quiet">${this.told}</span></p>`;
  }

  #open(at: number | "new"): void {
    this.editing = at;
    this.told = "";
    this.#warned = false;
    void this.updateComplete.then(() => {
      const area = this.querySelector("textarea");
      if (area === null) return;
      area.rows = Math.max(6, Math.min(24, area.value.split("\n").length + 1));
      area.focus();
    });
  }

  #typing = ({ target }: Event): void => {
    // Undo stays with the text area while it holds what is not part of the plan yet.
    if (target instanceof HTMLTextAreaElement)
      target.dataset.typing = String(target.value !== this.#committed);
    this.#warned = false;
  };

  get #committed(): string {
    return typeof this.editing === "number" ? (this.plan?.texts[this.editing]?.text ?? "") : "";
  }

  /** Leaving the text area is keeping it, as in every field of the page. */
  #keep = ({ target }: Event): void => {
    if (!(target instanceof HTMLTextAreaElement)) return;
    const { editing, below: after } = this;
    const before = this.#committed;
    const text = target.value;
    if (text.trim() === before.trim()) return;
    if (editing === "new") {
      this.#tools.act(() => ({
        edits: [{ path: "texts", value: { after, text }, add: "last" }],
        told: "The text is kept.",
      }));
      return;
    }
    if (text.trim() === "") {
      this.#remove(editing ?? -1);
      return;
    }
    this.#tools.act(() => {
      // Somebody else may have moved it meanwhile: the text itself says which one it was.
      const texts = this.plan?.texts ?? [];
      const at =
        texts[editing ?? -1]?.text === before
          ? (editing ?? -1)
          : texts.findIndex((one) => one.text === before);
      if (at < 0)
        return { edits: [{ path: "texts", value: { after, text }, add: "last" }], told: "The text is kept." };
      return {
        edits: [{ path: `${place(this.stated, "texts", at)}.text`, value: text }],
        told: "The text is kept.",
      };
    });
  };

  #left = ({ relatedTarget }: FocusEvent): void => {
    if (
      relatedTarget instanceof Node &&
      this.querySelector("textarea")?.closest(".text-cell")?.contains(relatedTarget)
    )
      return;
    this.editing = undefined;
  };

  #done = (): void => {
    const at = this.editing;
    this.editing = undefined;
    this.#focusSoon(typeof at === "number" ? at : (this.plan?.texts.length ?? 0), "edit");
  };

  #keys = (event: KeyboardEvent): void => {
    const { target } = event;
    if (!(target instanceof HTMLTextAreaElement)) return;
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      this.querySelector<HTMLElement>(".text-tools button")?.focus();
      this.#done();
    } else if (event.key === "Escape") {
      event.preventDefault();
      if (target.value.trim() !== this.#committed.trim() && !this.#warned) {
        this.#warned = true;
        this.told = "Escape once more gives up what you typed.";
        return;
      }
      target.value = this.#committed;
      this.#done();
    }
  };

  #move(at: number, by: -1 | 1): void {
    const button = by < 0 ? "up" : "down";
    let to = at;
    this.#tools.act(
      () => {
        const moved = moveText(this.stated, at, by);
        if (moved === undefined)
          return { refused: by < 0 ? "It is the first already." : "It is the last already." };
        to = moved.at;
        return {
          edits: moved.edits,
          told: moved.after === this.below ? `Moved ${button}.` : `Moved ${button}, below another section.`,
        };
      },
      () => this.#focusSoon(to, button),
    );
  }

  #remove(at: number): void {
    this.#tools.act(
      () => ({ edits: leave(this.stated, "texts", [at]), told: "The text is removed. Undo brings it back." }),
      () => this.querySelector<HTMLElement>(".add-text")?.focus(),
    );
  }

  /** Wherever on the page the text stands by then. */
  #focusSoon(at: number, button: Button): void {
    const until = performance.now() + patience;
    const look = (): void => {
      const active = document.activeElement;
      if (active !== null && active !== document.body && !this.contains(active)) return; // the reader went on
      const found = document.querySelector<HTMLElement>(
        `.text-cell[data-at="${at}"] [data-does="${button}"]`,
      );
      if (found !== null) {
        found.focus();
        found.scrollIntoView({ block: "nearest" });
      } else if (performance.now() < until) requestAnimationFrame(look);
      else this.querySelector<HTMLElement>(".add-text")?.focus();
    };
    void this.updateComplete.then(look);
  }
}

customElements.define("leeway-texts", LeewayTexts);
