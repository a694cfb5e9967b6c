import { html, type TemplateResult } from "lit";
import { entryField, type FieldsOf, optionalText } from "./entryFields.ts";

interface NoteField {
  path: string;
  of: string;
  committed: string | undefined;
}

/** A remark; one of several lines would lose them in a field. */
export function noteField(on: FieldsOf, { path, of, committed = "" }: NoteField): TemplateResult {
  return /[\r\n]/.test(committed)
    ? html`<p class="quiet">Its note has several lines: it is edited in the <a href="#text">plan text</a>.</p>`
    : entryField(on, { path, label: "Note", of, committed, wraps: true, read: optionalText });
}
