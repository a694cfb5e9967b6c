import { formatDate } from "@leeway/charts";
import { html, nothing } from "lit";
import { type NotebookState, type Progress, staleWords } from "../store/state.ts";
import { committedLevel, committedSum, type Spoken, spends } from "../words/answerWords.ts";
import { readingOf, spokenOf } from "../words/levelWords.ts";
import { moved } from "../words/movedWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { send } from "./events.ts";
import { KeptFocus } from "./keptFocus.ts";
import { PageElement } from "./pageElement.ts";

/**
 * The line that stays at the top: the answer in one line once the sentence has scrolled away, how far a
 * computation is, undo and redo.
 */
export class LeewayBar extends PageElement {
  static override properties = {
    state: { attribute: false },
    trying: { attribute: false },
    compact: { type: Boolean },
  };
  state: NotebookState | undefined;
  /** The level being looked at. */
  trying: number | undefined;
  /** The sentence is out of sight: show the line. */
  compact = false;

  constructor() {
    super();
    new KeptFocus(this);
  }

  protected override render() {
    const { state } = this;
    if (state === undefined) return nothing;
    const forecast = state.answer?.forecast;
    const was = state.previous;
    const reading = forecast === undefined ? undefined : readingOf(forecast, this.trying);
    return html`<div class="bar" role="region" aria-label="Answer in one line, undo and redo">
      <p class="bar-answer ${this.compact ? "" : "away"}" aria-hidden=${this.compact ? nothing : "true"}>
        ${
          forecast === undefined
            ? nothing
            : reading !== undefined
              ? readLine(spokenOf(forecast, reading))
              : html`${dateAndSum(forecast)}
              <span class="quiet">at ${committedLevel(forecast)}</span>
              ${
                staleWords(state) === undefined
                  ? was === undefined || !moved(forecast, was)
                    ? nothing
                    : html`<span class="quiet was">was ${unbroken(formatDate(was.committed.date))}${spends(was) ? html`<span class="was-sum">, ${committedSum(was)}</span>` : nothing}</span>`
                  : html`<span class="stale-mark">not up to date</span>`
              }`
        }
      </p>
      ${this.#why(state)}
      ${this.#progress(state)}
      <div class="bar-actions">
        ${this.#turnBack("Undo", "plan-undo", state.canUndo || state.pending.size > 0)}
        ${this.#turnBack("Redo", "plan-redo", state.canRedo)}
      </div>
    </div>`;
  }

  /** With nothing more to undo it keeps the focus and does nothing: who presses it often loses neither place nor work. */
  #turnBack(name: string, event: "plan-undo" | "plan-redo", can: boolean) {
    return html`<button type="button" aria-disabled=${can ? nothing : "true"}
      @click=${() => can && send(this, event, undefined)}>${name}</button>`;
  }

  /** Beside an answer that moved: the way to what moved it. */
  #why(state: NotebookState) {
    const [now, was] = [state.answer?.forecast, state.previous];
    if (!this.compact || state.progress !== undefined) return nothing;
    if (now === undefined || was === undefined) return nothing;
    if (staleWords(state) !== undefined || !moved(now, was)) return nothing;
    return html`<a class="bar-why" href="#changes" @click=${() => send(this, "changes-last", undefined)}>Why<span class="unseen"> the answer moved</span></a>`;
  }

  #progress(state: NotebookState) {
    const { progress } = state;
    if (progress !== undefined) {
      return html`<div class="bar-progress">
        <progress aria-label="Computing the answer" max="1" .value=${share(progress)}></progress>
        <button type="button" @click=${() => send(this, "run-stop", undefined)}>Stop</button>
      </div>`;
    }
    if (!state.stopped && state.failure === undefined) return nothing;
    return html`<div class="bar-progress">
      <button type="button" @click=${() => send(this, "run-resume", undefined)}>Compute</button>
    </div>`;
  }
}

/** The level being looked at, in the same line. */
function readLine(spoken: Spoken) {
  return html`${dateAndSum(spoken)}
    <span class="quiet">at ${committedLevel(spoken)}, read off the curve</span>`;
}

function dateAndSum(spoken: Spoken) {
  return html`<strong class="date">${formatDate(spoken.committed.date)}</strong>
    ${spends(spoken) ? html`and <strong class="sum">${committedSum(spoken)}</strong>` : nothing}`;
}

function share(progress: Progress): number {
  return progress.total === 0 ? 0 : progress.done / progress.total;
}

customElements.define("leeway-bar", LeewayBar);
