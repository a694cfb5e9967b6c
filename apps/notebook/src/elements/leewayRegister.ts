import { formatDays, formatMoney, roundSignificant } from "@leeway/charts";
import type { Assumption, Forecast, Plan, Risk } from "@leeway/core";
import { html, nothing } from "lit";
import { type EffectCells, newEffect } from "../plan/newEffect.ts";
import { type EntryCells, newEntry, newResponse, type ResponseCells } from "../plan/newEntry.ts";
import { readChance } from "../plan/readChance.ts";
import { removeEntry } from "../plan/removeEntry.ts";
import { delayUnit } from "../plan/unitWords.ts";
import type { Pending } from "../store/state.ts";
import { spends } from "../words/answerWords.ts";
import { unbroken } from "../words/unbroken.ts";
import { cellLabel } from "./cellLabel.ts";
import { chanceOf } from "./chanceOf.ts";
import { entryDetails } from "./entryDetails.ts";
import { estimateInputs, outcomesWords } from "./estimateCellsView.ts";
import { send } from "./events.ts";
import { field } from "./field.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { impactWords } from "./impactWords.ts";
import { LongElement } from "./longElement.ts";
import { newEntryRow, newResponseLine } from "./newEntryRow.ts";
import { RowStops } from "./rowStops.ts";
import { type RowAction, RowTools } from "./rowTools.ts";
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
    told: { state: true },
    toldIn: { state: true },
    draft: { state: true },
    open: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  forecast: Forecast | undefined;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  fading = false;
  /** What was done to rows last, in words. */
  told = "";
  /** Among which of them: it is told below these. */
  toldIn: "risks" | "assumptions" = "risks";
  /** What is being added: to the risks, the assumptions, or the responses of one of them; and what is missing in it. */
  draft: { list: string; words?: string | undefined } | undefined;
  /** Ids of the entries whose details are open. */
  open: ReadonlySet<string> = new Set();
  #tools = new RowTools(this, {
    move: (path, by) => {
      this.toldIn = groupOf(path);
      return this.#move(path, by);
    },
    remove: (path) => {
      this.toldIn = groupOf(path);
      const [list, at] = placeIn(path);
      const removal = removeEntry(this.stated, list, at);
      return "refused" in removal ? removal : { edits: removal.edits, told: removal.words };
    },
    name: (path) => this.#nameAt(path),
  });

  constructor() {
    super();
    // After the tools: they are in the row by then.
    new RowStops(this, { groups: false });
  }

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    const { stated } = this;
    const most = Math.max(0.1, ...(this.forecast?.drivers ?? []).filter(fromRegister).map((one) => one.days));
    let row = 0;
    const group = (title: string, list: readonly Entry[], key: "risks" | "assumptions") =>
      html`<tr role="row" class="phase">
            <th role="rowheader" scope="rowgroup" colspan="7">${title}</th>
          </tr>
          ${list.map((entry, at) => {
            const first = row;
            row += Math.max(1, entry.impacts.length);
            return this.#entry(plan, entry, `${key}[${at}]`, stated, first, most);
          })}
          ${this.draft?.list === key ? this.#newEntry(key, this.draft.words) : nothing}
          ${this.readonly ? nothing : this.#addsRow(key, list.length === 0)}
          <tr role="row" class="rows-told"><td role="cell"><span role="status">${this.toldIn === key ? this.told : ""}</span></td></tr>`;
    return html`<table class="stated register" role="table" @keydown=${this.#keys}>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col" class="name">Risk or assumption</th>
          <th role="columnheader" scope="col" class="number">Chance, %<span class="unseen"> that a risk happens, or an assumption is wrong</span></th>
          <th role="columnheader" scope="col" class="number">Low</th>
          <th role="columnheader" scope="col" class="number">Likely</th>
          <th role="columnheader" scope="col" class="number">High</th>
          <th role="columnheader" scope="col" class="status">State</th>
          <th role="columnheader" scope="col" class="adds">
            <span>Adds, on average</span><span>working days</span><span>${this.#money ? plan.currency : ""}</span>
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup" class=${this.fading ? "settling" : ""}>
        ${group("Risks: what may happen", plan.risks, "risks")}
      </tbody>
      <tbody role="rowgroup" class=${this.fading ? "settling" : ""}>
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
    return html`<tr role="row" class=${waits ? "waits" : ""} id="entry-${entry.id}" data-item=${path}>
      <th role="rowheader" scope="row" class="name">
        <span class="entry-name">${entry.name}</span>
        <span class="by">${impactWords(entry, plan)}</span>
        ${entry.responses.map((response, at) => this.#response(plan, response, `${path}.responses[${at}]`))}
        ${
          this.draft?.list === `${path}.responses`
            ? newResponseLine({
                to: entry.name,
                currency: plan.currency,
                words: this.draft.words,
                opens: `${path}.responses`,
                add: (cells) => this.#addResponse(`${path}.responses`, cells),
                drop: (left) => this.#drop(`${path}.responses`, left),
              })
            : nothing
        }
        ${
          this.readonly
            ? nothing
            : html`<button type="button" class="adds-button" data-adds="${path}.responses" @click=${() => this.#openDraft(`${path}.responses`)}>Add a response<span class="unseen"> to ${entry.name}</span></button>`
        }
      </th>
      <td role="cell" class="number">${cellLabel(`${chanceOf(entry.kind)}, %`)}${field({
        label: `${entry.name}: ${chanceOf(entry.kind).toLowerCase()}, in per cent`,
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
          ? inputs.map(
              (input, at) =>
                html`<td role="cell" class="number">${cellLabel(["Low", "Likely", "High"][at])}${input}</td>`,
            )
          : html`<td role="cell" class="words" colspan="3">
              ${delay === undefined ? html`<span class="quiet">no delay</span>` : outcomesWords(delay, unit)}
            </td>`
      }
      <td role="cell" class="status" data-text=${statusWords(entry, entry.status)}>
        ${cellLabel("State")}<select
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
      ${this.#details(plan, entry, path)}
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

  /** Made only while they are open: a long register does not carry a form for each of its rows. */
  #details(plan: Plan, entry: Entry, path: string) {
    const list = `${path}.impacts`;
    return html`<td role="cell" class="more" data-tools><details
      @toggle=${(event: Event) => {
        const details = event.target;
        if (!(details instanceof HTMLDetailsElement) || details.open === this.open.has(entry.id)) return;
        const open = new Set(this.open);
        if (details.open) open.add(entry.id);
        else open.delete(entry.id);
        this.open = open;
      }}>
      <summary>Owner, dates, effects<span class="unseen"> of ${entry.name}</span></summary>
      ${
        this.open.has(entry.id)
          ? entryDetails({
              host: this,
              plan,
              stated: this.stated,
              pending: this.pending,
              readonly: this.readonly,
              entry,
              path,
              draft: this.draft?.list === list ? this.draft : undefined,
              effect: {
                opens: list,
                add: (cells) => this.#addEffect(list, cells),
                drop: (left) => this.#drop(list, left),
              },
              addEffect: () => this.#openDraft(list),
            })
          : nothing
      }
    </details></td>`;
  }

  #response(plan: Plan, response: Entry["responses"][number], path: string) {
    const cost =
      response.cost?.kind === "fixed"
        ? unbroken(`, costs ${formatMoney(response.cost.value, plan.currency)}`)
        : "";
    const field = `${path}.adopted`;
    return html`<div class="response-line" data-item=${path} data-tools><label class="response">
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
    </label></div>`;
  }

  /** Until there is an answer the column has its heading: most plans have money. */
  get #money(): boolean {
    return this.forecast === undefined || spends(this.forecast);
  }

  #adds(entry: Entry, most: number) {
    const driver = this.forecast?.drivers.find((one) => one.id === entry.id && fromRegister(one));
    if (this.forecast === undefined) return html`<td role="cell" class="adds quiet">not computed yet</td>`;
    const days = driver?.days ?? 0;
    const money = driver?.money ?? 0;
    const width = `${Math.min(100, Math.abs(days / most) * 100)}%`;
    return html`<td role="cell" class="adds">${cellLabel("Adds, on average")}
      <svg class="adds-bar" aria-hidden="true"><rect class="register-mark" y="7" height="10" width=${width} /></svg>
      <span>${formatDays(days, "")}<span class="stacked-unit"> working days</span></span>
      <span>${this.#money ? html`<span class="stacked-unit">${this.forecast.plan.currency} </span>${formatMoney(roundSignificant(money, 3), "")}` : nothing}</span>
    </td>`;
  }

  #newEntry(list: "risks" | "assumptions", words: string | undefined) {
    return newEntryRow({
      kind: list === "risks" ? "risk" : "assumption",
      words,
      opens: list,
      add: (cells) => this.#addEntry(list, cells),
      drop: (left) => this.#drop(list, left),
    });
  }

  #addsRow(list: "risks" | "assumptions", empty: boolean) {
    const teach =
      list === "risks"
        ? "No risk yet: an event that may hit the plan, with its chance and what it delays. "
        : "No assumption yet: something the plan counts on, and the chance that it proves wrong. ";
    return html`<tr role="row" class="adds-row"><td role="cell">${empty && this.draft?.list !== list ? html`<span class="quiet">${teach}</span>` : nothing}<button
      type="button" class="adds-button" data-adds=${list} @click=${() => this.#openDraft(list)}>${list === "risks" ? "Add a risk" : "Add an assumption"}</button></td></tr>`;
  }

  #openDraft(list: string): void {
    this.draft = { list };
    this.told = "";
    this.drawNow();
    this.querySelector<HTMLInputElement>(".new-row input")?.focus();
  }

  #drop(list: string, left: boolean): void {
    if (this.draft?.list === list) this.draft = undefined;
    if (left) return;
    void this.updateComplete.then(() => {
      if (document.activeElement === document.body)
        this.querySelector<HTMLElement>(`[data-adds="${list}"]`)?.focus();
    });
  }

  #addEntry(list: "risks" | "assumptions", cells: EntryCells): keyof EntryCells | undefined {
    const kind = list === "risks" ? "risk" : "assumption";
    return this.#add(list, () => newEntry(kind, cells, this.stated, this.plan?.tasks ?? []));
  }

  #addResponse(list: string, cells: ResponseCells): keyof ResponseCells | undefined {
    return this.#add(list, () => newResponse(cells, this.stated, this.plan?.currency ?? ""));
  }

  #addEffect(list: string, cells: EffectCells): keyof EffectCells | undefined {
    const { plan } = this;
    if (plan === undefined) return undefined;
    const missing = this.#add(list, () => {
      const made = newEffect(cells, plan.tasks, plan.currency);
      return "words" in made ? made : { ...made, name: `an effect on ${cells.tasks.trim()}` };
    });
    // Effects are few: a second one is asked for by its button.
    // Taken in as the reader went elsewhere, it calls nobody back.
    const inside = this.querySelector(".new-row")?.contains(document.activeElement) === true;
    if (missing === undefined) this.#drop(list, !inside);
    return missing;
  }

  #add<C>(
    list: string,
    make: () => { item: Record<string, unknown>; name: string } | { cell: C; words: string },
  ): C | undefined {
    const made = make();
    if ("words" in made) {
      this.draft = { list, words: made.words };
      return made.cell;
    }
    this.draft = { list };
    this.#tools.act(() => {
      this.toldIn = groupOf(list);
      const again = make(); // an id that is new by then
      if ("words" in again) return { refused: again.words };
      return { edits: [{ path: list, value: again.item, add: "last" }], told: `Added “${again.name}”.` };
    });
    return undefined;
  }

  #listAt(list: string): readonly { id: string }[] {
    if (list === "risks" || list === "assumptions") return this.plan?.[list] ?? [];
    const [entries, at] = placeIn(list.replace(/\.responses$/, ""));
    return entries === "risks" || entries === "assumptions"
      ? (this.plan?.[entries][at]?.responses ?? [])
      : [];
  }

  #nameAt(path: string): string {
    const [list, at] = placeIn(path);
    const item = this.#listAt(list)[at];
    if (item === undefined) return "";
    return "action" in item ? String(item.action) : "name" in item ? String(item.name) : item.id;
  }

  #move(path: string, by: -1 | 1): RowAction | undefined {
    const [list, at] = placeIn(path);
    if (this.#listAt(list)[at] === undefined || this.#listAt(list)[at + by] === undefined) return undefined;
    return {
      edits: [{ path: list, value: undefined, swap: Math.min(at, at + by) }],
      at: `${list}[${at + by}]`,
      told: `Moved “${this.#nameAt(path)}” ${by < 0 ? "up" : "down"}.`,
    };
  }

  /** Enter in the last row goes on to a new one. */
  #keys = (event: KeyboardEvent): void => {
    const { target } = event;
    const list = this.plan?.assumptions.length === 0 ? "risks" : "assumptions";
    const last = `${list}[${(this.plan?.[list].length ?? 0) - 1}]`;
    const plain = !event.shiftKey && !event.altKey && !event.ctrlKey && !event.metaKey;
    if (event.key === "Enter" && plain && !this.readonly && target instanceof HTMLInputElement) {
      if (
        target.dataset.row !== undefined &&
        target.closest<HTMLElement>("[data-item]")?.dataset.item === last
      ) {
        event.preventDefault();
        target.dispatchEvent(new Event("change", { bubbles: true }));
        this.#openDraft(list);
        return;
      }
    }
    tableKeys(event);
  };

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

function groupOf(path: string): "risks" | "assumptions" {
  return path.startsWith("assumptions") ? "assumptions" : "risks";
}

/** The list that a path leads into, and the place in it. */
function placeIn(path: string): [string, number] {
  const [, list = "", at = "-1"] = /^(.*)\[(\d+)\]$/.exec(path) ?? [];
  return [list, Number(at)];
}

customElements.define("leeway-register", LeewayRegister);
