import { formatMoney, formatPercent, limitStep, roundToStep } from "@leeway/charts";
import type { Budget } from "@leeway/core";
import { html, nothing } from "lit";
import { unbroken } from "../words/unbroken.ts";
import { AskingElement } from "./askingElement.ts";
import { moneyTables } from "./moneyTables.ts";
import { pieceWords } from "./pieceWords.ts";

/** When the money is needed and whether it is there by then; what is left of the contingency. */
export class LeewayMoney extends AskingElement<"budget"> {
  protected readonly kind = "budget";
  protected readonly doing = "Adding up the money";

  protected question() {
    return { kind: "budget" as const };
  }

  protected override render() {
    const answer = this.asked?.answer;
    const money = answer !== undefined && (answer.components.length > 0 || answer.asked !== undefined);
    // Where no contingency of money is told of, nobody is told to hold it.
    const saysHolder = answer?.contingency.holder === undefined || (money && answer.contingency.money > 0);
    return html`<div class="asking-line beside-heading">${this.status()}</div>${
      answer === undefined
        ? nothing
        : html`<div class="${this.older ? "settling" : ""} ${saysHolder ? "says-held" : ""}">
            ${money ? html`<p class="finding">${unbroken(costsWords(answer))}</p>` : moneyTables(answer)}
            ${heldWords(answer).map((sentence) => html`<p class="note">${unbroken(sentence)}</p>`)}
            <p class="note no-paper">Overheads, when money is released, what is set aside and what being late costs are <a href="#budget">stated below</a>.</p>
            ${
              money
                ? html`<div class="figures">
              <leeway-figure chart="fundsMonths" .answer=${answer} theme=${this.theme}></leeway-figure>
            </div>
            ${moneyTables(answer)}`
                : nothing
            }
            ${this.#left(answer, money)}
            ${
              money
                ? html`<p class="note">
              The figures support a decision about money; your own rules for approval and the advice of those answerable
              for accounts come first.
            </p>`
                : nothing
            }
          </div>`
    }`;
  }

  #left({ left }: Budget, money: boolean) {
    if (left === undefined) return nothing;
    const { theme } = this;
    return html`<div class="figures ${money ? "two" : ""}">
        <leeway-figure chart="contingencyLeftDays" .answer=${left} theme=${theme}></leeway-figure>
        ${money ? html`<leeway-figure chart="contingencyLeftMoney" .answer=${left} theme=${theme}></leeway-figure>` : nothing}
      </div>
      ${left.missing.map((sentence) => html`<p class="note">${pieceWords(sentence)}</p>`)}`;
  }
}

/** Every sum on the place that the limits of the committed one support. */
function sums({ total, plan }: Budget): (value: number) => string {
  const step = limitStep(total.committed, total.low, total.high);
  return (value) => formatMoney(roundToStep(value, step), plan.currency);
}

function costsWords(budget: Budget): string {
  const { total, contingency, confidence } = budget;
  const say = sums(budget);
  const { holder } = contingency;
  const held = holder === undefined ? "; the plan names no holder" : `, held by ${holder.name}`;
  const made =
    contingency.money > 0
      ? `${say(total.asWritten)} as written and ${say(contingency.money)} of contingency${held}`
      : `no more than the ${say(total.asWritten)} as written`;
  return `At ${formatPercent(confidence)} the plan costs ${say(total.committed)} at most: ${made}.`;
}

function heldWords(budget: Budget): string[] {
  const { asked, reserve, contingency } = budget;
  const say = sums(budget);
  return [
    ...(asked === undefined
      ? []
      : [`The ${say(asked.budget)} available hold in ${formatPercent(asked.chance)} of futures.`]),
    ...(contingency.releaseRule === undefined
      ? []
      : [`How contingency is released: ${contingency.releaseRule}`]),
    ...(reserve === undefined
      ? []
      : [
          `The sponsor's reserve of ${say(reserve)} is for what nobody foresaw: it is no contingency and in none of these figures.`,
        ]),
  ];
}

customElements.define("leeway-money", LeewayMoney);
