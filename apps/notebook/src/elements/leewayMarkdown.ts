import { html } from "lit";
import type * as Markdown from "../words/markdown.ts";
import { PageElement } from "./pageElement.ts";

let reading: typeof Markdown | undefined;

/** A text in Markdown, shown. Until its reader is loaded, the text as it stands. */
export class LeewayMarkdown extends PageElement {
  static override properties = { text: { attribute: false } };
  text = "";
  #shown: string | undefined;

  protected override render() {
    return html`<div class="prose" dir="auto"></div>`;
  }

  protected override updated(): void {
    const place = this.querySelector<HTMLElement>(".prose");
    if (place === null || this.#shown === this.text) return;
    if (reading === undefined) {
      place.textContent = this.text;
      void import("../words/markdown.ts").then((module) => {
        reading = module;
        this.requestUpdate();
      });
      return;
    }
    this.#shown = this.text;
    place.replaceChildren(reading.markdownNodes(this.text, document));
  }
}

customElements.define("leeway-markdown", LeewayMarkdown);
