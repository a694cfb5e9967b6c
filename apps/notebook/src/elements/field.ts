import { html, nothing, type TemplateResult } from "lit";
import { keepTyping } from "./keepTyping.ts";

/** What an input names, see `leeway-suggest`. */
export interface Suggests {
  of: "tasks" | "who";
  /** Left out: a task does not wait for itself. */
  not?: string;
}

export interface FieldOptions {
  /** What the input is for, in full: read out, and asked for by tests. */
  label: string;
  /** What the plan says. */
  committed: string;
  /** What the input shows when an entry waits; otherwise the plan's value. */
  shown?: string | undefined;
  /** Id of the message that says what is wrong. */
  message?: string | undefined;
  /** Id of words beside it that belong to it; a message comes first. */
  note?: string | undefined;
  /** `number` sets figures to the right and asks for a numeric keyboard. */
  kind?: "number" | "text" | "date";
  /** Place in its table, for the arrow keys. */
  row?: number;
  column?: number;
  readonly?: boolean;
  /** A text that is read whole: it goes on in further lines where it is longer than its column. */
  wraps?: boolean;
  /** What is named in it, so that names are suggested. */
  suggest?: Suggests;
  /** An entry without what means nothing in it. */
  tidy?: (text: string) => string;
  /** The estimate it is a part of: its path, its unit in words, and what it is of. */
  estimate?: { path: string; unit: string; of: string };
  /** The reader finished an entry that differs from what was there. */
  commit: (text: string) => void;
  /** The reader is typing: what the entry would be now. */
  foresee?: (text: string) => void;
  /** Escape: the reader gives the entry up. */
  drop: () => void;
}

/** What is typed into a field: an input, or a text in several lines. */
export type Typed = HTMLInputElement | HTMLTextAreaElement;

export function isTyped(target: unknown): target is Typed {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}

/** Escape gives something up in it: what is typed, or an entry that could not be read. */
export function isGivenUp(input: Typed): boolean {
  const { shown } = input.dataset;
  return (shown !== undefined && input.value !== shown) || input.matches("[aria-invalid=true]");
}

/**
 * One labelled input. What is being typed lives in the input alone; it becomes state when the reader leaves it
 * or presses Enter, so a page that redraws while someone types never takes their text away.
 */
export function field(options: FieldOptions): TemplateResult {
  if (options.wraps === true) return wrapping(options);
  const shown = options.shown ?? options.committed;
  const kind = options.kind ?? "text";
  return html`<input
    class="field ${kind}"
    type="text"
    inputmode=${kind === "number" ? "decimal" : nothing}
    autocomplete="off"
    spellcheck="false"
    aria-label=${options.label}
    aria-invalid=${options.message === undefined ? nothing : "true"}
    aria-describedby=${options.message ?? options.note ?? nothing}
    data-row=${options.row ?? nothing}
    data-column=${options.column ?? nothing}
    data-shown=${shown}
    role=${options.suggest === undefined ? nothing : "combobox"}
    aria-autocomplete=${options.suggest === undefined ? nothing : "list"}
    aria-expanded=${options.suggest === undefined ? nothing : "false"}
    aria-controls=${options.suggest === undefined ? nothing : "suggestions"}
    data-suggest=${options.suggest?.of ?? nothing}
    data-suggest-not=${options.suggest?.not ?? nothing}
    data-estimate=${options.estimate?.path ?? nothing}
    data-unit=${options.estimate?.unit ?? nothing}
    data-of=${options.estimate?.of ?? nothing}
    ?readonly=${options.readonly ?? false}
    ${keepTyping(shown)}
    @input=${(event: Event) => typed(event, options)}
    @change=${(event: Event) => changed(event, options)}
    @keydown=${(event: KeyboardEvent) => givenUp(event, options)}
  />`;
}

/**
 * The same in as many lines as the text takes. It holds one line of text all the same, as an input does. A text in
 * several lines is no combobox by HTML; that names are suggested in it is said without that role.
 */
function wrapping(options: FieldOptions): TemplateResult {
  const shown = options.shown ?? options.committed;
  const suggests = options.suggest !== undefined;
  return html`<textarea
    class="field ${options.kind ?? "text"} wraps"
    rows="1"
    autocomplete="off"
    spellcheck="false"
    aria-label=${options.label}
    aria-invalid=${options.message === undefined ? nothing : "true"}
    aria-describedby=${options.message ?? options.note ?? nothing}
    data-row=${options.row ?? nothing}
    data-column=${options.column ?? nothing}
    data-shown=${shown}
    aria-autocomplete=${suggests ? "list" : nothing}
    aria-haspopup=${suggests ? "listbox" : nothing}
    aria-controls=${suggests ? "suggestions" : nothing}
    data-suggest=${options.suggest?.of ?? nothing}
    data-suggest-not=${options.suggest?.not ?? nothing}
    ?readonly=${options.readonly ?? false}
    ${keepTyping(shown)}
    @input=${(event: Event) => {
      const { target } = event;
      if (!(target instanceof HTMLTextAreaElement)) return;
      delete target.dataset.taken;
      if (/[\r\n]/.test(target.value)) target.value = target.value.replace(/\s*[\r\n]+\s*/g, " ");
      typed(event, options);
    }}
    @change=${(event: Event) => {
      const { target } = event;
      // Enter has taken it already: leaving it is no second entry.
      if (!(target instanceof HTMLTextAreaElement) || target.dataset.taken === target.value) return;
      target.dataset.taken = target.value;
      changed(event, options);
      // Tidied, it is the same entry.
      target.dataset.taken = target.value;
    }}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Enter" || event.isComposing) {
        givenUp(event, options);
        return;
      }
      event.preventDefault();
      const { target } = event;
      if (target instanceof HTMLTextAreaElement && target.value !== target.dataset.shown)
        target.dispatchEvent(new Event("change", { bubbles: true }));
    }}
  ></textarea>`;
}

function typed({ target }: Event, { committed, foresee }: FieldOptions): void {
  if (isTyped(target) && target.value.trim() !== committed) foresee?.(target.value);
}

function changed({ target }: Event, { committed, tidy, commit, drop }: FieldOptions): void {
  if (!isTyped(target)) return;
  if (tidy !== undefined) target.value = tidy(target.value);
  // Typed back to what the plan says: nothing to change, and an entry that waited is withdrawn.
  if (target.value.trim() === committed) {
    target.value = committed;
    drop();
  } else commit(target.value);
}

function givenUp({ key, target }: KeyboardEvent, { committed, drop }: FieldOptions): void {
  if (key !== "Escape" || !isTyped(target)) return;
  target.value = committed;
  target.select();
  drop();
}
