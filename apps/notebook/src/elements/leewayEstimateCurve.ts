import type { EstimateAbout } from "@leeway/charts";
import type { FixedEstimate, RangeEstimate } from "@leeway/core";
import { html, nothing } from "lit";
import type * as Charts from "./charts.ts";
import { PageElement } from "./pageElement.ts";
import { plainEmptyHeaders } from "./plainEmptyHeaders.ts";

/** Ms without a change after which the reading is said to those who listen. */
const sayAfter = 700;
/** The words stand beside the curve (estimateCurve.css). */
const beside = "(min-width: 60.01rem)";

let charts: typeof Charts | undefined;

/** What three cells say while they are typed: the curve, and its one-in-ten reading. */
export class LeewayEstimateCurve extends PageElement {
  static override properties = {
    estimate: { attribute: false },
    about: { attribute: false },
    typed: { attribute: false },
    said: { state: true },
    loaded: { state: true },
  };
  /** Undefined: the cells say nothing yet; what they said last stays, faded. */
  estimate: RangeEstimate | FixedEstimate | undefined;
  about: EstimateAbout | undefined;
  /** What the cells show is not what the plan says. */
  typed = false;
  said = "";
  loaded = charts !== undefined;
  /** The old drawing is being taken away: a focus that was in it goes on to the new one. */
  drawing = false;
  #saying: ReturnType<typeof setTimeout> | undefined;
  #drawnFor = "";

  override connectedCallback(): void {
    super.connectedCallback();
    if (charts !== undefined) return;
    void import("./charts.ts").then((module) => {
      charts = module;
      this.loaded = true;
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#saying);
  }

  protected override render() {
    const name = this.about?.name ?? "";
    return html`<div class="curve-head"><p class="curve-of" dir="auto" title=${name}>${name.slice(0, 1).toUpperCase()}${name.slice(1)}</p>
      <p class="curve-keys">${this.typed ? "Not in the plan yet: Enter or leaving the cell takes it in, Escape gives it up." : "Arrow keys and Enter go on, Escape closes this."}</p></div>
      <div class="curve-place ${this.estimate === undefined ? "settling" : ""}"></div>
      ${this.estimate === undefined ? html`<p class="quiet">Low, likely and high, in this order, say what it may take.</p>` : nothing}
      <p class="unseen" role="status">${this.said}</p>`;
  }

  protected override updated(): void {
    const { estimate, about } = this;
    if (charts === undefined || estimate === undefined || about === undefined) return;
    const wanted = JSON.stringify([estimate, about]);
    const place = this.querySelector(".curve-place");
    if (place === null || wanted === this.#drawnFor) return;
    this.#drawnFor = wanted;
    const theme = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
    const room = place.clientWidth;
    const width = Math.max(320, Math.floor(matchMedia(beside).matches ? ((room - 26) * 7) / 12 : room));
    const figure = charts.estimateCurve(estimate, about, { document, width, theme });
    const open = place.querySelector("details")?.open ?? false;
    const focused = place.contains(document.activeElement);
    const drawn = charts.renderFigure(figure, document);
    const details = drawn.querySelector("details");
    if (details !== null) details.open = open;
    plainEmptyHeaders(drawn);
    this.drawing = true;
    place.replaceChildren(drawn);
    if (focused) drawn.querySelector("summary")?.focus();
    this.drawing = false;
    clearTimeout(this.#saying);
    this.#saying = setTimeout(() => {
      this.said = figure.title;
    }, sayAfter);
  }
}

customElements.define("leeway-estimate-curve", LeewayEstimateCurve);
