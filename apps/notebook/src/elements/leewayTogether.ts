import { formatDays, formatPercent } from "@leeway/charts";
import type { Correlation, Interval, Plan } from "@leeway/core";
import { html, nothing } from "lit";
import { findTasks } from "../plan/findTasks.ts";
import { drawsCell, readDraws } from "../plan/namedDraws.ts";
import { readNumber } from "../plan/readNumber.ts";
import { shownNames } from "../plan/shownName.ts";
import { unbroken } from "../words/unbroken.ts";
import { ListsElement, needed } from "./listsElement.ts";

/** What is said of several tasks at once: spans between them to watch, and estimates that move together. */
export class LeewayTogether extends ListsElement {
  static override properties = { ...ListsElement.properties, open: { state: true } };
  open = false;

  protected override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    // What was entered there and waits is not hidden.
    const waits = [...this.pending.keys()].some((field) => /^(intervals|correlations)\b/.test(field));
    const open = this.open || waits;
    return html`<details class="more-said" .open=${open} @toggle=${({ target }: Event) => {
      if (!(target instanceof HTMLDetailsElement)) return;
      this.open = target.open;
      if (waits) target.open = true;
    }}>
      <summary>${summary(plan)}</summary>
      ${open ? html`${this.#spans(plan)}${this.#together(plan)}${this.toldLine()}` : nothing}
    </details>`;
  }

  #spans(plan: Plan) {
    const shown = shownNames(plan.tasks);
    const found = new Map(this.forecast?.intervals.map((one) => [one.id, one]));
    const one = (text: string): { value: string } | { words: string } => {
      const named = findTasks(text, plan.tasks);
      if ("words" in named) return named;
      const [id, other] = named.ids;
      return id === undefined || other !== undefined ? { words: "Name one task." } : { value: id };
    };
    return this.list<Interval>({
      path: "intervals",
      one: "span",
      title: "Spans to watch",
      empty:
        "No span yet: how many calendar days may pass from the finish of one task to the start of another.",
      items: plan.intervals,
      name: ({ name }) => name,
      columns: [
        {
          key: "name",
          heading: "Span",
          size: "main",
          committed: ({ name }) => name,
          read: needed("A span needs a name."),
        },
        {
          key: "from",
          heading: "From the finish of",
          committed: ({ from }) => shown.get(from) ?? from,
          read: one,
          suggest: { of: "tasks" },
        },
        {
          key: "to",
          heading: "To the start of",
          committed: ({ to }) => shown.get(to) ?? to,
          read: one,
          suggest: { of: "tasks" },
        },
        {
          key: "atMost",
          heading: "At most, calendar days",
          kind: "number",
          size: "narrow",
          committed: ({ atMost }) => (atMost === undefined ? "" : String(atMost)),
          read: optionalDays,
        },
        {
          key: "found",
          heading: "In 8 futures of 10",
          committed: () => "",
          cells: ({ id }) => [html`<span class="quiet">${spanWords(found.get(id))}</span>`],
        },
      ],
      asks: [
        { key: "name", label: "Span" },
        { key: "from", label: "From the finish of", suggest: "tasks" },
        { key: "to", label: "To the start of", suggest: "tasks" },
        { key: "atMost", label: "At most, calendar days", kind: "number" },
      ],
      make: ({ name = "", from = "", to = "", atMost = "" }, id) => {
        if (name.trim() === "") return { cell: "name", words: "Write what the span is called." };
        const begins = one(from);
        if ("words" in begins) return { cell: "from", words: begins.words };
        const ends = one(to);
        if ("words" in ends) return { cell: "to", words: ends.words };
        const most = optionalDays(atMost);
        if ("words" in most) return { cell: "atMost", words: most.words };
        const { value } = most;
        return {
          item: {
            id: id(name),
            name: name.trim(),
            from: begins.value,
            to: ends.value,
            ...(value === undefined ? {} : { atMost: value }),
          },
        };
      },
    });
  }

  #together(plan: Plan) {
    const shown = shownNames(plan.tasks);
    const cell = ({ between }: Pick<Correlation, "between">): string => drawsCell(between, shown);
    return this.list<Correlation>({
      path: "correlations",
      one: "set of estimates",
      adds: "Add estimates that move together",
      title: "Estimates that move together",
      empty:
        "Nothing yet: tasks of which one takes long when the other does, as the same people, ground or supplier is behind both.",
      items: plan.correlations,
      name: cell,
      columns: [
        {
          key: "between",
          heading: "These tasks, or “cost of” one",
          committed: cell,
          read: (text) => readDraws(text, plan.tasks),
          suggest: { of: "tasks" },
        },
        {
          key: "coefficient",
          heading: "How closely, -1 to 1",
          kind: "number",
          size: "narrow",
          committed: ({ coefficient }) => String(coefficient),
          read: readCoefficient,
        },
        { key: "cause", heading: "Because", committed: ({ cause }) => cause ?? "" },
      ],
      asks: [
        { key: "between", label: "Tasks, parted by semicolons", suggest: "tasks" },
        { key: "coefficient", label: "How closely, -1 to 1", kind: "number" },
        { key: "cause", label: "Because" },
      ],
      make: ({ between = "", coefficient = "", cause = "" }) => {
        const draws = readDraws(between, plan.tasks);
        if ("words" in draws) return { cell: "between", words: draws.words };
        const closely = readCoefficient(coefficient);
        if ("words" in closely) return { cell: "coefficient", words: closely.words };
        return {
          item: {
            between: draws.value,
            coefficient: closely.value,
            ...(cause.trim() === "" ? {} : { cause: cause.trim() }),
          },
        };
      },
    });
  }
}

/** What is inside is told outside, as it counts whether or not it is open. */
function summary({ intervals, correlations }: Plan): string {
  const count = (n: number): string => (n === 0 ? "" : ` (${n})`);
  return `Spans to watch${count(intervals.length)}, and estimates that move together${count(correlations.length)}`;
}

function spanWords(span: { p10: number; p90: number; atMost?: number; chance?: number } | undefined) {
  if (span === undefined) return "not computed yet";
  const { p10, p90, atMost, chance } = span;
  const [low, high] = [Math.round(p10), Math.round(p90)];
  const range =
    low === high ? formatDays(high, "calendar day") : `${low} to ${formatDays(high, "calendar day")}`;
  return unbroken(chance === undefined ? range : `${range}; at most ${atMost}: ${formatPercent(chance)}`);
}

function optionalDays(text: string): { value: number | undefined } | { words: string } {
  return text.trim() === "" ? { value: undefined } : readNumber(text, "a number of calendar days", "14");
}

function readCoefficient(text: string): { value: number } | { words: string } {
  const entry = readNumber(text, "a number from -1 to 1", "0.5");
  return "value" in entry && Math.abs(entry.value) > 1
    ? { words: "1 is as closely as can be, 0 not at all, -1 against each other. Write 0.5." }
    : entry;
}

customElements.define("leeway-together", LeewayTogether);
