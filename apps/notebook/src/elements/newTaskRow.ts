import { html, nothing, type TemplateResult } from "lit";
import type { TaskCells } from "../plan/newTask.ts";
import { type DraftRow, draftRow } from "./draftRow.ts";

interface NewTaskRow extends DraftRow<keyof TaskCells> {
  at: number;
  phase: string | undefined;
  words?: string;
}

const keys = ["name", "low", "likely", "high", "after"] as const;
const labels: Record<keyof TaskCells, string> = {
  name: "New task: name",
  low: "New task: low, in working days",
  likely: "New task: likely, in working days",
  high: "New task: high, in working days",
  after: "New task: waits for these tasks, by name or id",
};
const message = "message-new-task";

/** The row of a task that is not in the plan yet. */
export function newTaskRow({ at, phase, words, ...does }: NewTaskRow): TemplateResult {
  const { keydown, focusout, buttons } = draftRow<keyof TaskCells>(keys, does);
  const cell = (key: keyof TaskCells, column: number): TemplateResult =>
    html`<input class="field ${column > 0 && column < 4 ? "number" : "text"}" type="text" autocomplete="off" spellcheck="false"
      inputmode=${column > 0 && column < 4 ? "decimal" : nothing} aria-label=${labels[key]} placeholder=${key === "after" ? "waits for" : key} data-cell=${key}
      role=${key === "after" ? "combobox" : nothing} aria-autocomplete=${key === "after" ? "list" : nothing} aria-expanded=${key === "after" ? "false" : nothing}
      aria-controls=${key === "after" ? "suggestions" : nothing} data-suggest=${key === "after" ? "tasks" : nothing}
      aria-describedby=${words === undefined ? nothing : message} data-row=${at - 0.5} data-column=${column} />`;
  return html`<tr role="row" class="new-row" data-draft=${does.opens} @keydown=${keydown} @focusout=${focusout}>
    <th role="rowheader" scope="row" class="name">${cell("name", 0)}</th>
    ${(["low", "likely", "high"] as const).map((key, i) => html`<td role="cell" class="number">${cell(key, i + 1)}</td>`)}
    <td role="cell" class="after">${cell("after", 4)}<span class="by">${phase ?? ""}</span></td>
    <td role="cell" class="when">${buttons("new task")}</td>
    <td role="cell" class="messages">${words === undefined ? nothing : html`<p class="message" id=${message} role="alert">${words}</p>`}</td>
  </tr>`;
}
