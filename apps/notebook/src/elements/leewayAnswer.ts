import { columnDays, formatDate, formatMoney, formatPercent, groupDigits } from "@leeway/charts";
import type { Driver, Forecast, LevelReading } from "@leeway/core";
import { html, nothing } from "lit";
import type { Keeper } from "../keeping/keeper.ts";
import { nameFrom } from "../keeping/planFile.ts";
import { isFading, type NotebookState, staleWords } from "../store/state.ts";
import {
  committedLevel,
  committedSum,
  contingencyWords,
  driversAdding,
  largestDrivers,
  type Spoken,
  spends,
  withSum,
} from "../words/answerWords.ts";
import { KnownCalendars } from "../words/knownCalendars.ts";
import { readContingencyWords, readingOf, spokenOf } from "../words/levelWords.ts";
import { moved, movedWords, nothingMoved } from "../words/movedWords.ts";
import type { SourceKey } from "../words/sourceWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { send } from "./events.ts";
import { KeptHeight } from "./keptHeight.ts";
import { LeewaySource } from "./leewaySource.ts";
import { PageElement } from "./pageElement.ts";

/** The answer: a sentence with its date and sum, why, the chances asked for, and what it was before. */
export class LeewayAnswer extends PageElement {
  static override properties = {
    state: { attribute: false },
    trying: { attribute: false },
    keeper: { attribute: false },
  };
  state: NotebookState | undefined;
  /** The level being looked at. */
  trying: number | undefined;
  /** Knows the name of the plan's file. */
  keeper: Keeper | undefined;

  /** The calendars of the plans that were answered. */
  #calendars = new KnownCalendars();

  protected override willUpdate(): void {
    const { plan } = this.state ?? {};
    if (plan !== undefined) this.#calendars.note(plan);
  }

  #heights = new KeptHeight();

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#heights.end();
  }

  protected override updated(): void {
    // Of another plan: what was said of the one before needs no room.
    if (this.state?.previous === undefined) this.#heights.forget();
    this.#heights.watch(this.querySelectorAll<HTMLElement>(".sentence, .aside-line"));
  }

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
    const reading = readingOf(forecast, this.trying);
    const spoken = reading === undefined ? forecast : spokenOf(forecast, reading);
    const stale = staleWords(state);
    const early = state.answer?.stage === "first" && !settling && stale === undefined;
    return html`<div class="answer ${settling ? "settling" : ""} ${stale === undefined ? "" : "stale"}">
      <p class="sentence">${this.#sentence(spoken, reading !== undefined)}</p>
      <p class="aside-line">${
        reading !== undefined
          ? "Read off the curve; nothing has been run."
          : stale !== undefined
            ? html`<span class="stale-mark">${stale}</span>`
            : this.#was(forecast, state.previous, early)
      }</p>
      <div class="because">
        <div>
          <p class="reason">
            ${this.#contingency(forecast, reading)} of contingency over the plan as written. What adds most, in
            working days on average:
          </p>
          <ol class="adds-most">
            ${largestDrivers(forecast).map(
              (driver) =>
                html`<li><span>${toWhereItIsStated(driver)}</span> <span>${columnDays(driver.days)}<span class="unseen"> working days</span></span></li>`,
            )}
          </ol>
          ${theRest(forecast)}
        </div>
        ${this.#chances(forecast, reading)}
      </div>
      <leeway-source .forecast=${forecast} ?fewer=${state.answer?.stage === "first"}></leeway-source>
    </div>`;
  }

  /** A figure that tells where it comes from; one that was only read off a curve is text of the same size. */
  #figure(key: SourceKey, words: string, read: boolean) {
    if (read) return html`<span class="source">${words}</span>`;
    return html`<button type="button" class="source" aria-haspopup="dialog" aria-expanded="false"
      @click=${(event: Event) => {
        if (event.currentTarget instanceof HTMLElement) this.#show(key, event.currentTarget);
      }}>${words}</button>`;
  }

  #show(key: SourceKey, from: HTMLElement): void {
    const panel = this.querySelector("leeway-source");
    if (!(panel instanceof LeewaySource)) return;
    const { name = "" } = this.keeper?.state ?? {};
    panel.file = name === "" ? nameFrom(this.state?.plan?.title) : name;
    void panel.show(key, from);
  }

  #contingency(forecast: Forecast, reading: LevelReading | undefined) {
    if (reading !== undefined) return readContingencyWords(forecast, reading);
    const { days, money } = contingencyWords(forecast);
    const own = this.#figure("days", days, false);
    return spends(forecast) ? html`${own} and ${this.#figure("money", money, false)}` : own;
  }

  #sentence(spoken: Spoken, read: boolean) {
    const level = committedLevel(spoken);
    return html`${level} of futures finish by
      <strong class="date">${this.#figure("date", formatDate(spoken.committed.date, "long"), read)}</strong>${
        spends(spoken)
          ? html`, and ${level} cost no more
      than <strong class="sum">${this.#figure("sum", committedSum(spoken), read)}</strong>`
          : nothing
      }.`;
  }

  #was(forecast: Forecast, previous: Forecast | undefined, early: boolean) {
    if (early) {
      const before = previous === undefined ? nothing : html` Was ${was(previous)}.`;
      return html`A first answer from ${groupDigits(forecast.iterations)} futures; the full one follows.${before}`;
    }
    if (previous === undefined) return nothing;
    const level =
      previous.committed.confidence === forecast.committed.confidence
        ? ""
        : ` at ${committedLevel(previous)}`;
    const words = movedWords(forecast, previous, this.#calendars.same(forecast, previous));
    if (level === "" && !moved(forecast, previous)) return nothingMoved(words);
    return html`Was ${was(previous)}${level},
      now <u>${formatDate(forecast.committed.date)}</u>${spends(forecast) ? html` and <u>${committedSum(forecast)}</u>` : nothing}:
      ${words}.
      ${moved(forecast, previous) ? html`<a href="#changes" @click=${() => send(this, "changes-last", undefined)}>Why it moved</a>` : nothing}`;
  }

  #chances(forecast: Forecast, reading: LevelReading | undefined) {
    const { asked, chance, asWritten, plan, committed } = forecast;
    const rows: { term: string; what: string; says: unknown }[] = [];
    const read = reading !== undefined;
    const money = spends(forecast);
    if (asked.finishBy !== undefined && chance.finishBy !== undefined) {
      rows.push({
        term: "Date asked for",
        what: formatDate(asked.finishBy),
        says: html`${this.#figure("finishBy", formatPercent(chance.finishBy), read)} chance`,
      });
    }
    if (asked.budget !== undefined && chance.budget !== undefined) {
      rows.push({
        term: "Money available",
        what: formatMoney(asked.budget, plan.currency),
        says: html`${this.#figure("budget", formatPercent(chance.budget), read)} chance`,
      });
    }
    if (chance.both !== undefined) {
      rows.push({
        term: "Both together",
        what: "date and money",
        says: html`${this.#figure("both", formatPercent(chance.both), read)} chance`,
      });
    }
    rows.push({
      term: "Plan as written",
      what: withSum(forecast, formatDate(asWritten.finish), {
        sum: formatMoney(asWritten.cost, plan.currency),
        between: ", ",
      }),
      says: html`${this.#figure("writtenDate", formatPercent(forecast.finish.asWrittenChance), read)} finish by then${
        money
          ? html`,
          ${this.#figure("writtenSum", formatPercent(forecast.cost.asWrittenChance), read)} cost no more`
          : nothing
      }`,
    });
    if (money)
      rows.push(
        reading === undefined
          ? {
              term: `Each kept in ${committedLevel(forecast)}`,
              what: `${formatDate(committed.date)}, ${committedSum(forecast)}`,
              says: html`${this.#figure("kept", formatPercent(committed.both), read)} keep both at once`,
            }
          : {
              term: `Each kept in ${committedLevel(spokenOf(forecast, reading))}`,
              what: `${formatDate(reading.date)}, ${committedSum(spokenOf(forecast, reading))}`,
              says: "follows with the full answer",
            },
      );
    return html`<table class="chances">
      <caption class="unseen">Chances of what was asked for, and of the plan as written</caption>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row">${row.term}</th>
            <td>${unbroken(row.what)}</td>
            <td>${row.says}</td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }
}

function was(previous: Forecast) {
  const sum = spends(previous) ? html` and <s>${committedSum(previous)}</s>` : nothing;
  return html`<s>${formatDate(previous.committed.date)}</s>${sum}`;
}

/** What the list leaves out, and where the contingency is split: averages are no shares of it. */
function theRest(forecast: Forecast) {
  const listed = largestDrivers(forecast).length;
  const all = driversAdding(forecast).length;
  if (all === 0) return nothing;
  return html`<p class="adds-rest">
    ${all > listed ? `The ${listed} largest of ${all}.` : ""} They are averages, no shares of the contingency:
    what has the largest share of it stands first in <a href="#contingency">Contingency</a>.
  </p>`;
}

/** What drives the answer leads to where it can be changed. */
function toWhereItIsStated({ kind, id, name }: Driver) {
  if (kind === "task") return html`<a href="#task-${id}">${name}</a>`;
  return kind === "risk" || kind === "assumption" ? html`<a href="#entry-${id}">${name}</a>` : name;
}

customElements.define("leeway-answer", LeewayAnswer);
