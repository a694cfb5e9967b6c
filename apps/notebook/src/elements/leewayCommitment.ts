import {
  formatDate,
  formatDays,
  formatMoney,
  formatPercent,
  groupDigits,
  roundToLimits,
} from "@leeway/charts";
import type { Forecast, LevelReading, Plan } from "@leeway/core";
import { html, nothing } from "lit";
import { figureText } from "../plan/figureText.ts";
import { findTasks } from "../plan/findTasks.ts";
import { readDate } from "../plan/readDate.ts";
import { readNumber } from "../plan/readNumber.ts";
import type { Pending } from "../store/state.ts";
import { roundMoney, spends, withSum } from "../words/answerWords.ts";
import { readContingencyWords, readingOf } from "../words/levelWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { send } from "./events.ts";
import { field, type Suggests } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { LongElement } from "./longElement.ts";

type Reading = { value: unknown } | { words: string };

interface Asked {
  key: "finishOf" | "confidence" | "finishBy" | "budget";
  label: string;
  unit: string;
  committed: string;
  kind: "text" | "number" | "date";
  suggest?: Suggests;
  read: (text: string) => Reading;
}

/** The level committed to, the date asked for, the money available; and what each level would mean. */
export class LeewayCommitment extends LongElement {
  static override properties = {
    plan: { attribute: false },
    forecast: { attribute: false },
    trying: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    fading: { type: Boolean },
  };
  plan: Plan | undefined;
  forecast: Forecast | undefined;
  /** The level being looked at. */
  trying: number | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  fading = false;

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    return html`<div class="cell">
      <div class="states">${asked(plan).map((one) => this.#field(one))}</div>
      <div class="follows ${this.fading ? "settling" : ""}">
        ${this.forecast === undefined ? html`<p class="quiet">Not computed yet.</p>` : levels(this.forecast, this.trying)}
      </div>
    </div>`;
  }

  #field(one: Asked) {
    const path = `commitment.${one.key}`;
    const message = `message-${one.key}`;
    const waiting = this.pending.get(path);
    return html`<div class="line">
      <span class="line-label" aria-hidden="true">${one.label}</span>
      ${field({
        label: `${one.label}, ${one.unit}`,
        committed: one.committed,
        shown: waiting?.cells.value,
        message: waiting === undefined ? undefined : message,
        kind: one.kind,
        ...(one.suggest === undefined ? {} : { suggest: one.suggest }),
        readonly: this.readonly,
        commit: (text) => this.#commit(path, text, one.read),
        drop: () => send(this, "plan-drop", { field: path }),
      })}
      ${one.kind === "text" ? nothing : html`<span class="line-unit" aria-hidden="true">${one.kind === "date" ? "" : one.unit}</span>`}
      ${fieldMessage(message, waiting)}
    </div>`;
  }

  #commit(path: string, text: string, read: Asked["read"]): void {
    const cells = { value: text };
    const result = read(text);
    if ("words" in result) {
      send(this, "plan-refuse", { field: path, pending: { cells, words: result.words } });
      return;
    }
    send(this, "plan-edit", { field: path, cells, edits: [{ path, value: result.value }] });
  }
}

function asked(plan: Plan): Asked[] {
  const { confidence, finishBy, budget, finishOf } = plan.commitment;
  return [
    {
      key: "confidence",
      label: "Level committed to",
      unit: "% of futures",
      committed: String(Number((confidence * 100).toPrecision(6))),
      kind: "number",
      read: (text) => {
        const entry = readNumber(text.replace(/\s*%$/, ""), "a percentage between 1 and 99", "80");
        if ("words" in entry) return entry;
        if (entry.value < 1 || entry.value > 99) {
          return { words: "A level lies between 1 and 99 per cent. No date is certain. Write 80, or 65." };
        }
        return { value: Number((entry.value / 100).toPrecision(12)) };
      },
    },
    {
      key: "finishBy",
      label: "Date asked for",
      unit: "a date",
      committed: finishBy === undefined ? "" : formatDate(finishBy),
      kind: "date",
      read: (text) => (text.trim() === "" ? { value: undefined } : readDate(text)),
    },
    {
      key: "budget",
      label: "Money available",
      unit: plan.currency,
      committed: budget === undefined ? "" : figureText(budget),
      kind: "number",
      read: (text) =>
        text.trim() === "" ? { value: undefined } : readNumber(text, `a sum in ${plan.currency}`, "640000"),
    },
    {
      key: "finishOf",
      label: "Whose finish; empty: the whole plan's",
      unit: "a task by its name",
      committed:
        finishOf === undefined ? "" : (plan.tasks.find(({ id }) => id === finishOf)?.name ?? finishOf),
      kind: "text",
      suggest: { of: "tasks" },
      read: (text) => {
        const found = findTasks(text, plan.tasks);
        if ("words" in found) return found;
        return found.ids.length > 1
          ? { words: "One finish is committed to. Name one task, or none for the whole plan." }
          : { value: found.ids[0] };
      },
    },
  ];
}

/** The levels shown beside the one committed to. */
const neighbours = [0.5, 0.65, 0.8, 0.9, 0.95];

interface LevelRow {
  p: number;
  date: string;
  lowDate: string;
  highDate: string;
  cost?: { value: number; low: number; high: number };
  /** Read off the curve. */
  read?: boolean;
}

/** The levels that the forecast gives in full, and the one being looked at in its place among them. */
function levelRows(forecast: Forecast, reading: LevelReading | undefined): LevelRow[] {
  const level = forecast.committed.confidence;
  const rows = forecast.finish.percentiles
    .filter(({ p }) => p === level || neighbours.some((one) => Math.abs(one - p) < 1e-9))
    .map(({ p, date, lowDate, highDate }): LevelRow => {
      const cost = forecast.cost.percentiles.find((each) => Math.abs(each.p - p) < 1e-9);
      return { p, date, lowDate, highDate, ...(cost === undefined ? {} : { cost }) };
    });
  if (reading === undefined || rows.some(({ p }) => Math.abs(p - reading.confidence) < 1e-9)) return rows;
  const { confidence, date, lowDate, highDate, cost: value, costLow: low, costHigh: high } = reading;
  rows.push({ p: confidence, date, lowDate, highDate, cost: { value, low, high }, read: true });
  return rows.sort((a, b) => a.p - b.p);
}

function levels(forecast: Forecast, trying: number | undefined) {
  const { currency } = forecast.plan;
  const level = forecast.committed.confidence;
  const { contingency } = forecast;
  const reading = readingOf(forecast, trying);
  const money = spends(forecast);
  const over =
    reading === undefined
      ? withSum(
          forecast,
          `${formatDays(contingency.workingDays)} (${formatDays(contingency.calendarDays, "calendar day")})`,
          { sum: formatMoney(roundMoney(contingency.money, forecast), currency) },
        )
      : readContingencyWords(forecast, reading);
  return html`<table class="levels">
      <caption>What each level would mean, with the 95 % limits that ${groupDigits(forecast.iterations)} futures leave</caption>
      <thead>
        <tr>
          <th scope="col">Level</th>
          <th scope="col" class="number">Finish by</th>
          <th scope="col" class="number">limits</th>
          ${money ? html`<th scope="col" class="number">Cost, ${currency}</th><th scope="col" class="number">limits</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${levelRows(forecast, reading).map(
          ({
            p,
            date,
            lowDate,
            highDate,
            cost,
            read = false,
          }) => html`<tr class=${p === (trying ?? level) ? "committed" : ""}>
            <th scope="row" class="number">${formatPercent(p)}${p === level ? html`<span class="unseen">, committed</span>` : nothing}${read ? html`<span class="unseen">, read off the curve</span>` : nothing}</th>
            <td class="number">${unbroken(formatDate(date))}</td>
            <td class="number quiet">${
              lowDate === highDate
                ? "that day"
                : unbroken(`${formatDate(lowDate, "shortest")} – ${formatDate(highDate, "shortest")}`)
            }</td>
            ${
              money
                ? html`<td class="number">${cost === undefined ? "" : formatMoney(roundToLimits(cost.value, cost.low, cost.high), "")}</td>
            <td class="number quiet">${cost === undefined ? "" : `${limit(cost.low)} – ${limit(cost.high)}`}</td>`
                : nothing
            }
          </tr>`,
        )}
      </tbody>
    </table>
    <p class="note">
      Contingency at ${unbroken(formatPercent(reading?.confidence ?? level))}: ${unbroken(over)} over the plan as
      written${reading === undefined ? "" : ", read off the curve"}.
    </p>`;
}

function limit(value: number): string {
  return formatMoney(Math.round(value / 100) * 100, "");
}

customElements.define("leeway-commitment", LeewayCommitment);
