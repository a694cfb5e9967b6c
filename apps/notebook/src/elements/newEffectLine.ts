import { html, nothing, type TemplateResult } from "lit";
import type { EffectCells } from "../plan/newEffect.ts";
import { type DraftRow, draftRow } from "./draftRow.ts";

interface NewEffect extends DraftRow<keyof EffectCells> {
  of: string;
  currency: string;
  words: string | undefined;
}

const keys = ["tasks", "low", "likely", "high", "cost"] as const;
const message = "message-new-effect";

/** The line of an effect that is not in the plan yet. */
export function newEffectLine({ of, currency, words, ...does }: NewEffect): TemplateResult {
  const { keydown, focusout, buttons } = draftRow<keyof EffectCells>(keys, does);
  const labels: Record<keyof EffectCells, string> = {
    tasks: "On task, by name",
    low: "Delay: low",
    likely: "Delay: likely",
    high: "Delay: high",
    cost: `Costs, ${currency}`,
  };
  const input = (key: keyof EffectCells): TemplateResult => {
    const names = key === "tasks";
    const unit = key === "cost" || names ? "" : ", in working days";
    return html`<label class=${names ? "wide" : ""}><span class="form-label">${labels[key]}</span>
      <input class="field ${names ? "text" : "number"}" type="text" autocomplete="off" spellcheck="false"
        inputmode=${names ? nothing : "decimal"} aria-label="New effect: ${labels[key].toLowerCase()}${unit}" data-cell=${key}
        role=${names ? "combobox" : nothing} aria-autocomplete=${names ? "list" : nothing} aria-expanded=${names ? "false" : nothing}
        aria-controls=${names ? "suggestions" : nothing} data-suggest=${names ? "tasks" : nothing}
        aria-describedby=${words === undefined ? nothing : message} /></label>`;
  };
  return html`<div class="new-row new-effect" data-draft=${does.opens} role="group" aria-label="New effect of ${of}" @keydown=${keydown} @focusout=${focusout}>
    ${keys.map(input)}
    ${buttons("new effect")}
    ${words === undefined ? nothing : html`<p class="message" id=${message} role="alert">${words}</p>`}
  </div>`;
}
