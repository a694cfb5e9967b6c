import type { Theme } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { html, nothing } from "lit";
import { committedLevel, spends } from "../words/answerWords.ts";
import { levelInShort, readingOf, readLimitsWords, spokenOf } from "../words/levelWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { PageElement } from "./pageElement.ts";

/** All futures by finish and, where the plan has money, by cost; the level committed to as a line that can be moved. */
export class LeewayFutures extends PageElement {
  static override properties = {
    forecast: { attribute: false },
    trying: { attribute: false },
    theme: { type: String },
    fading: { type: Boolean },
    readonly: { type: Boolean },
  };
  forecast: Forecast | undefined;
  /** The level being looked at. */
  trying: number | undefined;
  theme: Theme = "light";
  fading = false;
  readonly = false;

  protected override render() {
    const { forecast, theme, trying } = this;
    const settling = this.fading ? "settling" : "";
    // Until there is an answer both have their place: most plans have money.
    const money = forecast === undefined || spends(forecast);
    return html`<div class="figures ${money ? "two" : ""} curves ${settling}">
        <leeway-level-curve chart="finishCurve" .answer=${forecast} .trying=${trying} theme=${theme} ?readonly=${this.readonly}></leeway-level-curve>
        ${
          money
            ? html`<leeway-level-curve chart="costCurve" .answer=${forecast} .trying=${trying} theme=${theme} ?readonly=${this.readonly}></leeway-level-curve>`
            : nothing
        }
      </div>
      <p class="note level-note">${forecast === undefined ? "" : unbroken(this.#note(forecast))}</p>
      <div class="figures ${settling}">
        <leeway-figure chart="fiftyFutures" .answer=${forecast} theme=${theme}></leeway-figure>
      </div>`;
  }

  #note(forecast: Forecast): string {
    const reading = readingOf(forecast, this.trying);
    if (reading !== undefined)
      return `${levelInShort(spokenOf(forecast, reading))}. ${readLimitsWords(reading)} Let go, or press Enter, to commit to it; Escape goes back to ${committedLevel(forecast)}.`;
    return `The committed level is a line on ${spends(forecast) ? "both curves" : "the curve"}: drag it, or move to its handle and press the arrow keys, to read another level. Under Commitment it can be written as a number.`;
  }
}

customElements.define("leeway-futures", LeewayFutures);
