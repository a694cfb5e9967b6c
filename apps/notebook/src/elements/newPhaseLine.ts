import type { Plan } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import { newPhase } from "../plan/phases.ts";
import { send } from "./events.ts";

interface NewPhase {
  host: HTMLElement;
  plan: Plan;
  stated: unknown;
  readonly: boolean;
  told: (words: string) => void;
}

/** A phase more, by its name: it is there with Enter, and empty until tasks are added to it or moved into it. */
export function newPhaseLine({ host, stated, readonly, told }: NewPhase): TemplateResult | typeof nothing {
  if (readonly) return nothing;
  return html`<form class="new-phase" @submit=${(event: SubmitEvent) => {
    event.preventDefault();
    const input = event.target instanceof HTMLFormElement ? event.target.querySelector("input") : null;
    if (input === null) return;
    const made = newPhase(input.value, stated);
    if ("words" in made) {
      told(made.words);
      input.focus();
      return;
    }
    const name = input.value.trim();
    input.value = "";
    send(host, "plan-edit", { field: "phases", cells: {}, edits: made.edits });
    told(`Added the phase “${name}”. It has no task yet.`);
  }}>
    <label><span class="form-label">A phase more</span> <input class="field text" name="phase" autocomplete="off" spellcheck="false" aria-label="New phase: name" /></label>
    <button type="submit">Add the phase</button>
  </form>`;
}
