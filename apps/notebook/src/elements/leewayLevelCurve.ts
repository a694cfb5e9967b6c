import { type CurvePlace, curvePlace, formatDate, type Theme } from "@leeway/charts";
import { type Forecast, type LevelReading, readLevel } from "@leeway/core";
import { html } from "lit";
import { committedLevel, committedSum, type Spoken } from "../words/answerWords.ts";
import { levelInShort, spokenOf } from "../words/levelWords.ts";
import { send } from "./events.ts";
import { levelAfter, levelKeys, levelsBetween } from "./levelSteps.ts";
import { PageElement } from "./pageElement.ts";

/** Ms after the last key before the level it led to is kept. */
const keysRest = 1000;

/** What is pulled: the pole along the dates, the guide along the shares, the handle along the curve. */
type Grip = "pole" | "guide" | "handle";

/** A curve with the level committed to on it, as a line that can be moved with the pointer and with keys. */
export class LeewayLevelCurve extends PageElement {
  static override properties = {
    chart: { type: String },
    answer: { attribute: false },
    theme: { type: String },
    trying: { attribute: false },
    readonly: { type: Boolean },
    place: { state: true },
  };
  chart: "finishCurve" | "costCurve" = "finishCurve";
  answer: Forecast | undefined;
  theme: Theme = "light";
  /** The level being looked at. */
  trying: number | undefined;
  readonly = false;
  place: CurvePlace | undefined;
  #readings: { of: Forecast; all: LevelReading[] } | undefined;
  #pulled: { grip: Grip; pointer: number; dx: number; dy: number } | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #size = new ResizeObserver(() => this.#cover());

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener("figure-drawn", this.#coverSoon);
    this.#size.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener("figure-drawn", this.#coverSoon);
    this.#size.disconnect();
    clearTimeout(this.#timer);
  }

  protected override render() {
    const { answer } = this;
    return html`<leeway-figure chart=${this.chart} .answer=${answer} theme=${this.theme}></leeway-figure>
      ${answer === undefined ? html`<div class="level-over"></div>` : this.#over(answer)}`;
  }

  #over(answer: Forecast) {
    const spoken = this.#spoken(answer);
    const { confidence, date } = spoken.committed;
    const moved = this.trying !== undefined && this.trying !== answer.committed.confidence;
    const [least = confidence, most = confidence] = range(answer);
    const down = (grip: Grip) => (event: PointerEvent) => this.#take(grip, event);
    return html`<div class="level-over ${moved ? "moved" : ""} ${this.readonly ? "fixed" : ""}"
      @pointermove=${this.#pull} @pointerup=${this.#letGo} @pointercancel=${this.#lose}>
      <div class="level-pole" @pointerdown=${down("pole")}></div>
      <div class="level-guide" @pointerdown=${down("guide")}></div>
      <div class="level-flag" aria-hidden="true">${committedLevel(spoken)} ·
        ${this.chart === "finishCurve" ? formatDate(date) : committedSum(spoken)}</div>
      <div class="level-handle" role="slider" tabindex="0"
        aria-label="Level committed to, on the curve of ${this.chart === "finishCurve" ? "finishes" : "costs"}"
        aria-valuemin=${percent(least)} aria-valuemax=${percent(most)} aria-valuenow=${percent(confidence)}
        aria-valuetext=${levelInShort(spoken)}${moved ? ", read off the curve" : ""} aria-disabled=${this.readonly}
        @pointerdown=${down("handle")} @keydown=${this.#key} @blur=${this.#keep}></div>
    </div>`;
  }

  protected override updated(): void {
    this.#put();
  }

  #spoken(answer: Forecast): Spoken {
    const { trying } = this;
    return trying === undefined || trying === answer.committed.confidence
      ? answer
      : spokenOf(answer, readLevel(answer, trying));
  }

  /** With the frame that shows the drawing: measured at once, the page would be laid out in the task that drew. */
  #coverSoon = (): void => {
    requestAnimationFrame(this.#cover);
  };

  /** Lays itself over the drawing. The policy of the page allows no inline styles but those set by script. */
  #cover = (): void => {
    const svg = this.querySelector(".figure-place svg");
    const over = this.querySelector<HTMLElement>(".level-over");
    if (svg === null || over === null) return;
    const [own, box] = [this.getBoundingClientRect(), svg.getBoundingClientRect()];
    over.style.left = `${box.left - own.left}px`;
    over.style.top = `${box.top - own.top}px`;
    over.style.width = `${box.width}px`;
    over.style.height = `${box.height}px`;
    this.place = curvePlace(svg);
    this.#put();
  };

  #put(): void {
    const { place, answer } = this;
    const over = this.querySelector<HTMLElement>(".level-over");
    if (over === null) return;
    over.toggleAttribute("hidden", place === undefined || answer === undefined);
    if (place === undefined || answer === undefined) return;
    const { committed } = this.#spoken(answer);
    const share = (part: number, whole: number) => `${(100 * part) / whole}%`;
    const x = place.x(this.#valueOf(committed));
    const set = (name: string, value: string) => over.style.setProperty(name, value);
    set("--x", share(x, place.width));
    set("--y", share(place.y(committed.confidence), place.height));
    set("--left", share(place.left, place.width));
    set("--floor", share(place.height - place.bottom, place.height));
    over.toggleAttribute("data-right", x > place.width / 2);
  }

  #valueOf(of: { cost: number } & Partial<Pick<LevelReading, "day">>): number {
    return this.chart === "costCurve" ? of.cost : (of.day ?? Number.NaN);
  }

  #take(grip: Grip, event: PointerEvent): void {
    const { place, answer } = this;
    if (this.readonly || event.button !== 0 || place === undefined || answer === undefined) return;
    if (!(event.currentTarget instanceof HTMLElement)) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const { committed } = this.#spoken(answer);
    const { x, y } = this.#at(event, place);
    // From where it was taken: it does not leap to the pointer.
    const dx = place.x(this.#valueOf(committed)) - x;
    const dy = place.y(committed.confidence) - y;
    this.#pulled = { grip, pointer: event.pointerId, dx, dy };
  }

  #pull = (event: PointerEvent): void => {
    const { place, answer } = this;
    const pulled = this.#pulled;
    if (place === undefined || answer === undefined || pulled?.pointer !== event.pointerId) return;
    const { x, y } = this.#at(event, place);
    const away = (reading: LevelReading): number => {
      const byX = place.x(this.#valueOf(reading)) - x - pulled.dx;
      const byY = place.y(reading.confidence) - y - pulled.dy;
      return pulled.grip === "pole"
        ? Math.abs(byX)
        : pulled.grip === "guide"
          ? Math.abs(byY)
          : Math.hypot(byX, byY);
    };
    const [first, ...others] = this.#all(answer);
    if (first === undefined) return;
    const nearest = others.reduce((best, each) => (away(each) < away(best) ? each : best), first);
    this.#try(nearest.confidence);
  };

  #letGo = (event: PointerEvent): void => {
    if (this.#pulled?.pointer !== event.pointerId) return;
    this.#pulled = undefined;
    this.#keep();
  };

  #lose = (): void => {
    this.#pulled = undefined;
    this.trying = undefined;
    send(this, "level-drop", undefined);
  };

  #key = (event: KeyboardEvent): void => {
    const { answer } = this;
    if (answer === undefined || this.readonly || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape") {
      clearTimeout(this.#timer);
      if (this.trying === undefined) return;
      event.preventDefault();
      this.#lose();
      return;
    }
    if (event.key === "Enter") {
      this.#keep();
      return;
    }
    if (!levelKeys.has(event.key)) return;
    event.preventDefault();
    const next = levelAfter(event.key, this.#spoken(answer).committed.confidence, range(answer));
    this.#try(next);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#keep, keysRest);
  };

  #keep = (): void => {
    clearTimeout(this.#timer);
    if (this.#pulled === undefined) send(this, "level-keep", undefined);
  };

  #try(confidence: number): void {
    if (confidence === this.trying) return;
    // At once, without waiting for the page: the next key goes on from here.
    this.trying = confidence;
    send(this, "level-try", { confidence });
  }

  #at(event: PointerEvent, place: CurvePlace): { x: number; y: number } {
    const box = this.querySelector(".level-over")?.getBoundingClientRect();
    if (box === undefined) return { x: 0, y: 0 };
    const scale = place.width / box.width;
    return { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale };
  }

  #all(answer: Forecast): LevelReading[] {
    if (this.#readings?.of !== answer)
      this.#readings = { of: answer, all: levelsBetween(range(answer)).map((p) => readLevel(answer, p)) };
    return this.#readings.all;
  }
}

/** From 50 to 95 %, and to the level committed to where that lies outside. */
function range({ committed: { confidence } }: Forecast): [number, number] {
  return [Math.min(0.5, confidence), Math.max(0.95, confidence)];
}

function percent(confidence: number): number {
  return Math.round(confidence * 1000) / 10;
}

customElements.define("leeway-level-curve", LeewayLevelCurve);
