import { columnDays, formatDate, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import type { Forecast } from "@leeway/core";
import { html, nothing } from "lit";
import { isFading, type NotebookState, staleWords } from "../store/state.ts";
import { committedLevel, committedSum, largestDrivers, reasonWords } from "../words/answerWords.ts";
import { movedWords } from "../words/movedWords.ts";
import { PageElement } from "./pageElement.ts";

/** The answer: a sentence with its date and sum, why, the chances asked for, and what it was before. */
export class LeewayAnswer extends PageElement {
  static override properties = { state: { attribute: false } };
  state: NotebookState | undefined;

  protected override render() {
    const { state } = this;
    if (state === undefined) return nothing;
    const forecast = state.answer?.forecast;
    if (forecast === undefined) {
      const words = state.problems.some((problem) => problem.severity === "error")
        ? "The plan text has problems to put right; there is no answer yet."
        : "Computing the first answer.";
      return html`<p class="sentence waiting-answer">${words}</p>`;
    }
    const settling = isFading(state);
    const stale = staleWords(state);
    const early = state.answer?.stage === "first" && !settling && stale === undefined;
    return html`<div class="answer ${settling ? "settling" : ""} ${stale === undefined ? "" : "stale"}">
      <p class="sentence">${this.#sentence(forecast)}</p>
      <p class="aside-line">${
        stale !== undefined
          ? html`<span class="stale-mark">${stale}</span>`
          : this.#was(forecast, state.previous, early)
      }</p>
      <div class="because">
        <div>
          <p class="reason">${reasonWords(forecast)}</p>
          <ol class="adds-most">
            ${largestDrivers(forecast).map(
              (driver) =>
                html`<li><span>${driver.name}</span> <span>${columnDays(driver.days)} days</span></li>`,
            )}
          </ol>
        </div>
        ${this.#chances(forecast)}
      </div>
    </div>`;
  }

  #sentence(forecast: Forecast) {
    const level = committedLevel(forecast);
    return html`${level} of futures finish by
      <strong class="date">${formatDate(forecast.committed.date, "long")}</strong>, and ${level} cost no more
      than <strong class="sum">${committedSum(forecast)}</strong>.`;
  }

  #was(forecast: Forecast, previous: Forecast | undefined, early: boolean) {
    if (early) {
      const was =
        previous === undefined
          ? nothing
          : html` Was <s>${formatDate(previous.committed.date)}</s> and <s>${committedSum(previous)}</s>.`;
      return html`A first answer from ${groupDigits(forecast.iterations)} futures; the full one follows.${was}`;
    }
    if (previous === undefined) return nothing;
    const level =
      previous.committed.confidence === forecast.committed.confidence
        ? ""
        : ` at ${committedLevel(previous)}`;
    return html`Was <s>${formatDate(previous.committed.date)}</s> and <s>${committedSum(previous)}</s>${level},
      now <u>${formatDate(forecast.committed.date)}</u> and <u>${committedSum(forecast)}</u>:
      ${movedWords(forecast, previous)}.`;
  }

  #chances(forecast: Forecast) {
    const { asked, chance, asWritten, plan, committed } = forecast;
    const rows: { term: string; what: string; says: string }[] = [];
    if (asked.finishBy !== undefined && chance.finishBy !== undefined) {
      rows.push({
        term: "Date asked for",
        what: formatDate(asked.finishBy),
        says: `${formatPercent(chance.finishBy)} chance`,
      });
    }
    if (asked.budget !== undefined && chance.budget !== undefined) {
      rows.push({
        term: "Money available",
        what: formatMoney(asked.budget, plan.currency),
        says: `${formatPercent(chance.budget)} chance`,
      });
    }
    if (chance.both !== undefined) {
      rows.push({
        term: "Both together",
        what: "date and money",
        says: `${formatPercent(chance.both)} chance`,
      });
    }
    rows.push(
      {
        term: "Plan as written",
        what: `${formatDate(asWritten.finish)}, ${formatMoney(asWritten.cost, plan.currency)}`,
        says: `${formatPercent(forecast.finish.asWrittenChance)} finish by then, ${formatPercent(forecast.cost.asWrittenChance)} cost no more`,
      },
      {
        term: `At ${committedLevel(forecast)}, both`,
        what: `${formatDate(committed.date)}, ${committedSum(forecast)}`,
        says: `${formatPercent(committed.both)} keep date and sum together`,
      },
    );
    return html`<table class="chances">
      <caption class="unseen">Chances of what was asked for, and of the plan as written</caption>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row">${row.term}</th>
            <td>${row.what}</td>
            <td>${row.says}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }
}

customElements.define("leeway-answer", LeewayAnswer);
