import { html, nothing, type TemplateResult } from "lit";
import type { TaskCells } from "../plan/newTask.ts";

interface NewTaskRow {
  at: number;
  phase: string | undefined;
  words?: string;
  /** Ids that it may wait for. */
  ids: readonly string[];
  /** Takes the row into the plan; the cell to go to when it cannot be read yet. */
  add: (cells: TaskCells) => keyof TaskCells | undefined;
  drop: () => void;
}

const keys = ["name", "low", "likely", "high", "after"] as const;
const labels: Record<keyof TaskCells, string> = {
  name: "New task: name",
  low: "New task: low, in working days",
  likely: "New task: likely, in working days",
  high: "New task: high, in working days",
  after: "New task: waits for these task ids",
};
const message = "message-new-task";

/** The row of a task that is not in the plan yet. What is typed lives in its inputs until it can be read as a task. */
export function newTaskRow({ at, phase, words, add, drop }: NewTaskRow): TemplateResult {
  const take = (row: Element): void => {
    const inputs = inputsOf(row);
    const missing = add(cellsOf(inputs));
    if (missing === undefined) for (const input of inputs.values()) input.value = "";
    inputs.get(missing ?? "name")?.focus();
  };
  const keydown = (event: KeyboardEvent): void => {
    const row = event.currentTarget;
    if (!(row instanceof Element) || !(event.target instanceof HTMLInputElement)) return;
    if (event.key === "Escape") {
      event.preventDefault();
      drop();
    } else if (event.key === "Enter" && !event.shiftKey) {
      event.preventDefault();
      event.stopPropagation();
      take(row);
    }
  };
  const leave = (event: FocusEvent): void => {
    const row = event.currentTarget;
    if (
      !(row instanceof Element) ||
      (event.relatedTarget instanceof Node && row.contains(event.relatedTarget))
    )
      return;
    const inputs = inputsOf(row);
    const cells = cellsOf(inputs);
    // A row that nothing was written into goes; one that is whole is taken; one between stays and says what it needs.
    if (keys.every((key) => cells[key].trim() === "")) {
      if (event.relatedTarget !== null) drop();
    } else if (event.relatedTarget !== null && add(cells) === undefined)
      for (const input of inputs.values()) input.value = "";
  };
  const cell = (key: keyof TaskCells, column: number): TemplateResult =>
    html`<input class="field ${column > 0 && column < 4 ? "number" : "text"}" type="text" autocomplete="off" spellcheck="false"
      inputmode=${column > 0 && column < 4 ? "decimal" : nothing} aria-label=${labels[key]} data-cell=${key}
      aria-describedby=${words === undefined ? nothing : message} data-row=${at - 0.5} data-column=${column} />`;
  return html`<tr role="row" class="new-row" @keydown=${keydown} @focusout=${leave}>
    <th role="rowheader" scope="row" class="name">${cell("name", 0)}</th>
    ${(["low", "likely", "high"] as const).map((key, i) => html`<td role="cell" class="number">${cell(key, i + 1)}</td>`)}
    <td role="cell" class="after">${cell("after", 4)}<span class="by">${phase ?? ""}</span></td>
    <td role="cell" class="when quiet">Not in the plan yet. Enter takes it in, Escape leaves it.</td>
    <td role="cell" class="messages">${words === undefined ? nothing : html`<p class="message" id=${message} role="alert">${words}</p>`}</td>
  </tr>`;
}

function inputsOf(row: Element): Map<string, HTMLInputElement> {
  return new Map([...row.querySelectorAll("input")].map((input) => [input.dataset.cell ?? "", input]));
}

function cellsOf(inputs: ReadonlyMap<string, HTMLInputElement>): TaskCells {
  const of = (key: keyof TaskCells): string => inputs.get(key)?.value ?? "";
  return { name: of("name"), low: of("low"), likely: of("likely"), high: of("high"), after: of("after") };
}
