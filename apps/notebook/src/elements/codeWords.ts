import { html, type TemplateResult } from "lit";

/** Words with parts of the document in them: what stands between backticks is set as code. */
export function codeWords(text: string): TemplateResult[] {
  return text
    .split("`")
    .map((part, at) => (at % 2 === 1 ? html`<code dir="auto">${part}</code>` : html`${part}`));
}
