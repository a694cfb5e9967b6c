import type { Theme } from "@leeway/charts";
import { html, nothing } from "lit";
import type { NotebookState } from "../store/state.ts";
import { spends } from "../words/answerWords.ts";
import { send } from "./events.ts";
import { KeptFocus } from "./keptFocus.ts";
import { LongElement } from "./longElement.ts";

/** What moves the committed date most, and the sum where the plan has money. It needs many re-runs, so it comes after the answer. */
export class LeewayTornado extends LongElement {
  static override properties = { state: { attribute: false }, theme: { type: String } };
  state: NotebookState | undefined;
  theme: Theme = "light";

  constructor() {
    super();
    new KeptFocus(this);
  }

  protected override render() {
    const { state } = this;
    if (state === undefined) return nothing;
    const { forecast } = state.tornado;
    const older = forecast !== undefined && state.tornado.plan !== state.current;
    return html`<div class="tornado-status">${this.#status(state, older)}</div>
      ${
        forecast === undefined
          ? nothing
          : html`<div class="figures ${spends(forecast) ? "two" : ""} ${older ? "settling" : ""}">
              <leeway-figure chart="tornadoDays" .answer=${forecast} .theme=${this.theme}></leeway-figure>
              ${spends(forecast) ? html`<leeway-figure chart="tornadoMoney" .answer=${forecast} .theme=${this.theme}></leeway-figure>` : nothing}
            </div>`
      }`;
  }

  #status(state: NotebookState, older: boolean) {
    const { progress, stopped, forecast } = state.tornado;
    if (progress !== undefined) {
      const share = progress.total === 0 ? 0 : progress.done / progress.total;
      return html`<label>Re-running the plan once for each item
          <progress max="1" .value=${share}></progress></label>
        <span class="figure-number">${Math.floor(share * 100)} %</span>
        <button type="button" @click=${() => send(this, "tornado-stop", undefined)}>Stop re-running</button>`;
    }
    if (forecast !== undefined && !older) return nothing;
    const words = older
      ? "What moves it most belongs to the answer before your last change."
      : "What moves the answer most takes one re-run for each item.";
    if (!stopped)
      return html`<span class="quiet">${older ? words : "Worked out once the answer is there."}</span>`;
    return html`<span class="quiet">${words}</span>
      <button type="button" @click=${() => send(this, "tornado-start", undefined)}>Work it out</button>`;
  }
}

customElements.define("leeway-tornado", LeewayTornado);
