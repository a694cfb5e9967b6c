import { formatDate } from "@leeway/charts";
import type { Overhead, Plan } from "@leeway/core";
import { html } from "lit";
import { figureText } from "../plan/figureText.ts";
import { findTasks } from "../plan/findTasks.ts";
import { readDate } from "../plan/readDate.ts";
import { readNumber } from "../plan/readNumber.ts";
import { dateText, entryField, optionalDate, optionalText, whoField } from "./entryFields.ts";
import { estimateInputs, lineLabels, outcomesWords } from "./estimateCellsView.ts";
import { estimatePart } from "./estimatePart.ts";
import { type Column, ListsElement, needed, type Reading } from "./listsElement.ts";

type Fund = Plan["commitment"]["funds"][number];

/** What is stated about money besides what tasks, people and risks cost: what runs with time, what is released when. */
export class LeewayBudget extends ListsElement {
  protected override render() {
    const { plan } = this;
    if (plan === undefined) return html``;
    return html`<div class="budget" id="budget">${this.#runs(plan)}
      <div class="cell halves">${this.#funds(plan)}${this.#held(plan)}</div>
      ${this.#late(plan)}${this.toldLine()}</div>`;
  }

  #sum(plan: Plan, example: string): (text: string) => Reading {
    return (text) => readNumber(text, `a sum in ${plan.currency}`, example);
  }

  #runs(plan: Plan) {
    const names = new Map(plan.tasks.map((task) => [task.id, task.name]));
    const task = (text: string): Reading => {
      if (text.trim() === "") return { value: undefined };
      const found = findTasks(text, plan.tasks);
      if ("words" in found) return found;
      return found.ids.length === 1 ? { value: found.ids[0] } : { words: "Name one task." };
    };
    const perDay: Column<Overhead> = {
      key: "perDay",
      heading: `${plan.currency} a working day: low, likely, high`,
      kind: "number",
      size: "short",
      span: 3,
      committed: () => "",
      labels: ({ perDay: estimate }) => lineLabels(estimate, `, ${plan.currency} a day`),
      cells: (overhead, path, row, column) => {
        const own = `${path}.perDay`;
        const inputs = estimateInputs({
          host: this,
          estimate: overhead.perDay,
          path: own,
          stated: this.stated,
          of: `overhead “${overhead.name}”`,
          unit: plan.currency,
          pending: this.pending.get(own),
          message: `message-${own.replace(/[^a-z0-9]+/gi, "-")}`,
          row,
          column,
          readonly: this.readonly,
        });
        return inputs.length === 3
          ? inputs
          : [html``, html`${outcomesWords(overhead.perDay, plan.currency)}`, html``];
      },
    };
    return this.list<Overhead>({
      path: "overheads",
      one: "overhead",
      title: "Overheads: what costs money as long as the work lasts",
      empty:
        "No overhead yet: rent, a site office, a licence by the day. Each working day more costs it once more.",
      items: plan.overheads,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "Overhead",
          size: "main",
          committed: ({ name }) => name,
          read: needed("An overhead needs a name."),
        },
        perDay,
        {
          key: "from",
          heading: "From the start of",
          committed: ({ from }) => (from === undefined ? "" : (names.get(from) ?? from)),
          read: task,
          suggest: { of: "tasks" },
        },
        {
          key: "to",
          heading: "To the finish of",
          committed: ({ to }) => (to === undefined ? "" : (names.get(to) ?? to)),
          read: task,
          suggest: { of: "tasks" },
        },
      ],
      asks: [
        { key: "name", label: "Overhead" },
        { key: "perDay", label: `Each working day, ${plan.currency}`, kind: "number" },
      ],
      make: (cells, id) => {
        const name = (cells.name ?? "").trim();
        if (name === "") return { cell: "name", words: "An overhead needs a name." };
        const found = this.#sum(plan, "120")(cells.perDay ?? "");
        if ("words" in found) return { cell: "perDay", words: found.words };
        return { item: { id: id(name), name, perDay: "value" in found ? found.value : 0 } };
      },
    });
  }

  #funds(plan: Plan) {
    return this.list<Fund>({
      path: "commitment.funds",
      one: "release",
      title: "When money is released",
      empty: "Nothing said: the money available counts as there from the first day.",
      items: plan.commitment.funds,
      name: ({ from }) => formatDate(from),
      columns: [
        {
          key: "from",
          heading: "From",
          kind: "date",
          size: "narrow",
          committed: ({ from }) => formatDate(from),
          read: readDate,
        },
        {
          key: "amount",
          heading: `Released, ${plan.currency}`,
          kind: "number",
          size: "narrow",
          committed: ({ amount }) => figureText(amount),
          read: this.#sum(plan, "240,000"),
        },
      ],
      asks: [
        { key: "from", label: "From" },
        { key: "amount", label: `Released, ${plan.currency}`, kind: "number" },
      ],
      make: (cells) => {
        const from = readDate(cells.from ?? "");
        if ("words" in from) return { cell: "from", words: from.words };
        const amount = readNumber(cells.amount ?? "", `a sum in ${plan.currency}`, "240,000");
        if ("words" in amount) return { cell: "amount", words: amount.words };
        return { item: { from: from.value, amount: amount.value } };
      },
    });
  }

  /** What is set aside, who may release it, and how. */
  #held(plan: Plan) {
    const { reserve, holder, releaseRule } = plan.commitment;
    const on = { host: this, plan, stated: this.stated, pending: this.pending, readonly: this.readonly };
    const of = "The plan";
    return html`<div class="list held"><h3>What is set aside</h3>
      <div class="entry-form plain entry-fields">
        ${entryField(on, {
          path: "commitment.reserve",
          label: `Reserve, ${plan.currency}`,
          of,
          committed: reserve === undefined ? "" : figureText(reserve),
          kind: "number",
          read: (text) => (text.trim() === "" ? { value: undefined } : this.#sum(plan, "160,000")(text)),
        })}
        ${whoField(on, { path: "commitment.holder", label: "Contingency held by", of, committed: holder ?? "" })}
        ${entryField(on, {
          path: "commitment.releaseRule",
          label: "How it is released",
          of,
          committed: releaseRule ?? "",
          wraps: true,
          read: optionalText,
        })}
      </div></div>`;
  }

  /** What finishing late costs the organisation: reported beside the total, never inside it. */
  #late(plan: Plan) {
    const { lateness } = plan;
    const on = { host: this, plan, stated: this.stated, pending: this.pending, readonly: this.readonly };
    const of = "Finishing late";
    const part = (key: "perWeek" | "once", label: string) =>
      estimatePart({
        ...on,
        label: `${label}, ${plan.currency}`,
        of,
        estimate: lateness?.[key],
        path: `lateness.${key}`,
        unit: plan.currency,
      });
    return html`<div class="list late"><h3>What finishing late costs, beside the plan's own money</h3>
      <div class="entry-form plain">
        ${part("perWeek", "Each week")}${part("once", "Once")}
        <div class="entry-fields">${entryField(on, {
          path: "lateness.after",
          label: "Late after",
          of,
          committed: dateText(lateness?.after),
          kind: "date",
          read: optionalDate,
        })}</div>
      </div></div>`;
  }
}

customElements.define("leeway-budget", LeewayBudget);
