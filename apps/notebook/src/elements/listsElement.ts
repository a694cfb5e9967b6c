import type { Forecast, Plan } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { Edit } from "../plan/edit.ts";
import { namedBy } from "../plan/namedBy.ts";
import { idsIn, newId } from "../plan/newId.ts";
import { phaseNeeded } from "../plan/phases.ts";
import { data, leave, listAt } from "../plan/removeTask.ts";
import { statedAt } from "../plan/stated.ts";
import type { Pending } from "../store/state.ts";
import { cellLabel } from "./cellLabel.ts";
import { draftRow } from "./draftRow.ts";
import { send } from "./events.ts";
import { field, type Suggests } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { LongElement } from "./longElement.ts";
import { rowId } from "./rowId.ts";
import { RowTools } from "./rowTools.ts";
import { tableKeys } from "./tableKeys.ts";

/** `edits`: more than the cell itself changes. */
export type Reading = { value: unknown } | { edits: readonly Edit[] } | { words: string };

/** One column of a list: what it shows of an item, and how an entry in it is read. */
export interface Column<T> {
  /** Key of the item in the document; empty: the item itself is the text. */
  key: string;
  heading: string;
  kind?: "text" | "number" | "date";
  /** How wide it is among the others. */
  size?: "main" | "narrow" | "short" | "choice" | "wide" | "of";
  committed: (item: T) => string;
  /** Left out: a text, and an empty one takes the key away. */
  read?: (text: string, path: string, item: T) => Reading;
  /** Names are suggested while it is typed in. */
  suggest?: Suggests;
  /** Value and words; then it is chosen, not typed. */
  choices?: readonly (readonly [string, string])[];
  /** The same, where they depend on the item. */
  choicesOf?: (item: T) => readonly (readonly [string, string])[];
  /** The cells themselves, where one field does not do; as many as `span` says. */
  cells?: (item: T, path: string, row: number, column: number) => readonly TemplateResult[];
  span?: number;
  /** What each of those cells is, where it stands by itself; otherwise the heading. */
  labels?: (item: T) => readonly string[];
}

export interface ListSpec<T> {
  /** Path of the list in the document. */
  path: string;
  /** "goal" */
  one: string;
  /** The button for a new one; by default "Add a goal". */
  adds?: string;
  title: string;
  /** Its rows come and go elsewhere. */
  fixed?: true;
  /** Keys of its items that are stated, and wait, outside its rows. */
  elsewhere?: readonly string[];
  /** What such a list is for, in one sentence, while it is empty. */
  empty: string;
  items: readonly T[];
  name: (item: T) => string;
  columns: readonly Column<T>[];
  /** The inputs of a new row: the first is its name. */
  asks: readonly {
    key: string;
    label: string;
    kind?: "number";
    suggest?: "who" | "tasks";
    choices?: readonly (readonly [string, string])[];
  }[];
  /** The new item, or what is missing in which input. */
  make: (
    cells: Record<string, string>,
    id: (name: string) => string,
  ) => { item: unknown } | { edits: readonly Edit[] } | { cell: string; words: string };
}

/** The base of sections that are lists of things in the plan: each a table of fields whose rows come, go and move. */
export abstract class ListsElement extends LongElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    forecast: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    fading: { type: Boolean },
    told: { state: true },
    draft: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  forecast: Forecast | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  fading = false;
  /** What was done to rows last, in words. */
  told = "";
  draft: { path: string; words?: string } | undefined;
  #tools = new RowTools(this, {
    move: (path, by) => {
      const [list, at] = placeIn(path);
      const length = listAt(this.stated, list).length;
      if (at + by < 0 || at + by >= length) return undefined;
      return {
        edits: [{ path: list, value: undefined, swap: Math.min(at, at + by) }],
        at: `${list}[${at + by}]`,
        told: `Moved “${this.#nameAt(path)}” ${by < 0 ? "up" : "down"}.`,
      };
    },
    remove: (path) => {
      const [list, at] = placeIn(path);
      const { id } = data(listAt(this.stated, list)[at]);
      const where = typeof id === "string" ? namedBy(this.stated, id) : undefined;
      const name = this.#nameAt(path);
      const needed = list === "phases" ? phaseNeeded(name, this.stated) : undefined;
      if (needed !== undefined) return { refused: `“${name}” stays: ${needed}` };
      return where === undefined
        ? { edits: leave(this.stated, list, [at]), told: `Removed “${name}”. Undo brings it back.` }
        : { refused: `“${name}” stays: it is named in ${where}. Put something else there first.` };
    },
    name: (path) => this.#nameAt(path),
  });

  /** Names of the rows of a list whose items have none of their own, as they were last drawn. */
  #named = new Map<string, readonly string[]>();

  #nameAt(path: string): string {
    const [list, at] = placeIn(path);
    const item = listAt(this.stated, list)[at];
    const { name, statement, id } = data(item);
    const own = typeof item === "string" ? item : (name ?? statement ?? this.#named.get(list)?.[at] ?? id);
    return String(own ?? "");
  }

  protected toldLine(): TemplateResult {
    return html`<p class="rows-told" role="status">${this.told}</p>`;
  }

  /** A field of the plan outside any list. */
  protected commit(path: string, text: string, read: (text: string, path: string) => Reading): void {
    const cells = { value: text };
    const result = read(text, path);
    if ("words" in result)
      send(this, "plan-refuse", { field: path, pending: { cells, words: result.words } });
    else {
      const edits = "edits" in result ? result.edits : [{ path, value: result.value }];
      send(this, "plan-edit", { field: path, cells, edits });
    }
  }

  protected list<T>(spec: ListSpec<T>): TemplateResult {
    const { path, title, items, columns, one } = spec;
    const open = this.draft?.path === path;
    this.#named.set(path, items.map(spec.name));
    const table = html`<table class="list-table ${spec.fixed ? "" : "moves"}" role="table" @keydown=${tableKeys}>
      <thead role="rowgroup"><tr role="row">${columns.map(
        ({ heading, kind, span, size }) =>
          html`<th role="columnheader" scope="col" class="${kind ?? "text"} ${size ?? ""}" colspan=${span ?? nothing}>${heading}</th>`,
      )}</tr></thead>
      <tbody role="rowgroup">${items.map((item, at) => this.#row(spec, item, at))}</tbody>
    </table>`;
    return html`<div class="list"><h3>${title}</h3>
      ${items.length > 0 ? table : open ? nothing : html`<p class="quiet">${spec.empty}</p>`}
      ${open ? this.#newRow(spec) : nothing}
      ${
        this.readonly || spec.fixed
          ? nothing
          : html`<button type="button" class="adds-button" data-adds=${path} @click=${() => this.#open(path)}>${spec.adds ?? `Add ${/^[aeiou]/.test(one) ? "an" : "a"} ${one}`}</button>`
      }
    </div>`;
  }

  #row<T>(spec: ListSpec<T>, item: T, at: number): TemplateResult {
    const path = `${spec.path}[${at}]`;
    const fieldOf = (key: string): string => (key === "" ? path : `${path}.${key}`);
    const message = (key: string): string => `message-${fieldOf(key).replace(/[^a-z0-9]+/gi, "-")}`;
    const name = spec.name(item);
    let column = 0;
    const cells = spec.columns.flatMap((one, place) => {
      // The buttons of the row come at the end of its last cell.
      const tools = !spec.fixed && place === spec.columns.length - 1;
      const from = column;
      column += one.span ?? 1;
      const label = cellLabel(one.heading);
      const labels = one.labels?.(item);
      if (one.cells !== undefined)
        return one
          .cells(item, path, at, from)
          .map(
            (cell, at) =>
              html`<td role="cell" class="${one.kind ?? "text"} ${one.size ?? ""}" ?data-tools=${tools}>${labels === undefined ? label : cellLabel(labels[at])}${cell}</td>`,
          );
      const own = fieldOf(one.key);
      const waits = this.pending.get(own);
      const said = one.heading.slice(0, 1).toLowerCase() + one.heading.slice(1);
      const unique = `${spec.one} “${name}”: ${/^[A-Z]{3}/.test(one.heading) ? one.heading : said}`;
      const read = one.read ?? ((text: string) => ({ value: text.trim() === "" ? undefined : text.trim() }));
      const choices = one.choicesOf?.(item) ?? one.choices;
      const input =
        choices === undefined
          ? field({
              label: unique,
              committed: one.committed(item),
              shown: waits?.cells.value,
              message: waits === undefined ? undefined : message(one.key),
              kind: one.kind ?? "text",
              wraps: one.kind === undefined || one.kind === "text",
              row: at,
              column: from,
              readonly: this.readonly,
              ...(one.suggest === undefined ? {} : { suggest: one.suggest }),
              commit: (text) => this.commit(own, text, (typed, at) => read(typed, at, item)),
              drop: () => send(this, "plan-drop", { field: own }),
            })
          : html`<select aria-label=${unique} ?disabled=${this.readonly} @change=${(event: Event) => {
              if (event.target instanceof HTMLSelectElement)
                this.commit(own, event.target.value, (typed, at) => read(typed, at, item));
            }}>${choices.map(
              ([value, words]) =>
                html`<option value=${value} .selected=${one.committed(item) === value}>${words}</option>`,
            )}</select>`;
      const sole = spec.columns.length === 1 ? "sole" : "";
      return [
        html`<td role="cell" class="${one.kind ?? "text"} ${one.size ?? ""} ${sole}" ?data-tools=${tools} data-text=${printed(one, item)}>${label}${input}</td>`,
      ];
    });
    const waiting = [...this.pending].filter(
      ([own]) =>
        !spec.elsewhere?.some((key) => own === fieldOf(key)) &&
        spec.columns.some(
          ({ key, span }) => own === fieldOf(key) || (span !== undefined && own.startsWith(`${path}.`)),
        ),
    );
    return html`<tr role="row" id=${spec.fixed ? nothing : rowId(path)} data-item=${spec.fixed ? nothing : path} class=${waiting.length > 0 ? "waits" : ""}>
      ${cells}
    </tr>${
      waiting.length === 0
        ? nothing
        : html`<tr role="row" class="messages-row"><td role="cell" colspan=${column}>${waiting.map(
            ([own, entry]) => fieldMessage(`message-${own.replace(/[^a-z0-9]+/gi, "-")}`, entry),
          )}</td></tr>`
    }`;
  }

  #newRow<T>(spec: ListSpec<T>): TemplateResult {
    const { path, asks, one } = spec;
    const words = this.draft?.words;
    const keys = asks.map(({ key }) => key);
    const { keydown, focusout, buttons } = draftRow<string>(keys, {
      add: (cells) => this.#add(spec, cells),
      drop: (left) => {
        if (this.draft?.path === path) this.draft = undefined;
        if (left) return;
        void this.updateComplete.then(() => {
          if (document.activeElement === document.body)
            this.querySelector<HTMLElement>(`[data-adds="${path}"]`)?.focus();
        });
      },
    });
    return html`<div class="new-row new-item" data-draft=${path} role="group" aria-label="New ${one}" @keydown=${keydown} @focusout=${focusout}>
      ${asks.map(
        ({ key, label, kind, suggest, choices }) => html`<label><span>${label}</span>
          ${
            choices === undefined
              ? html`<input class="field ${kind ?? "text"}" type="text" autocomplete="off" spellcheck="false" data-cell=${key}
            role=${suggest === undefined ? nothing : "combobox"} aria-autocomplete=${suggest === undefined ? nothing : "list"}
            aria-expanded=${suggest === undefined ? nothing : "false"} aria-controls=${suggest === undefined ? nothing : "suggestions"} data-suggest=${suggest ?? nothing}
            aria-label="New ${one}: ${label.slice(0, 1).toLowerCase()}${label.slice(1)}"
            aria-describedby=${words === undefined ? nothing : "message-new-item"} />`
              : html`<select data-cell=${key} aria-label="New ${one}: ${label.slice(0, 1).toLowerCase()}${label.slice(1)}"
            aria-describedby=${words === undefined ? nothing : "message-new-item"}>${choices.map(
              ([value, name]) => html`<option value=${value}>${name}</option>`,
            )}</select>`
          }</label>`,
      )}
      ${buttons(`new ${one}`)}
      ${words === undefined ? nothing : html`<p class="message" id="message-new-item" role="alert">${words}</p>`}
    </div>`;
  }

  #open(path: string): void {
    this.draft = { path };
    this.told = "";
    this.drawNow();
    this.querySelector<HTMLElement>(".new-item [data-cell]")?.focus();
  }

  #add<T>(spec: ListSpec<T>, cells: Record<string, string>): string | undefined {
    const make = () => {
      const taken = idsIn(this.stated);
      return spec.make(cells, (name) => newId(name, taken, spec.one.replace(/[^a-z]+/g, "-")));
    };
    const made = make();
    if ("words" in made) {
      this.draft = { path: spec.path, words: made.words };
      return made.cell;
    }
    this.draft = { path: spec.path };
    this.#tools.act(() => {
      const again = make();
      if ("words" in again) return { refused: again.words };
      const [first] = spec.asks;
      const said = cells[first?.key ?? ""]?.trim() ?? "";
      const words = first?.choices?.find(([value]) => value === said)?.[1] ?? said;
      return {
        edits: "edits" in again ? again.edits : [{ path: spec.path, value: again.item, add: "last" }],
        told: `Added “${words}”.`,
      };
    });
    return undefined;
  }

  /** What stands in the document at a path. */
  protected statedAt(path: string): unknown {
    return statedAt(this.stated, path);
  }
}

/** What stands in the place of a field on paper, where a field would cut it. */
function printed<T>({ choices, choicesOf, committed }: Column<T>, item: T): string {
  const value = committed(item);
  const chosen = value === "" ? "" : (choicesOf?.(item) ?? choices)?.find(([key]) => key === value)?.[1];
  return chosen ?? value;
}

function placeIn(path: string): [string, number] {
  const [, list = "", at = "-1"] = /^(.*)\[(\d+)\]$/.exec(path) ?? [];
  return [list, Number(at)];
}

/** A text that has to be there. */
export function needed(words: string): (text: string) => Reading {
  return (text) => (text.trim() === "" ? { words } : { value: text.trim() });
}

/** The people and stakeholders of a plan to choose from. */
export function whoChoices(plan: Plan): readonly (readonly [string, string])[] {
  return [
    ["", "nobody yet"],
    ...[...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, name] as const),
  ];
}
