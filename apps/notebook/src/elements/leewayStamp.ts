import { designWords, groupDigits } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { html, nothing } from "lit";
import { LongElement } from "./longElement.ts";

/** The run stamp: what is needed to get the same figures again. */
export class LeewayStamp extends LongElement {
  static override properties = { forecast: { attribute: false } };
  forecast: Forecast | undefined;

  protected override render() {
    const { forecast } = this;
    if (forecast === undefined) return nothing;
    return html`<dl class="stamp">
        <div><dt>Seed</dt><dd>${forecast.seed}</dd></div>
        <div><dt>Futures</dt><dd>${groupDigits(forecast.iterations)}</dd></div>
        <div><dt>Sampling</dt><dd>${designWords(forecast.design)}</dd></div>
        <div><dt>Engine</dt><dd>${forecast.version}</dd></div>
        <div class="hash"><dt>Plan, SHA-256</dt><dd>${forecast.plan.sha256}</dd></div>
      </dl>
      <p class="note">
        The same plan, seed and number of futures give the same figures, to the bit. Everything is computed in this
        browser; nothing is sent anywhere.
      </p>`;
  }
}

customElements.define("leeway-stamp", LeewayStamp);
