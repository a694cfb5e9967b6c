import { html, type TemplateResult } from "lit";
import { pageWords } from "../words/pageWords.ts";
import { unbroken } from "../words/unbroken.ts";

/** What is to be done, in the page's own names for things, with ways to them. */
export function pieceWords(text: string): TemplateResult[] {
  return pageWords(unbroken(text)).map(({ text: words, code, to }) => {
    if (to !== undefined) return html`<a href="#${to}">${words}</a>`;
    return code === true ? html`<code dir="auto">${words}</code>` : html`${words}`;
  });
}
