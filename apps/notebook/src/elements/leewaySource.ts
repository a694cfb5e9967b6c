import { designWords, groupDigits } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { html, nothing } from "lit";
import { commandWords, type SourceKey, sourceOf } from "../words/sourceWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { PageElement } from "./pageElement.ts";

/** Px between the figure and its panel, and between the panel and the edge of the window. */
const gap = 6;
const edge = 8;

/** Where a figure comes from: a panel at the figure that asked, one for all of them. */
export class LeewaySource extends PageElement {
  static override properties = {
    forecast: { attribute: false },
    file: { type: String },
    fewer: { type: Boolean },
    key: { state: true },
  };
  forecast: Forecast | undefined;
  /** Name of the plan's file, for the command. */
  file = "";
  /** The answer is the early one, from fewer futures than the plan asks for. */
  fewer = false;
  key: SourceKey | undefined;
  #from: HTMLElement | undefined;

  /** Shows it at a figure. */
  async show(key: SourceKey, from: HTMLElement): Promise<void> {
    this.key = key;
    this.#from = from;
    await this.updateComplete;
    const panel = this.#panel();
    if (panel === null) return;
    panel.showPopover();
    from.setAttribute("aria-expanded", "true");
    this.#place(panel, from);
    panel.querySelector<HTMLElement>("h2")?.focus();
  }

  #panel(): HTMLElement | null {
    return this.querySelector("[popover]");
  }

  /** Under the figure, or over it where there is no room; within the window. It scrolls with the page. */
  #place(panel: HTMLElement, from: HTMLElement): void {
    const at = from.getBoundingClientRect();
    const { width, height } = panel.getBoundingClientRect();
    const room = document.documentElement.clientWidth;
    const left = Math.max(edge, Math.min(at.left, room - width - edge));
    const under = at.bottom + gap;
    const over = at.top - gap - height;
    const top = under + height <= innerHeight || over < 0 ? under : over;
    panel.style.left = `${left + scrollX}px`;
    panel.style.top = `${top + scrollY}px`;
  }

  protected override render() {
    const { forecast, key } = this;
    const source = forecast === undefined || key === undefined ? undefined : sourceOf(key, forecast);
    if (forecast === undefined || source === undefined) return nothing;
    const inputs = [
      ...source.inputs,
      ["Seed", forecast.seed],
      ["Futures", groupDigits(forecast.iterations)],
      ["Sampling", designWords(forecast.design)],
      ["Engine", forecast.version],
    ] as const;
    const command = commandWords(source.verb, this.file, this.fewer ? forecast.iterations : undefined);
    return html`<div popover class="source-panel" role="dialog" aria-labelledby="source-title"
      @toggle=${this.#toggled}>
      <h2 id="source-title" tabindex="-1"><span class="unseen">Where it comes from: </span>${source.title}</h2>
      <p>${source.how}</p>
      <dl>
        ${inputs.map(([term, value]) => html`<div><dt>${term}</dt><dd>${unbroken(value)}</dd></div>`)}
        <div class="hash"><dt>Plan, SHA-256</dt><dd>${forecast.plan.sha256}</dd></div>
      </dl>
      <p class="source-command">The same, on this plan's file: <code>${command}</code>, at <code>${source.at}</code></p>
      <button type="button" @click=${() => this.#panel()?.hidePopover()}>Close</button>
    </div>`;
  }

  /** The reader is back at the figure, unless they have gone elsewhere. */
  #toggled = (event: Event): void => {
    if (!(event instanceof ToggleEvent) || event.newState !== "closed") return;
    const from = this.#from;
    this.#from = undefined;
    from?.setAttribute("aria-expanded", "false");
    const { activeElement } = document;
    if (activeElement === null || activeElement === document.body || this.contains(activeElement))
      from?.focus();
  };
}

customElements.define("leeway-source", LeewaySource);
