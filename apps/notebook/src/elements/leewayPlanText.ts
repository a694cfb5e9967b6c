import type { Problem } from "@leeway/core";
import { html, nothing, type PropertyValues } from "lit";
import { codeWords } from "./codeWords.ts";
import { send } from "./events.ts";
import { LongElement } from "./longElement.ts";

/** How long the reader pauses before what was typed is taken as the plan, in ms. */
const pause = 700;

/** The document itself, and what is wrong with it, by line. */
export class LeewayPlanText extends LongElement {
  static override properties = { text: { attribute: false }, problems: { attribute: false } };
  text = "";
  problems: readonly Problem[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What the area holds while the plan does not have it yet: it must not be overwritten. */
  #own: string | undefined;
  /** The reader has not paused since. */
  #typing = false;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("text") && !this.#typing) this.#own = undefined;
  }

  protected override render() {
    return html`<div class="cell">
      <div class="follows plan-text">
        <label for="plan-text">The plan as a document. A change is taken over when you pause.</label>
        <textarea
          id="plan-text"
          rows="28"
          spellcheck="false"
          autocomplete="off"
          wrap="off"
          aria-describedby="plan-problems"
          data-typing=${this.#typing}
          .value=${this.#own ?? this.text}
          @input=${this.#later}
          @change=${this.#now}
        ></textarea>
      </div>
      <div class="states" id="plan-problems">${this.#problems()}</div>
    </div>`;
  }

  #problems() {
    if (this.problems.length === 0) return html`<p class="quiet">Nothing to put right.</p>`;
    const errors = this.problems.filter((problem) => problem.severity === "error");
    const warnings = this.problems.filter((problem) => problem.severity === "warning");
    return html`${this.#list("To put right", errors)} ${this.#list("Worth a look", warnings)}`;
  }

  #list(title: string, problems: readonly Problem[]) {
    if (problems.length === 0) return nothing;
    return html`<h3>${title}</h3>
      <ul class="problems">
        ${problems.map(
          (problem) => html`<li class=${problem.severity}>
            ${
              problem.line === undefined
                ? nothing
                : html`<button type="button" class="line-button" @click=${() => this.#show(problem.line ?? 1)}>
                    line ${problem.line}
                  </button>`
            }
            <code>${problem.path}</code>
            ${problem.received === "" ? nothing : html`<span class="received">${codeWords(problem.received)}:</span>`}
            ${codeWords(`${problem.rule} ${problem.remedy}`)}
          </li>`,
        )}
      </ul>`;
  }

  #area(): HTMLTextAreaElement | undefined {
    return this.querySelector("textarea") ?? undefined;
  }

  #later = (): void => {
    clearTimeout(this.#timer);
    this.#typing = true;
    this.#own = this.#area()?.value;
    this.requestUpdate();
    this.#timer = setTimeout(this.#now, pause);
  };

  #now = (): void => {
    clearTimeout(this.#timer);
    this.#typing = false;
    this.requestUpdate();
    const text = this.#own;
    if (text !== undefined && text !== this.text) send(this, "plan-text", { text });
    else this.#own = undefined;
  };

  /** Puts the caret on a line and selects it. */
  #show(line: number): void {
    const area = this.#area();
    if (area === undefined) return;
    const lines = area.value.split("\n");
    const from = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
    area.focus();
    area.setSelectionRange(from, from + (lines[line - 1]?.length ?? 0));
    area.scrollTop = heightOf(area, lines.slice(0, Math.max(0, line - 6)));
  }
}

/** Px that these lines take in the area, long ones in as many lines as they are wrapped to. */
function heightOf(area: HTMLTextAreaElement, lines: readonly string[]): number {
  if (lines.length === 0) return 0;
  const twin = area.cloneNode() as HTMLTextAreaElement;
  twin.removeAttribute("id");
  twin.rows = 1;
  twin.style.cssText = `position: absolute; visibility: hidden; content-visibility: visible; height: 0; min-height: 0; padding-block: 0; width: ${area.offsetWidth}px; overflow-y: scroll`;
  twin.value = lines.join("\n");
  area.after(twin);
  const { scrollHeight } = twin;
  twin.remove();
  return scrollHeight;
}

customElements.define("leeway-plan-text", LeewayPlanText);
