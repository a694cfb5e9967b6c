import { formatPercent, groupDigits } from "@leeway/charts";
import type { Future, Plan, WhichFuture } from "@leeway/core";
import { html, nothing } from "lit";
import { readNumber } from "../plan/readNumber.ts";
import { AskingElement } from "./askingElement.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { futureCosts, futureEvents, futurePath } from "./futureTables.ts";

/** One of the futures replayed: picked by where it stands among them, or by its number. */
export class LeewayOneFuture extends AskingElement<"future"> {
  static override properties = {
    ...AskingElement.properties,
    plan: { attribute: false },
    which: { state: true },
    refused: { state: true },
  };
  plan: Plan | undefined;
  /** What the reader picked; undefined: the future at the level committed to. */
  which: WhichFuture | undefined;
  refused: { text: string; words: string } | undefined;

  protected readonly kind = "future";
  protected readonly doing = "Replaying the future";

  #which(): WhichFuture {
    return this.which ?? { at: this.plan?.commitment.confidence ?? 0.8 };
  }

  protected question() {
    return this.plan === undefined ? undefined : { kind: "future" as const, ...this.#which() };
  }

  protected override render() {
    if (this.plan === undefined) return nothing;
    const answer = this.asked?.answer;
    const settling = this.older || this.asked?.progress !== undefined ? "settling" : "";
    return html`${this.#pick(answer)}
      <div class="asking-line">${this.status()}</div>
      ${
        answer === undefined
          ? nothing
          : html`<div class=${settling}>
              <div class="figures">
                <leeway-figure chart="futureBars" .answer=${answer} theme=${this.theme}></leeway-figure>
              </div>
              <div class="told">
                <div>${futureEvents(answer)} ${futurePath(answer)}</div>
                <div>${futureCosts(answer)}</div>
              </div>
            </div>`
      }`;
  }

  #pick(answer: Future | undefined) {
    const which = this.#which();
    const level = "at" in which ? which.at : (answer?.finish.level ?? 0.5);
    const percent = Math.max(1, Math.min(99, Math.round(level * 100)));
    const n = answer?.stamp.iterations ?? 0;
    const now = answer?.iteration ?? 0;
    return html`<div class="pick">
      <label class="pick-level">
        <span>${formatPercent(percent / 100)} of futures finish no later than this one</span>
        <input type="range" min="1" max="99" step="1" .value=${String(percent)}
          aria-valuetext="${percent} % of futures finish no later"
          @input=${this.#slide} />
      </label>
      <div class="pick-number">
        <span aria-hidden="true">Number</span>
        ${field({
          label: `Number of the future${n === 0 ? "" : `, 1 to ${groupDigits(n)}`}`,
          committed: now === 0 ? "" : groupDigits(now),
          shown: this.refused?.text,
          message: this.refused === undefined ? undefined : "message-future",
          kind: "number",
          commit: (text) => this.#number(text, n),
          drop: () => {
            this.refused = undefined;
          },
        })}
        <span class="quiet" aria-hidden="true">${n === 0 ? "" : `of ${groupDigits(n)}`}</span>
        <button type="button" ?disabled=${now <= 1} @click=${() => this.#go(now - 1)}>Previous<span class="unseen"> future</span></button>
        <button type="button" ?disabled=${now === 0 || now >= n} @click=${() => this.#go(now + 1)}>Next<span class="unseen"> future</span></button>
      </div>
      ${fieldMessage("message-future", this.refused === undefined ? undefined : { cells: {}, words: this.refused.words })}
    </div>`;
  }

  #slide = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement)) return;
    this.refused = undefined;
    this.which = { at: Number(event.target.value) / 100 };
  };

  #number(text: string, n: number): void {
    const entry = readNumber(text, "the number of a future", "17");
    if ("words" in entry) this.refused = { text, words: entry.words };
    else if (!Number.isInteger(entry.value) || entry.value < 1 || (n > 0 && entry.value > n)) {
      this.refused = {
        text,
        words: `The run has ${groupDigits(n)} futures, counted from 1. Write one of them.`,
      };
    } else this.#go(entry.value);
  }

  #go(iteration: number): void {
    this.refused = undefined;
    this.which = { iteration };
  }
}

customElements.define("leeway-one-future", LeewayOneFuture);
