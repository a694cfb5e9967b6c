import type { Plan } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { AcceptCells } from "../plan/acceptFinding.ts";

interface AcceptForm {
  plan: Plan;
  /** What would stand, in a few words. */
  about: string;
  words: { who?: string; why?: string };
  accept: (cells: AcceptCells) => void;
  leave: () => void;
}

/** Who lets a finding stand, and why; the day is that of the reader. */
export function acceptForm({ plan, about, words, accept, leave }: AcceptForm): TemplateResult {
  const everybody = [...plan.people, ...plan.stakeholders];
  const message = (key: "who" | "why") =>
    words[key] === undefined
      ? nothing
      : html`<p class="message" id=${`accept-${key}`} role="alert">${words[key]}</p>`;
  const told = (key: "who" | "why") => (words[key] === undefined ? nothing : `accept-${key}`);
  return html`<form class="entry-form accept no-paper" aria-label=${`Let it stand: ${about}`}
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      if (!(event.target instanceof HTMLFormElement)) return;
      const data = new FormData(event.target);
      accept({ who: String(data.get("who") ?? ""), why: String(data.get("why") ?? "") });
    }}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      leave();
    }}>
    <div class="entry-fields">
      <div class="entry-field"><label><span class="form-label">Accepted by</span><select name="who" aria-invalid=${words.who !== undefined} aria-describedby=${told("who")}>
        <option value="">choose</option>
        ${everybody.map(({ id, name }) => html`<option value=${id}>${name}</option>`)}
      </select></label>${message("who")}</div>
      <div class="entry-field"><label><span class="form-label">Why it may stay</span><textarea class="field text" name="why" rows="2" aria-invalid=${words.why !== undefined} aria-describedby=${told("why")}></textarea></label>${message("why")}</div>
    </div>
    <p class="form-does"><button type="submit">Let it stand</button> <button type="button" @click=${leave}>Leave it</button></p>
  </form>`;
}
