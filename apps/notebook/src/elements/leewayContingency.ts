import { errorSentence, gapSentence, meaningSentence, spends } from "@leeway/charts";
import { html, nothing } from "lit";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";

/** Why this much contingency: the gap in words, split over its causes, and walked step by step. */
export class LeewayContingency extends AskingElement<"explain"> {
  protected readonly kind = "explain";
  protected readonly doing = "Splitting the contingency";

  protected question() {
    return { kind: "explain" as const };
  }

  protected override render() {
    const answer = this.asked?.answer;
    const { theme } = this;
    const money = answer !== undefined && spends(answer);
    const sizes = `figures ${money ? "two" : ""}`;
    return html`<div class="asking-line beside-heading">${this.status()}</div>${
      answer === undefined
        ? nothing
        : html`<div class=${this.older ? "settling" : ""}>
            <p class="finding">${unbroken(gapSentence(answer))}</p>
            <div class=${sizes}>
              <leeway-figure chart="sharesDays" .answer=${answer} theme=${theme}></leeway-figure>
              ${money ? html`<leeway-figure chart="sharesMoney" .answer=${answer} theme=${theme}></leeway-figure>` : nothing}
            </div>
            <p class="note">${unbroken(`${meaningSentence(answer)} ${errorSentence(answer) ?? ""}`)}</p>
            <div class=${sizes}>
              <leeway-figure chart="walkDays" .answer=${answer} theme=${theme}></leeway-figure>
              ${money ? html`<leeway-figure chart="walkMoney" .answer=${answer} theme=${theme}></leeway-figure>` : nothing}
            </div>
          </div>`
    }`;
  }
}

customElements.define("leeway-contingency", LeewayContingency);
