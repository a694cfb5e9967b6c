import { html, nothing, type TemplateResult } from "lit";
import type { Pending } from "../store/state.ts";
import { fieldName } from "../words/pageWords.ts";

/** The reason an entry waits, in words, beside its field. `alert`: it is read out when it appears. */
export function fieldMessage(id: string, pending: Pending | undefined): TemplateResult | typeof nothing {
  if (pending === undefined) return nothing;
  return html`<p class="message" id=${id} role="alert">${namedFields(pending.words)}</p>`;
}

/** Keys of the document by what the page calls their fields; those it has no field for stand as they are written. */
export function namedFields(words: string): (string | TemplateResult)[] {
  // A field of the page is there already: it is filled in, not added.
  const said = words.replace(/\bAdd `([^`]+)`/g, (all, key) =>
    fieldName(key) === undefined ? all : `Fill in \`${key}\``,
  );
  return said.split("`").map((part, at) => {
    if (at % 2 === 0) return part;
    const name = fieldName(part);
    return name === undefined ? html`<code dir="auto">${part}</code>` : `“${name}”`;
  });
}
