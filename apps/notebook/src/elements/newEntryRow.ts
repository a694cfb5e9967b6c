import { html, nothing, type TemplateResult } from "lit";
import type { EntryCells, ResponseCells } from "../plan/newEntry.ts";
import { cellLabel } from "./cellLabel.ts";
import { chanceOf } from "./chanceOf.ts";
import { type DraftRow, draftRow } from "./draftRow.ts";

interface NewEntryRow extends DraftRow<keyof EntryCells> {
  kind: "risk" | "assumption";
  words: string | undefined;
}

const entryKeys = ["name", "chance", "low", "likely", "high", "tasks"] as const;
const responseKeys = ["action", "cost", "chance"] as const;

/** What a cell is, where its heading is far. */
const places: Record<string, string> = {
  name: "name",
  low: "low",
  likely: "likely",
  high: "high",
};

const input = (
  cell: string,
  label: string,
  kind: "text" | "number",
  message: string | undefined,
  names = false,
) =>
  html`<input class="field ${kind}" type="text" autocomplete="off" spellcheck="false"
    inputmode=${kind === "number" ? "decimal" : nothing} aria-label=${label} placeholder=${places[cell] ?? nothing} data-cell=${cell}
    role=${names ? "combobox" : nothing} aria-autocomplete=${names ? "list" : nothing} aria-expanded=${names ? "false" : nothing}
    aria-controls=${names ? "suggestions" : nothing} data-suggest=${names ? "tasks" : nothing} aria-describedby=${message ?? nothing} />`;

/** The row of a risk or an assumption that is not in the plan yet. */
export function newEntryRow({ kind, words, ...does }: NewEntryRow): TemplateResult {
  const { keydown, focusout, buttons } = draftRow<keyof EntryCells>(entryKeys, does);
  const message = words === undefined ? undefined : `message-new-${kind}`;
  const of = `New ${kind}`;
  return html`<tr role="row" class="new-row" data-draft=${does.opens} @keydown=${keydown} @focusout=${focusout}>
    <th role="rowheader" scope="row" class="name">
      ${input("name", `${of}: ${kind === "risk" ? "what may happen" : "what the plan counts on"}`, "text", message)}
      <label class="touches"><span class="by">delays this task</span>
        ${input("tasks", `${of}: task it delays, by name; several parted by semicolons`, "text", message, true)}</label>
    </th>
    <td role="cell" class="number">${cellLabel(`${chanceOf(kind)}, %`)}${input("chance", `${of}: ${chanceOf(kind).toLowerCase()}, in per cent`, "number", message)}</td>
    ${(["low", "likely", "high"] as const).map((key) => html`<td role="cell" class="number">${cellLabel(key.slice(0, 1).toUpperCase() + key.slice(1))}${input(key, `${of}: delay: ${key}, in working days`, "number", message)}</td>`)}
    <td role="cell" class="adds">${buttons(`new ${kind}`)}</td>
    <td role="cell" class="messages">${words === undefined ? nothing : html`<p class="message" id=${message ?? nothing} role="alert">${words}</p>`}</td>
  </tr>`;
}

interface NewResponse extends DraftRow<keyof ResponseCells> {
  to: string;
  currency: string;
  words: string | undefined;
}

/** The line of a response that is not in the plan yet. */
export function newResponseLine({ to, currency, words, ...does }: NewResponse): TemplateResult {
  const { keydown, focusout, buttons } = draftRow<keyof ResponseCells>(responseKeys, does);
  const message = words === undefined ? undefined : "message-new-response";
  return html`<div class="new-row new-response" data-draft=${does.opens} role="group" aria-label="New response to ${to}" @keydown=${keydown} @focusout=${focusout}>
    <label><span>What can be done</span> ${input("action", "New response: what can be done", "text", message)}</label>
    <label><span>Costs, ${currency}</span> ${input("cost", `New response: costs, in ${currency}`, "number", message)}</label>
    <label><span>Chance becomes, %</span> ${input("chance", "New response: the chance becomes, in per cent", "number", message)}</label>
    ${buttons("new response")}
    ${words === undefined ? nothing : html`<p class="message" id=${message ?? nothing} role="alert">${words}</p>`}
  </div>`;
}
