import { html, type TemplateResult } from "lit";

/** What a value is, beside it: shown where the heads of columns do not stand above what they name. Listeners hear the field's own name. */
export function cellLabel(words: string | undefined): TemplateResult {
  return html`<span class="cell-label" aria-hidden="true">${words}</span>`;
}
