import { formatDate, formatMoney, formatPercent, roundSignificant } from "@leeway/charts";
import type { Benefit, Forecast, Goal, Plan, ScopeItem } from "@leeway/core";
import { html, nothing } from "lit";
import { findTasks } from "../plan/findTasks.ts";
import { readDate } from "../plan/readDate.ts";
import { readNumber } from "../plan/readNumber.ts";
import { unbroken } from "../words/unbroken.ts";
import { appraisalFields } from "./appraisalFields.ts";
import { benefitDetails, moreOfBenefit } from "./benefitDetails.ts";
import { entryField } from "./entryFields.ts";
import { estimateInputs, lineLabels, outcomesWords } from "./estimateCellsView.ts";
import { send } from "./events.ts";
import { fieldMessage } from "./fieldMessage.ts";
import { keepTyping } from "./keepTyping.ts";
import { type Column, ListsElement, needed, type Reading, whoChoices } from "./listsElement.ts";
import { qualityList } from "./qualityList.ts";

const every = [
  ["day", "day"],
  ["week", "week"],
  ["month", "month"],
  ["year", "year"],
  ["once", "once"],
] as const;

/** Why the plan is made: problem, goals, what is in and out, what it brings; and what that is worth. */
export class LeewayPurpose extends ListsElement {
  static override properties = { ...ListsElement.properties, more: { state: true } };
  /** What the rows of benefits have no room for is open. */
  more = false;

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    return html`${this.#frame(plan)}${this.#problem(plan)}${this.#goals(plan)}
      <div class="cell halves">${this.#scopeIn(plan)}${this.#scopeOut(plan)}${this.#constraints(plan)}</div>
      ${this.list(qualityList(plan))}
      ${this.#benefits(plan)} ${this.#more(plan)}
      <div class="worth ${this.fading ? "settling" : ""}">${worth(plan, this.forecast)}</div>
      ${this.toldLine()}`;
  }

  /** What it is called, and from when on there can be work. */
  #frame(plan: Plan) {
    const on = { host: this, plan, stated: this.stated, pending: this.pending, readonly: this.readonly };
    return html`<div class="entry-form plain entry-fields">
      ${entryField(on, { path: "title", label: "Title", of: "The plan", committed: plan.title, read: needed("A plan needs a title.") })}
      ${entryField(on, { path: "start", label: "Work can begin on", of: "The plan", committed: formatDate(plan.start), kind: "date", read: readDate })}
      ${entryField(on, {
        path: "currency",
        label: "Currency",
        of: "The plan",
        committed: plan.currency,
        note: "Its code in three letters. Another one names every sum anew; none is converted.",
        tidy: (text) => text.trim().toUpperCase(),
        read: readCurrency,
      })}
    </div>`;
  }

  #problem(plan: Plan) {
    const path = "purpose.problem";
    const shown = plan.purpose.problem?.trim() ?? "";
    const waits = this.pending.get(path);
    return html`<label class="problem"><span class="quiet">What is wrong today</span>
      <textarea rows="3" spellcheck="false" ?readonly=${this.readonly} ${keepTyping(shown)}
        @input=${(event: Event) => {
          if (event.target instanceof HTMLTextAreaElement)
            event.target.dataset.typing = String(event.target.value !== shown);
        }}
        @change=${(event: Event) => {
          const area = event.target;
          if (!(area instanceof HTMLTextAreaElement)) return;
          area.dataset.typing = "false";
          const value = area.value.trim();
          if (value !== shown)
            send(this, "plan-edit", {
              field: path,
              cells: { value },
              edits: [{ path, value: value === "" ? undefined : value }],
            });
        }}
      ></textarea></label>${fieldMessage("message-problem", waits)}`;
  }

  #goals(plan: Plan) {
    return this.list<Goal>({
      path: "purpose.goals",
      one: "goal",
      title: "Goals",
      empty: "No goal yet: what will be true when the work has paid off, and how you will measure it.",
      items: plan.purpose.goals,
      name: ({ statement }) => statement,
      columns: [
        {
          key: "statement",
          heading: "What is reached",
          size: "main",
          committed: (goal) => goal.statement,
          read: needed("A goal says what is reached."),
        },
        { key: "measure", heading: "Measured by", committed: (goal) => goal.measure ?? "" },
        { key: "target", heading: "Target", committed: (goal) => goal.target ?? "" },
        {
          key: "by",
          heading: "By",
          kind: "date",
          committed: (goal) => (goal.by === undefined ? "" : formatDate(goal.by)),
          read: (text) => (text.trim() === "" ? { value: undefined } : readDate(text)),
        },
        { key: "owner", heading: "Owner", committed: (goal) => goal.owner ?? "", choices: whoChoices(plan) },
      ],
      asks: [{ key: "statement", label: "What is reached" }],
      make: ({ statement = "" }, id) =>
        statement.trim() === ""
          ? { cell: "statement", words: "Write what is reached, in a few words." }
          : { item: { id: id(statement), statement: statement.trim() } },
    });
  }

  #scopeIn(plan: Plan) {
    return this.list<ScopeItem>({
      path: "purpose.scope.in",
      one: "part of the scope",
      title: "In scope",
      empty: "Nothing yet: what the work delivers, part by part.",
      items: plan.purpose.scopeIn,
      name: ({ name }) => name,
      columns: [{ key: "name", heading: "What is delivered", committed: ({ name }) => name }],
      asks: [{ key: "name", label: "What is delivered" }],
      make: ({ name = "" }, id) =>
        name.trim() === ""
          ? { cell: "name", words: "Write what is delivered, in a few words." }
          : { item: { id: id(name), name: name.trim() } },
    });
  }

  #scopeOut(plan: Plan) {
    return this.list<string>({
      path: "purpose.scope.out",
      one: "thing left out",
      adds: "Add what is left out",
      title: "Out of scope",
      empty: "Nothing yet: what somebody might expect and will not get.",
      items: plan.purpose.scopeOut,
      name: (text) => text,
      columns: [
        {
          key: "",
          heading: "What is not",
          committed: (text) => text,
          read: needed("Write what is left out, or remove the row."),
        },
      ],
      asks: [{ key: "text", label: "What is not delivered" }],
      make: ({ text = "" }) =>
        text.trim() === "" ? { cell: "text", words: "Write what is left out." } : { item: text.trim() },
    });
  }

  #constraints(plan: Plan) {
    return this.list<string>({
      path: "purpose.constraints",
      one: "constraint",
      adds: "Add what cannot be changed",
      title: "What cannot be changed",
      empty: "Nothing yet: a date, a sum, a rule or a place that stays whatever is planned.",
      items: plan.purpose.constraints,
      name: (text) => text,
      columns: [
        {
          key: "",
          heading: "What stays",
          committed: (text) => text,
          read: needed("Write what cannot be changed, or remove the row."),
        },
      ],
      asks: [{ key: "text", label: "What cannot be changed" }],
      make: ({ text = "" }) =>
        text.trim() === "" ? { cell: "text", words: "Write what cannot be changed." } : { item: text.trim() },
    });
  }

  /** How benefits are weighed, and what their rows have no room for; the latter made once it is asked for. */
  #more(plan: Plan) {
    if (plan.benefits.length === 0 && plan.appraisal === undefined) return nothing;
    const on = { host: this, plan, stated: this.stated, pending: this.pending, readonly: this.readonly };
    // What was entered there and waits is not hidden.
    const waits = [...this.pending.keys()].some((field) =>
      moreOfBenefit.some((key) => /^benefits\[\d+\]\.(.*)$/.exec(field)?.[1] === key),
    );
    const open = this.more || waits;
    return html`${appraisalFields(on)}${
      plan.benefits.length === 0
        ? nothing
        : html`<details class="more-said" .open=${open} @toggle=${({ target }: Event) => {
            if (!(target instanceof HTMLDetailsElement)) return;
            this.more = target.open;
            if (waits) target.open = true;
          }}>
      <summary>More of each benefit: its sort, owner, how it comes and how long it lasts</summary>
      ${open ? html`<div class="entry-form plain">${plan.benefits.map((one, at) => benefitDetails(on, one, `benefits[${at}]`))}</div>` : nothing}
    </details>`
    }`;
  }

  #benefits(plan: Plan) {
    const tasks = new Map(plan.tasks.map((task) => [task.id, task.name]));
    const amount: Column<Benefit> = {
      key: "amount",
      heading: "Low, likely, high",
      kind: "number",
      size: "short",
      span: 3,
      committed: () => "",
      labels: ({ amount, quantity }) => lineLabels(amount ?? quantity),
      cells: (benefit, path, row, column) => {
        const estimate = benefit.amount ?? benefit.quantity;
        const own = `${path}.${benefit.amount === undefined ? "quantity" : "amount"}`;
        const unit = benefit.amount === undefined ? (benefit.unit ?? "units") : plan.currency;
        if (estimate === undefined) return [html``, html``, html``];
        const inputs = estimateInputs({
          host: this,
          estimate,
          path: own,
          stated: this.stated,
          of: `benefit “${benefit.name}”`,
          unit,
          pending: this.pending.get(own),
          message: `message-${own.replace(/[^a-z0-9]+/gi, "-")}`,
          row,
          column,
          readonly: this.readonly,
        });
        return inputs.length === 3 ? inputs : [html``, html`${outcomesWords(estimate, unit)}`, html``];
      },
    };
    const means = new Map(this.forecast?.appraisal?.benefits.map((one) => [one.id, one]));
    return this.list<Benefit>({
      path: "benefits",
      one: "benefit",
      elsewhere: moreOfBenefit,
      title: "Benefits",
      empty: "No benefit yet: what the work brings, as a low, likely and high amount, and from when.",
      items: plan.benefits,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "What it brings",
          size: "main",
          committed: ({ name }) => name,
          read: needed("A benefit needs a name."),
        },
        amount,
        {
          key: "unit",
          heading: "Of",
          size: "of",
          committed: ({ unit, amount: money }) => (money === undefined ? (unit ?? "") : plan.currency),
          cells: ({ unit, amount: money }) => [
            html`<span class="quiet">${money === undefined ? (unit ?? "units") : plan.currency}</span>`,
          ],
        },
        { key: "per", heading: "Per", size: "narrow", committed: ({ per }) => per, choices: every },
        {
          key: "starts",
          heading: "Begins with",
          committed: ({ starts }) => (starts === undefined ? "" : (tasks.get(starts) ?? starts)),
          read: (text) => {
            const found = findTasks(text, plan.tasks);
            if ("words" in found) return found;
            return found.ids.length > 1
              ? { words: "A benefit begins with one task." }
              : { value: found.ids[0] };
          },
        },
        {
          key: "mean",
          heading: `Worth, ${plan.currency}`,
          kind: "number",
          size: "narrow",
          committed: () => "",
          cells: ({ id }) => {
            const found = means.get(id);
            const words =
              found === undefined
                ? ""
                : found.valued
                  ? formatMoney(roundSignificant(found.mean, 3), "")
                  : "not in money";
            return [html`<span class="quiet">${words}</span>`];
          },
        },
      ],
      asks: [
        { key: "name", label: "What it brings" },
        { key: "likely", label: "Likely amount a year", kind: "number" },
        { key: "unit", label: `Of, if it is not ${plan.currency}` },
      ],
      make: ({ name = "", likely = "", unit = "" }, id) => {
        if (name.trim() === "") return { cell: "name", words: "Write what it brings, in a few words." };
        const of = unit.trim();
        const isMoney = of === "" || of === plan.currency;
        const [what, example] = isMoney
          ? [`a sum in ${plan.currency}`, "40,000"]
          : [`a number of ${of}`, "1,200"];
        const entry = readNumber(likely, what, example);
        if ("words" in entry) return { cell: "likely", words: entry.words };
        const amount = isMoney ? { amount: entry.value } : { quantity: entry.value, unit: of };
        return { item: { id: id(name), name: name.trim(), ...amount, per: "year" } };
      },
    });
  }
}

function readCurrency(text: string): Reading {
  if (text.trim() === "") return { value: undefined };
  return /^[A-Z]{3}$/.test(text)
    ? { value: text }
    : { words: "A currency is written by its code of three letters. Write EUR, or GBP." };
}

/** What the benefits come to against the cost, as the forecast has it. */
function worth(plan: Plan, forecast: Forecast | undefined) {
  const appraisal = forecast?.appraisal;
  if (plan.benefits.length === 0) return nothing;
  if (forecast === undefined) return html`<p class="quiet">Not computed yet.</p>`;
  if (appraisal === undefined)
    return html`<p class="quiet">No benefit has an amount in money yet, so there is no net value.</p>`;
  const { years, discountRate, net, chancePositive, payback } = appraisal;
  const { currency } = forecast.plan;
  const money = (value: number): string => formatMoney(roundSignificant(value, 3), currency);
  const rate = `${Number((discountRate * 100).toPrecision(4))} %`;
  const back =
    payback.p50 === undefined
      ? `Fewer than half of the futures pay back at all: ${formatPercent(payback.chance)}.`
      : `Half of the futures have paid back by ${formatDate(payback.p50)}${payback.p80 === undefined ? `, ${formatPercent(payback.chance)} ever do` : `, eight in ten by ${formatDate(payback.p80)}`}.`;
  return html`<p class="finding">${unbroken(`Net value ${money(net.mean)} on average; above zero in ${formatPercent(chancePositive)} of futures.`)}</p>
    <p>${unbroken(`One future in ten brings less than ${money(net.p10)}, one in ten more than ${money(net.p90)}. ${back}`)}</p>
    <p class="note">${unbroken(`Benefits over ${years} years, discounted at ${rate} a year, less the total cost, which is not discounted.`)}</p>`;
}

customElements.define("leeway-purpose", LeewayPurpose);
