import { formatDate } from "@leeway/charts";
import type { Plan } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { Edit } from "../plan/edit.ts";
import { readChance } from "../plan/readChance.ts";
import { readDate } from "../plan/readDate.ts";
import type { Pending } from "../store/state.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { type Reading, whoChoices } from "./listsElement.ts";
import { messageId } from "./messageId.ts";

export interface FieldsOf {
  host: HTMLElement;
  plan: Plan;
  stated: unknown;
  pending: ReadonlyMap<string, Pending>;
  readonly: boolean;
}

interface Labelled {
  path: string;
  /** Beside the input. */
  label: string;
  /** Of whom, for those who listen. */
  of: string;
}

interface OneField extends Labelled {
  committed: string;
  kind?: "text" | "number" | "date";
  /** It goes on in further lines where it is longer than its field. */
  wraps?: true;
  read: (text: string) => Reading;
  /** Words below it that belong to it. */
  note?: string;
  /** An entry as it is written down. */
  tidy?: (text: string) => string;
}

/** A labelled input of a form, its message below it. */
export function entryField(on: FieldsOf, { path, label, of, ...one }: OneField): TemplateResult {
  const waits = on.pending.get(path);
  return html`<div class="entry-field"><label><span class="form-label">${label}</span><span class="entry-value" data-text=${one.committed}>${field(
    {
      label: `${of}: ${inSentence(label)}`,
      committed: one.committed,
      shown: waits?.cells.value,
      message: waits === undefined ? undefined : messageId(path),
      note: one.note === undefined ? undefined : `note-${messageId(path)}`,
      kind: one.kind ?? "text",
      wraps: one.wraps === true,
      readonly: on.readonly,
      ...(one.tidy === undefined ? {} : { tidy: one.tidy }),
      commit: (text) => {
        const cells = { value: text };
        const result = one.read(text);
        if ("words" in result)
          send(on.host, "plan-refuse", { field: path, pending: { cells, words: result.words } });
        else {
          const edits = "edits" in result ? result.edits : [{ path, value: result.value }];
          send(on.host, "plan-edit", { field: path, cells, edits });
        }
      },
      drop: () => send(on.host, "plan-drop", { field: path }),
    },
  )}</span></label>${one.note === undefined ? nothing : html`<p class="quiet" id="note-${messageId(path)}">${one.note}</p>`}${fieldMessage(messageId(path), waits)}</div>`;
}

/** One of several, chosen from a list; its message below it where the plan refuses it. An empty value takes it out. */
export function chosenField(
  on: FieldsOf,
  {
    path,
    label,
    of,
    committed,
    choices,
    said = inSentence(label),
    refuses = () => undefined,
    edits = (value) => [{ path, value: value === "" ? undefined : value }],
  }: Labelled & {
    committed: string;
    /** Value and words. */
    choices: readonly (readonly [string, string])[];
    /** What it is, for those who listen, where the label goes on in the choice. */
    said?: string;
    /** Why a choice cannot be, in words. */
    refuses?: (value: string) => string | undefined;
    edits?: (value: string) => readonly Edit[];
  },
): TemplateResult {
  const waits = on.pending.get(path);
  const chosen = waits?.cells.value ?? committed;
  const shown = committed === "" ? "" : (choices.find(([value]) => value === committed)?.[1] ?? committed);
  return html`<div class="entry-field"><label><span class="form-label">${label}</span><span class="entry-value" data-text=${shown}><select aria-label="${of}: ${said}"
    aria-invalid=${waits === undefined ? nothing : "true"} aria-describedby=${waits === undefined ? nothing : messageId(path)}
    ?disabled=${on.readonly} @change=${(event: Event) => {
      if (!(event.target instanceof HTMLSelectElement)) return;
      const { value } = event.target;
      const words = refuses(value);
      if (value === committed) send(on.host, "plan-drop", { field: path });
      else if (words !== undefined)
        send(on.host, "plan-refuse", { field: path, pending: { cells: { value }, words } });
      else send(on.host, "plan-edit", { field: path, cells: { value }, edits: edits(value) });
    }}>${choices.map(
      ([value, words]) => html`<option value=${value} .selected=${chosen === value}>${words}</option>`,
    )}</select></span></label>${fieldMessage(messageId(path), waits)}</div>`;
}

/** Something that is so or not; not so is not written down, as it is what the format takes for granted. */
export function tickField(
  on: FieldsOf,
  {
    path,
    label,
    of,
    committed,
    edits = (ticked) => [{ path, value: ticked ? true : undefined }],
  }: Labelled & { committed: boolean; edits?: (ticked: boolean) => readonly Edit[] },
): TemplateResult {
  const waits = on.pending.get(path);
  const ticked = waits === undefined ? committed : waits.cells.value === "true";
  return html`<div class="entry-field"><label class="tick"><input type="checkbox" aria-label="${of}: ${inSentence(label)}"
    aria-invalid=${waits === undefined ? nothing : "true"} aria-describedby=${waits === undefined ? nothing : messageId(path)}
    .checked=${ticked} ?disabled=${on.readonly} @change=${(event: Event) => {
      if (!(event.target instanceof HTMLInputElement)) return;
      const { checked } = event.target;
      if (checked === committed) send(on.host, "plan-drop", { field: path });
      else
        send(on.host, "plan-edit", { field: path, cells: { value: String(checked) }, edits: edits(checked) });
    }} /> <span>${label}</span></label>${fieldMessage(messageId(path), waits)}</div>`;
}

/** Somebody of the plan, chosen from a list. */
export function whoField(on: FieldsOf, one: Labelled & { committed: string }): TemplateResult {
  return chosenField(on, { ...one, choices: whoChoices(on.plan) });
}

/** As it goes on behind the name of what it belongs to. */
function inSentence(label: string): string {
  return `${label.slice(0, 1).toLowerCase()}${label.slice(1)}`;
}

export const optionalText = (text: string): Reading => ({
  value: text.trim() === "" ? undefined : text.trim(),
});
export const optionalDate = (text: string): Reading =>
  text.trim() === "" ? { value: undefined } : readDate(text);
export const optionalChance = (text: string): Reading =>
  text.trim() === "" ? { value: undefined } : readChance(text);
export const dateText = (date: string | undefined): string => (date === undefined ? "" : formatDate(date));
export const percentText = (share: number | undefined): string =>
  share === undefined ? "" : String(Number((share * 100).toPrecision(6)));
