import { formatDate } from "@leeway/charts";
import type { Plan } from "@leeway/core";
import { html, type TemplateResult } from "lit";
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

interface OneField {
  path: string;
  /** Beside the input. */
  label: string;
  /** Of whom, for those who listen. */
  of: string;
  committed: string;
  kind?: "text" | "number" | "date";
  /** It goes on in further lines where it is longer than its field. */
  wraps?: true;
  read: (text: string) => Reading;
}

/** A labelled input of a form, its message below it. */
export function entryField(on: FieldsOf, { path, label, of, ...one }: OneField): TemplateResult {
  const waits = on.pending.get(path);
  return html`<div class="entry-field"><label><span class="form-label">${label}</span><span class="entry-value" data-text=${one.committed}>${field(
    {
      label: `${of}: ${label.slice(0, 1).toLowerCase()}${label.slice(1)}`,
      committed: one.committed,
      shown: waits?.cells.value,
      message: waits === undefined ? undefined : messageId(path),
      kind: one.kind ?? "text",
      wraps: one.wraps === true,
      readonly: on.readonly,
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
  )}</span></label>${fieldMessage(messageId(path), waits)}</div>`;
}

/** Somebody of the plan, chosen from a list. */
export function whoField(
  on: FieldsOf,
  { path, label, of, committed }: Pick<OneField, "path" | "label" | "of" | "committed">,
): TemplateResult {
  const choices = whoChoices(on.plan);
  const name = choices.find(([value]) => value === committed)?.[1] ?? committed;
  return html`<div class="entry-field"><label><span class="form-label">${label}</span><span class="entry-value" data-text=${committed === "" ? "" : name}><select aria-label="${of}: ${label.toLowerCase()}" ?disabled=${on.readonly}
    @change=${(event: Event) => {
      if (!(event.target instanceof HTMLSelectElement)) return;
      const { value } = event.target;
      const edits = [{ path, value: value === "" ? undefined : value }];
      send(on.host, "plan-edit", { field: path, cells: { value }, edits });
    }}>${choices.map(
      ([value, words]) => html`<option value=${value} .selected=${committed === value}>${words}</option>`,
    )}</select></span></label></div>`;
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
