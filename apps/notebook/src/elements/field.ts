import { html, nothing, type TemplateResult } from "lit";
import { keepTyping } from "./keepTyping.ts";

/** What an input names, see `leeway-suggest`. */
export interface Suggests {
  of: "tasks" | "who";
  as: "id" | "name";
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
  /** `number` sets figures to the right and asks for a numeric keyboard. */
  kind?: "number" | "text" | "date";
  /** Place in its table, for the arrow keys. */
  row?: number;
  column?: number;
  readonly?: boolean;
  /** What is named in it, so that names are suggested; `as`: what is put in for one. */
  suggest?: Suggests;
  /** The estimate it is a part of: its path, its unit in words, and what it is of. */
  estimate?: { path: string; unit: string; of: string };
  /** The reader finished an entry that differs from what was there. */
  commit: (text: string) => void;
  /** The reader is typing: what the entry would be now. */
  foresee?: (text: string) => void;
  /** Escape: the reader gives the entry up. */
  drop: () => void;
}

/**
 * One labelled input. What is being typed lives in the input alone; it becomes state when the reader leaves it
 * or presses Enter, so a page that redraws while someone types never takes their text away.
 */
export function field(options: FieldOptions): TemplateResult {
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
    aria-describedby=${options.message ?? nothing}
    data-row=${options.row ?? nothing}
    data-column=${options.column ?? nothing}
    data-shown=${shown}
    role=${options.suggest === undefined ? nothing : "combobox"}
    aria-autocomplete=${options.suggest === undefined ? nothing : "list"}
    aria-expanded=${options.suggest === undefined ? nothing : "false"}
    aria-controls=${options.suggest === undefined ? nothing : "suggestions"}
    data-suggest=${options.suggest?.of ?? nothing}
    data-suggest-as=${options.suggest?.as ?? nothing}
    data-suggest-not=${options.suggest?.not ?? nothing}
    data-estimate=${options.estimate?.path ?? nothing}
    data-unit=${options.estimate?.unit ?? nothing}
    data-of=${options.estimate?.of ?? nothing}
    ?readonly=${options.readonly ?? false}
    ${keepTyping(shown)}
    @input=${(event: Event) => {
      const input = event.target;
      if (input instanceof HTMLInputElement && input.value.trim() !== options.committed)
        options.foresee?.(input.value);
    }}
    @change=${(event: Event) => {
      const input = event.target;
      if (!(input instanceof HTMLInputElement)) return;
      // Typed back to what the plan says: nothing to change, and an entry that waited is withdrawn.
      if (input.value.trim() === options.committed) {
        input.value = options.committed;
        options.drop();
      } else options.commit(input.value);
    }}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Escape" || !(event.target instanceof HTMLInputElement)) return;
      event.target.value = options.committed;
      event.target.select();
      options.drop();
    }}
  />`;
}
