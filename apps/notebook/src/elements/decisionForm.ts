import { formatDate } from "@leeway/charts";
import type { Plan, Refusal } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { DecisionCells } from "../plan/recordDecision.ts";
import { unbroken } from "../words/unbroken.ts";
import { namedFields } from "./fieldMessage.ts";
import { pieceWords } from "./pieceWords.ts";

interface DecisionForm {
  plan: Plan;
  who: string;
  today: string;
  /** The date and the sum it is about: "Fri 19 Nov 2027 and EUR 663,000". */
  promised: string;
  /** What keeps them from approving it as it stands: "may approve up to EUR 640,000". */
  ahead: string | undefined;
  refusals: readonly Pick<Refusal, "rule" | "remedy">[];
  record: (cells: DecisionCells) => void;
  leave: () => void;
}

/** What somebody decides, filled in whole and then recorded: a decision is not made key by key. */
export function decisionForm({
  plan,
  who,
  today,
  promised,
  ahead,
  refusals,
  record,
  leave,
}: DecisionForm): TemplateResult {
  const everybody = [...plan.stakeholders, ...plan.people];
  const nameOf = (id: string): string => everybody.find((one) => one.id === id)?.name ?? id;
  const delegate = plan.stakeholders.find(({ id }) => id === who)?.delegate;
  const open = plan.objections.filter(({ state }) => state === "open");
  const line = (label: string, input: TemplateResult): TemplateResult =>
    html`<div class="entry-field"><label><span class="form-label">${label}</span>${input}</label></div>`;
  return html`<form class="entry-form decision" aria-labelledby="decision-title"
    @submit=${(event: SubmitEvent) => {
      event.preventDefault();
      if (event.target instanceof HTMLFormElement) record(cellsOf(event.target, who));
    }}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      event.preventDefault();
      leave();
    }}>
    <h3 id="decision-title">What ${nameOf(who)} decides</h3>
    <p>${promised}${ahead === undefined ? nothing : html` <strong>${ahead}</strong>`}</p>
    <div class="entry-fields">
      ${line(
        "Decision",
        html`<select name="decision">
          <option value="">choose</option>
          <option value="approve">approves</option>
          <option value="approve-subject-to">approves subject to conditions</option>
          <option value="rework">sends it back</option>
        </select>`,
      )}
      ${line("On", html`<input class="field date" name="date" autocomplete="off" value=${formatDate(today)} />`)}
      ${line("Conditions, or what to change", html`<textarea class="field text" name="conditions" rows="2"></textarea>`)}
      ${line("Conditions to be met by", html`<input class="field date" name="conditionsBy" autocomplete="off" />`)}
      ${
        delegate === undefined
          ? nothing
          : line(
              "Signed by",
              html`<select name="by"><option value="">${nameOf(who)}</option><option value=${delegate}>${nameOf(delegate)}, in their place</option></select>`,
            )
      }
    </div>
    ${
      open.length === 0
        ? nothing
        : html`<fieldset class="accepts"><legend>Open objections that they accept as they stand</legend>
            ${open.map(({ id, text }) => html`<label><input type="checkbox" name="accepts" value=${id} /> ${text ?? id}</label>`)}
          </fieldset>`
    }
    <div role="alert">${refusals.map(
      ({ rule, remedy }) => html`<p class="message">${namedFields(dated(rule))} ${pieceWords(remedy)}</p>`,
    )}</div>
    <p class="form-does"><button type="submit">Record it</button> <button type="button" @click=${leave}>Leave it</button></p>
    <p class="note">It is recorded with the plan as it is now, and covers no other. This is a record of what was said, not a signature: where one is needed, your own rules come first.</p>
  </form>`;
}

/** Days as the page writes them. */
function dated(words: string): string {
  return unbroken(words.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (day) => formatDate(day)));
}

function cellsOf(form: HTMLFormElement, who: string): DecisionCells {
  const data = new FormData(form);
  const text = (name: string): string => String(data.get(name) ?? "");
  return {
    who,
    decision: text("decision"),
    date: text("date"),
    conditions: text("conditions"),
    conditionsBy: text("conditionsBy"),
    by: text("by"),
    accepts: data.getAll("accepts").map(String),
  };
}
