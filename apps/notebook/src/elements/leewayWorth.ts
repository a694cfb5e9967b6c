import {
  countSentences,
  formatDays,
  formatMoney,
  rankedResponses,
  responsesSpend,
  worthRounding,
  worthSentence,
} from "@leeway/charts";
import type { Plan, Responses, ResponseWorth } from "@leeway/core";
import { html, nothing } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";
import { send } from "./events.ts";
import { pieceWords } from "./pieceWords.ts";

/** What each response to a risk is worth, with a tick that adopts it; below, what each costs and buys. */
export class LeewayWorth extends AskingElement<"responses"> {
  static override properties = {
    ...AskingElement.properties,
    plan: { attribute: false },
    readonly: { type: Boolean },
  };
  plan: Plan | undefined;
  readonly = false;
  /** Keys of the responses as they stand below each other. */
  #order: readonly string[] = [];
  protected readonly kind = "responses";
  protected readonly doing = "Running the plan with and without each response";

  protected question() {
    return { kind: "responses" as const };
  }

  protected override render() {
    const answer = this.asked?.answer;
    // What changes with a tick stands below the ticks, how far it is last: nothing moves under the reader's hand.
    return html`${
      answer === undefined
        ? nothing
        : html`${this.#choices(answer)}
          <div class=${this.older ? "settling" : ""}>
            ${
              answer.responses.length === 0
                ? html`<p class="finding">${unbroken(worthSentence(answer))}</p>
                  <p class="note way-on">${this.#wayOn()}</p>`
                : html`<div class="figures">
                    <leeway-figure chart="responseWorth" .answer=${answer} theme=${this.theme}></leeway-figure>
                  </div>`
            }
          </div>
          <div class=${this.older ? "settling" : ""}>
            ${countSentences(answer).map((sentence) => html`<p class="note">${pieceWords(sentence)}</p>`)}
          </div>`
    }<div class="asking-line">${this.status()}</div>`;
  }

  /** Where a response is written: below what it answers. */
  #wayOn() {
    const { risks = [], assumptions = [] } = this.plan ?? {};
    if (risks.length + assumptions.length > 0)
      return html`<a href="#register">Add one below a risk or an assumption in the register</a>.`;
    return html`<a href="#register">Add a risk in the register</a>, then below it what can be done about it.`;
  }

  #choices(answer: Responses) {
    const { plan } = this;
    if (plan === undefined || answer.responses.length === 0) return nothing;
    const round = worthRounding(answer);
    const { currency } = answer.plan;
    const worth = responsesSpend(answer)
      ? ({ given }: ResponseWorth) => worthWords(round(given.netWorth), currency)
      : ({ given }: ResponseWorth) => daysWords(-given.workingDays);
    return html`<fieldset class="adopt">
        <legend><span class="no-paper">Tick what you adopt</span><span class="on-paper">Adopted where ticked</span></legend>
        ${repeat(this.#ranked(answer), keyOf, (response) => this.#choice(plan, response, worth(response)))}
      </fieldset>
      ${
        responsesSpend(answer)
          ? html`<p class="note">Net is an average over all futures: money saved, days late priced in, less what the
              response costs. <span class="no-paper">A tick moves the committed date and sum by figures of their own; the answer says
              them.</span></p>`
          : nothing
      }`;
  }

  /** Most worth first. While the reader is among them none moves: what they ticked stays under their hand. */
  #ranked(answer: Responses): readonly ResponseWorth[] {
    const responses = rankedResponses(answer);
    const places = new Map(this.#order.map((key, at) => [key, at]));
    const stay = this.querySelector(".adopt")?.contains(document.activeElement) === true;
    const place = (one: ResponseWorth): number => places.get(keyOf(one)) ?? places.size;
    const ranked = stay ? [...responses].sort((a, b) => place(a) - place(b)) : responses;
    this.#order = ranked.map(keyOf);
    return ranked;
  }

  #choice(plan: Plan, { id, action, entry }: ResponseWorth, worth: string) {
    const found = stands(plan, entry.id, id);
    // Taken out of the plan since the answer was worked out.
    if (found === undefined) return nothing;
    return html`<label class="response">
      <input type="checkbox" .checked=${found.adopted} ?disabled=${this.readonly}
        @change=${(event: Event) => {
          if (!(event.target instanceof HTMLInputElement)) return;
          const value = event.target.checked;
          const { field } = found;
          send(this, "plan-edit", {
            field,
            cells: { value: String(value) },
            edits: [{ path: field, value }],
          });
        }} />
      <span>${action} <span class="quiet">against “${entry.name}”, ${unbroken(worth)}</span></span>
    </label>`;
  }
}

function worthWords(net: number, currency: string): string {
  const sum = formatMoney(Math.abs(net), currency);
  return net < 0 ? `costs ${sum} more than it saves` : `worth ${sum} net`;
}

/** Of a plan without money. */
function daysWords(bought: number): string {
  const days = formatDays(Math.abs(bought));
  if (days.startsWith("0 ")) return "buys no day";
  return bought < 0 ? `${days} later` : `buys ${days}`;
}

function keyOf({ entry, id }: ResponseWorth): string {
  return `${entry.id} ${id}`;
}

/** Where a response stands in the plan, and whether it is adopted there. */
function stands(plan: Plan, entry: string, id: string): { field: string; adopted: boolean } | undefined {
  for (const list of ["risks", "assumptions"] as const) {
    const at = plan[list].findIndex((one) => one.id === entry);
    const responses = plan[list][at]?.responses ?? [];
    const i = responses.findIndex((one) => one.id === id);
    const response = responses[i];
    if (response !== undefined)
      return { field: `${list}[${at}].responses[${i}].adopted`, adopted: response.adopted };
  }
  return undefined;
}

customElements.define("leeway-worth", LeewayWorth);
