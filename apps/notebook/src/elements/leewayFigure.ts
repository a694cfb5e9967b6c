import type { Figure, Theme } from "@leeway/charts";
import { html, nothing } from "lit";
import { unbroken } from "../words/unbroken.ts";
import type * as Charts from "./charts.ts";
import { PageElement } from "./pageElement.ts";
import { pageTurns } from "./pageTurns.ts";
import { plainEmptyHeaders } from "./plainEmptyHeaders.ts";
import { saveText } from "./saveText.ts";

/** Widths are rounded to this many px, so that a window being dragged does not redraw every frame. */
const widthStep = 20;

/** Between the margins of an A4 sheet, in px. */
const paperWidth = 660;

let drawing: typeof Charts | undefined;
let loading: Promise<void> | undefined;

/** Loads what draws, once. */
function loadDrawing(): Promise<void> {
  loading ??= import("./charts.ts").then((module) => {
    drawing = module;
  });
  return loading;
}

/** One chart of an answer, drawn to the width it is given and redrawn when answer, theme or width change. */
export class LeewayFigure extends PageElement {
  static override properties = {
    chart: { type: String },
    answer: { attribute: false },
    theme: { type: String },
    width: { state: true },
    figure: { state: true },
  };
  chart: Charts.ChartName | undefined;
  answer: Charts.AnswerOf | undefined;
  theme: Theme = "light";
  width = 0;
  figure: Figure | undefined;
  #observer: ResizeObserver | undefined;
  #print = matchMedia("print");
  #drawnFor: readonly unknown[] = [];

  override connectedCallback(): void {
    super.connectedCallback();
    this.#observer = new ResizeObserver(() => this.#measure());
    this.#observer.observe(this);
    this.#print.addEventListener("change", this.#onPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#observer?.disconnect();
    this.#print.removeEventListener("change", this.#onPrint);
    pageTurns.drop(this);
  }

  #measure(): void {
    const room = Math.floor(this.clientWidth / widthStep) * widthStep;
    if (room > 0) this.width = Math.max(320, Math.min(1600, room));
  }

  protected override render() {
    return html`<div class="figure-place"></div>
      ${
        this.figure === undefined
          ? nothing
          : html`<div class="saves">
              <button type="button" class="save" @click=${this.#save}>
                Save as SVG<span class="unseen">: ${this.figure.title}</span>
              </button>
              <button type="button" class="save" @click=${this.#savePng}>
                Save as PNG<span class="unseen">: ${this.figure.title}</span>
              </button>
            </div>`
      }`;
  }

  protected override updated(): void {
    const { chart, answer, width, theme } = this;
    if (chart === undefined || answer === undefined) return;
    // Also where it is folded away and has no width: it may be printed.
    if (drawing === undefined) {
      loadDrawing().then(() => this.requestUpdate());
      return;
    }
    const wanted = [chart, answer, width, theme];
    if (width === 0 || wanted.every((part, at) => part === this.#drawnFor[at])) return;
    pageTurns.take(this, () => {
      this.#drawnFor = wanted;
      this.#draw();
    });
  }

  /** Paper is light whatever the screen is. */
  #draw(): void {
    const { chart, answer } = this;
    const width = this.#print.matches ? paperWidth : this.width;
    const place = this.querySelector(".figure-place");
    if (drawing === undefined || place === null) return;
    if (chart === undefined || answer === undefined || width === 0) return;
    const theme = this.#print.matches ? "light" : this.theme;
    const figure = drawing.drawChart(chart, answer, { document, width, theme });
    const open = place.querySelector("details")?.open ?? false;
    const drawn = drawing.renderFigure(figure, document);
    const details = drawn.querySelector("details");
    if (details !== null) details.open = open;
    plainEmptyHeaders(drawn);
    for (const cell of drawn.querySelectorAll(".figure-table :is(caption, th, td)"))
      cell.textContent = unbroken(cell.textContent ?? "");
    place.replaceChildren(drawn);
    this.figure = figure;
    this.toggleAttribute("drawn", true);
    this.dispatchEvent(new Event("figure-drawn", { bubbles: true }));
  }

  /** The print waits for no turn. */
  #onPrint = (): void => this.#draw();

  /** A file is for others to read: light, and of one width, whatever this screen is. */
  #save = (): void => {
    const file = this.#file();
    if (file !== undefined) saveText(file.svg, "image/svg+xml", `${file.name}.svg`);
  };

  #savePng = async (): Promise<void> => {
    const file = this.#file();
    if (file === undefined) return;
    const { savePng } = await import("../handing/savePng.ts");
    await savePng(file.svg, `${file.name}.png`);
  };

  #file(): { svg: string; name: string } | undefined {
    if (drawing === undefined || this.chart === undefined || this.answer === undefined) return undefined;
    const figure = drawing.drawChart(this.chart, this.answer, { document, width: 720, theme: "light" });
    return { svg: drawing.figureSvg(figure), name: fileName(figure.title) };
  }
}

function fileName(title: string): string {
  const words = title.toLowerCase().match(/[a-z0-9]+/g) ?? ["figure"];
  return words.slice(0, 8).join("-");
}

customElements.define("leeway-figure", LeewayFigure);
