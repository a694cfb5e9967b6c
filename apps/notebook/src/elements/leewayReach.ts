import { formatDate, groupDigits, otherSentences, reachSentence, samplingSentence } from "@leeway/charts";
import type { Forecast, Plan, Reach, ReachWay } from "@leeway/core";
import { html, nothing } from "lit";
import { namesMoney } from "../plan/namesMoney.ts";
import { readDate } from "../plan/readDate.ts";
import { readNumber } from "../plan/readNumber.ts";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { reachRows } from "./reachRows.ts";

interface Wish {
  text: string;
  words?: string;
}

/**
 * What it would take to make a date or, where there is money, a sum: the reader names them, the plan as it stands asks
 * first.
 */
export class LeewayReach extends AskingElement<"reach"> {
  static override properties = {
    ...AskingElement.properties,
    plan: { attribute: false },
    forecast: { attribute: false },
    by: { state: true },
    sum: { state: true },
  };
  plan: Plan | undefined;
  forecast: Forecast | undefined;
  by: Wish | undefined;
  sum: Wish | undefined;

  protected readonly kind = "reach";
  protected readonly doing = "Trying combinations";

  /** What is asked for by now: the reader's wish where it can be read, else the plan's. */
  #wishes(): { finishBy?: string; sum?: number } {
    const { finishBy, budget } = this.plan?.commitment ?? {};
    const by = this.by === undefined ? { value: finishBy } : readWish(this.by.text, readDate);
    const sum =
      this.sum === undefined
        ? { value: budget }
        : readWish(this.sum.text, (text) => readNumber(text, "a sum", "640000"));
    return {
      ...("value" in by && typeof by.value === "string" ? { finishBy: by.value } : {}),
      ...("value" in sum && typeof sum.value === "number" ? { sum: sum.value } : {}),
    };
  }

  protected question() {
    const wishes = this.#wishes();
    if (wishes.finishBy === undefined && wishes.sum === undefined) return undefined;
    return { kind: "reach" as const, ...wishes };
  }

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const answer = this.asked?.answer;
    const wishes = this.#wishes();
    const shown = {
      by: wishes.finishBy === undefined ? "" : formatDate(wishes.finishBy),
      sum: wishes.sum === undefined ? "" : groupDigits(wishes.sum, Number.isInteger(wishes.sum) ? 0 : 2),
    };
    const none = this.question() === undefined;
    const money = wishes.sum !== undefined || this.sum !== undefined || namesMoney(plan, this.forecast);
    return html`<div class="asking-line beside-heading">${none ? nothing : this.status()}</div>
      <div class="states wishes">
        ${this.#field("Finish by", "a date", "date", shown.by, this.by, "by", readDate)}
        ${
          money
            ? this.#field("Within", plan.currency, "number", shown.sum, this.sum, "sum", (text) =>
                readNumber(text, `a sum in ${plan.currency}`, "640000"),
              )
            : nothing
        }
      </div>
      ${none ? html`<p class="quiet">Name a date${money ? " or a sum" : ""} to see what it would take.</p>` : nothing}
      ${answer === undefined || none ? nothing : this.#answer(answer)}`;
  }

  #answer(answer: Reach) {
    const way: ReachWay | undefined = answer.ways[0] ?? answer.best;
    return html`<div class=${this.older || this.asked?.progress !== undefined ? "settling" : ""}>
      <p class="finding">${unbroken(reachSentence(answer))}</p>
      ${otherSentences(answer).map((sentence) => html`<p>${unbroken(sentence)}</p>`)}
      ${way === undefined || way.steps.length === 0 ? nothing : reachRows(answer, way)}
      <p class="note">${unbroken(`${answer.how.text} ${samplingSentence(answer)} ${answer.notes.join(" ")}`)}</p>
    </div>`;
  }

  #field(
    label: string,
    unit: string,
    kind: "date" | "number",
    committed: string,
    wish: Wish | undefined,
    key: "by" | "sum",
    read: (text: string) => { value: unknown } | { words: string },
  ) {
    const message = `message-reach-${key}`;
    const words = wish?.words;
    return html`<div class="line">
      <span class="line-label" aria-hidden="true">${label}</span>
      ${field({
        label: `What it would take: ${label.toLowerCase()}, ${unit}`,
        committed,
        shown: words === undefined ? undefined : wish?.text,
        message: words === undefined ? undefined : message,
        kind,
        commit: (text) => {
          const entry = readWish(text, read);
          this[key] = "words" in entry ? { text, words: entry.words } : { text };
        },
        drop: () => {
          if (this[key]?.words !== undefined) this[key] = undefined;
        },
      })}
      <span class="line-unit" aria-hidden="true">${kind === "date" ? "" : unit}</span>
      ${fieldMessage(message, words === undefined ? undefined : { cells: {}, words })}
    </div>`;
  }
}

function readWish(
  text: string,
  read: (text: string) => { value: unknown } | { words: string },
): { value: unknown } | { words: string } {
  return text.trim() === "" ? { value: undefined } : read(text);
}

customElements.define("leeway-reach", LeewayReach);
