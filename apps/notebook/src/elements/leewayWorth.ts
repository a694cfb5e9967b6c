import { countSentences, worthSentence } from "@leeway/charts";
import { html, nothing } from "lit";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";

/** What each response to a risk costs and buys. */
export class LeewayWorth extends AskingElement<"responses"> {
  protected readonly kind = "responses";
  protected readonly doing = "Running the plan with and without each response";

  protected question() {
    return { kind: "responses" as const };
  }

  protected override render() {
    const answer = this.asked?.answer;
    return html`${this.status()}${
      answer === undefined
        ? nothing
        : html`<div class=${this.older ? "settling" : ""}>
            ${
              answer.responses.length === 0
                ? html`<p class="finding">${worthSentence(answer)}</p>`
                : html`<div class="figures">
                    <leeway-figure chart="responseWorth" .answer=${answer} theme=${this.theme}></leeway-figure>
                  </div>`
            }
            ${countSentences(answer).map((sentence) => html`<p class="note">${unbroken(sentence)}</p>`)}
          </div>`
    }`;
  }
}

customElements.define("leeway-worth", LeewayWorth);
