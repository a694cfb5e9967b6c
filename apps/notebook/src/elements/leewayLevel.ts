import { levelsSpend } from "@leeway/charts";
import { html, nothing } from "lit";
import { AskingElement } from "./askingElement.ts";
import { pieceWords } from "./pieceWords.ts";

/** Why this level and not another: what each step takes and avoids; with money, date and sum kept together. */
export class LeewayLevel extends AskingElement<"confidence"> {
  protected readonly kind = "confidence";
  protected readonly doing = "Setting the levels side by side";

  protected question() {
    return { kind: "confidence" as const };
  }

  protected override render() {
    const answer = this.asked?.answer;
    const { theme } = this;
    const money = answer !== undefined && levelsSpend(answer);
    return html`<div class="asking-line beside-heading">${this.status()}</div>${
      answer === undefined
        ? nothing
        : html`<div class=${this.older ? "settling" : ""}>
            ${answer.missing === undefined ? nothing : html`<p class="note">${pieceWords(answer.missing)}</p>`}
            <div class="figures">
              <leeway-figure chart="confidenceSteps" .answer=${answer} theme=${theme}></leeway-figure>
              ${money ? html`<leeway-figure chart="jointDensity" .answer=${answer} theme=${theme}></leeway-figure>` : nothing}
            </div>
            <p class="note">
              ${money ? "Money held is not money spent: a step holds its sum whether it is needed or not." : "Days held are not days used: a step holds them whether they are needed or not."}
              Which level is right is for those who answer for the promise; your own rules come first.
            </p>
          </div>`
    }`;
  }
}

customElements.define("leeway-level", LeewayLevel);
