import { formatDays, formatMoney, roundSignificant } from "@leeway/charts";
import type { Assumption, Forecast, Plan, Risk } from "@leeway/core";
import { html, nothing } from "lit";
import { readNumber } from "../plan/readNumber.ts";
import { delayUnit } from "../plan/unitWords.ts";
import type { Pending } from "../store/state.ts";
import { estimateInputs, outcomesWords } from "./estimateCellsView.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { impactWords } from "./impactWords.ts";
import { LongElement } from "./longElement.ts";
import { tableKeys } from "./tableKeys.ts";

type Entry = Risk | Assumption;

/** Risks and assumptions: chance, delay, state and responses; and what each adds on average. */
export class LeewayRegister extends LongElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    forecast: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    fading: { type: Boolean },
  };
  plan: Plan | undefined;
  stated: unknown;
  forecast: Forecast | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  fading = false;

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const { stated } = this;
    const most = Math.max(0.1, ...(this.forecast?.drivers ?? []).filter(fromRegister).map((one) => one.days));
    let row = 0;
    const group = (title: string, list: readonly Entry[], key: string) =>
      list.length === 0
        ? nothing
        : html`<tr role="row" class="phase">
            <th role="rowheader" scope="rowgroup" colspan="7">${title}</th>
          </tr>
          ${list.map((entry, at) => {
            const first = row;
            row += Math.max(1, entry.impacts.length);
            return this.#entry(plan, entry, `${key}[${at}]`, stated, first, most);
          })}`;
    return html`<table class="stated register" role="table" @keydown=${tableKeys}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col" class="name">Risk or assumption</th>
          <th role="columnheader" scope="col" class="number">Chance, %</th>
          <th role="columnheader" scope="col" class="number">Low</th>
          <th role="columnheader" scope="col" class="number">Likely</th>
          <th role="columnheader" scope="col" class="number">High</th>
          <th role="columnheader" scope="col" class="status">State</th>
          <th role="columnheader" scope="col" class="adds">
            <span>Adds, on average</span><span>working days</span><span>${plan.currency}</span>
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup" class=${this.fading ? "settling" : ""}>
        ${group("Risks: what may happen", plan.risks, "risks")}
        ${group("Assumptions: what the plan counts on", plan.assumptions, "assumptions")}
      </tbody>
    </table>`;
  }

  #entry(plan: Plan, entry: Entry, path: string, stated: unknown, row: number, most: number) {
    const chancePath = `${path}.${entry.kind === "risk" ? "probability" : "chanceWrong"}`;
    const delayAt = entry.impacts.findIndex((impact) => impact.delay !== undefined);
    const delay = entry.impacts[delayAt]?.delay;
    const delayPath = `${path}.impacts[${delayAt}].delay`;
    const unit = delay === undefined ? "working days" : delayUnit(delay);
    const inputs =
      delay === undefined
        ? []
        : estimateInputs({
            host: this,
            estimate: delay,
            path: delayPath,
            stated,
            of: `${entry.name}: delay`,
            unit,
            pending: this.pending.get(delayPath),
            message: `message-${entry.id}-delay`,
            row,
            column: 2,
            readonly: this.readonly,
          });
    const waits = this.pending.has(chancePath) || this.pending.has(delayPath);
    return html`<tr role="row" class=${waits ? "waits" : ""} id="entry-${entry.id}">
      <th role="rowheader" scope="row" class="name">
        <span class="entry-name">${entry.name}</span>
        <span class="by">${impactWords(entry, plan)}</span>
        ${entry.responses.map((response, at) => this.#response(plan, response, `${path}.responses[${at}]`))}
      </th>
      <td role="cell" class="number"><span class="cell-label">Chance, %</span>${field({
        label: `${entry.name}: chance, in per cent`,
        committed: percentText(entry.probability),
        shown: this.pending.get(chancePath)?.cells.value,
        message: this.pending.has(chancePath) ? `message-${entry.id}-chance` : undefined,
        kind: "number",
        row,
        column: 1,
        readonly: this.readonly,
        commit: (text) => this.#commitChance(chancePath, text),
        foresee: (text) => this.#foreseeChance(chancePath, text),
        drop: () => send(this, "plan-drop", { field: chancePath }),
      })}</td>
      ${
        inputs.length > 0
          ? inputs.map((input) => html`<td role="cell" class="number">${input}</td>`)
          : html`<td role="cell" class="words" colspan="3">
              ${delay === undefined ? html`<span class="quiet">no delay</span>` : outcomesWords(delay, unit)}
            </td>`
      }
      <td role="cell" class="status">
        <select
          aria-label="${entry.name}: state"
          ?disabled=${this.readonly}
          @change=${(event: Event) => {
            if (!(event.target instanceof HTMLSelectElement)) return;
            const value = event.target.value;
            const field = `${path}.status`;
            send(this, "plan-edit", {
              field,
              cells: { value },
              edits: [{ path: field, value }],
            });
          }}
        >
          ${(["open", "occurred", "closed"] as const).map(
            (status) =>
              html`<option value=${status} .selected=${entry.status === status}>${statusWords(entry, status)}</option>`,
          )}
        </select>
      </td>
      ${this.#adds(entry, most)}
      ${
        waits
          ? html`<td role="cell" class="messages">
              ${fieldMessage(`message-${entry.id}-chance`, this.pending.get(chancePath))}
              ${fieldMessage(`message-${entry.id}-delay`, this.pending.get(delayPath))}
            </td>`
          : nothing
      }
    </tr>`;
  }

  #response(plan: Plan, response: Entry["responses"][number], path: string) {
    const cost =
      response.cost?.kind === "fixed" ? `, costs ${formatMoney(response.cost.value, plan.currency)}` : "";
    const field = `${path}.adopted`;
    return html`<label class="response">
      <input
        type="checkbox"
        .checked=${response.adopted}
        ?disabled=${this.readonly}
        @change=${(event: Event) => {
          if (!(event.target instanceof HTMLInputElement)) return;
          const value = event.target.checked;
          send(this, "plan-edit", {
            field,
            cells: { value: String(value) },
            edits: [{ path: field, value }],
          });
        }}
      />
      <span>${response.action}${cost}</span>
    </label>`;
  }

  #adds(entry: Entry, most: number) {
    const driver = this.forecast?.drivers.find((one) => one.id === entry.id && fromRegister(one));
    if (this.forecast === undefined) return html`<td role="cell" class="adds quiet">not computed yet</td>`;
    const days = driver?.days ?? 0;
    const money = driver?.money ?? 0;
    const width = `${Math.min(100, Math.abs(days / most) * 100)}%`;
    return html`<td role="cell" class="adds">
      <svg class="adds-bar" aria-hidden="true"><rect class="register-mark" y="7" height="10" width=${width} /></svg>
      <span>${formatDays(days, "")}<span class="stacked-unit"> working days</span></span>
      <span><span class="stacked-unit">${this.forecast.plan.currency} </span>${formatMoney(roundSignificant(money, 3), "")}</span>
    </td>`;
  }

  #commitChance(path: string, text: string): void {
    const cells = { value: text };
    const entry = readChance(text);
    if ("words" in entry) send(this, "plan-refuse", { field: path, pending: { cells, words: entry.words } });
    else send(this, "plan-edit", { field: path, cells, edits: [{ path, value: entry.value }] });
  }

  #foreseeChance(path: string, text: string): void {
    const entry = readChance(text);
    if ("value" in entry) send(this, "plan-foresee", { edits: [{ path, value: entry.value }] });
  }
}

function readChance(text: string): { value: number } | { words: string } {
  const entry = readNumber(text.replace(/\s*%$/, ""), "a percentage from 0 to 100", "30");
  if ("words" in entry) return entry;
  if (entry.value < 0 || entry.value > 100)
    return { words: "A chance lies between 0 and 100 %. Write 30 for three times in ten." };
  return { value: Number((entry.value / 100).toPrecision(12)) };
}

function fromRegister(driver: Forecast["drivers"][number]): boolean {
  return driver.kind === "risk" || driver.kind === "assumption";
}

function percentText(probability: number): string {
  return String(Number((probability * 100).toPrecision(6)));
}

function statusWords(entry: Entry, status: Entry["status"]): string {
  if (status === "occurred" && entry.kind === "assumption") return "proved wrong";
  return status;
}

customElements.define("leeway-register", LeewayRegister);
