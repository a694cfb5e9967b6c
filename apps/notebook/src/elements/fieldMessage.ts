import { html, nothing, type TemplateResult } from "lit";
import type { Pending } from "../store/state.ts";
import { codeWords } from "./codeWords.ts";

/** The reason an entry waits, in words, beside its field. `alert`: it is read out when it appears. */
export function fieldMessage(id: string, pending: Pending | undefined): TemplateResult | typeof nothing {
  if (pending === undefined) return nothing;
  return html`<p class="message" id=${id} role="alert">${codeWords(pending.words)}</p>`;
}
