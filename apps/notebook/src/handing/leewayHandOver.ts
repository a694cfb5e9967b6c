import { groupDigits } from "@leeway/charts";
import type { Forecast, Plan } from "@leeway/core";
import { html, nothing } from "lit";
import { AskingElement } from "../elements/askingElement.ts";
import { saveText } from "../elements/saveText.ts";
import { nameFrom } from "../keeping/planFile.ts";
import type { What } from "./tables.ts";
import { today } from "./today.ts";
import type * as Writing from "./writeBrief.ts";

type Group = "brief" | "whole" | "tables";

const tables: readonly { what: What; name: string; says: string }[] = [
  { what: "tasks", name: "Tasks", says: "CSV" },
  { what: "register", name: "Register", says: "CSV" },
  { what: "forecast", name: "Forecast", says: "CSV" },
  { what: "forecast-json", name: "Forecast", says: "JSON" },
  { what: "milestones", name: "Milestones", says: "calendar" },
  { what: "communication", name: "Communication", says: "calendar" },
];

/** What goes to others: the brief, one approver's pre-brief, the whole notebook as a page, tables and calendars. */
export class LeewayHandOver extends AskingElement<"brief"> {
  static override properties = {
    ...AskingElement.properties,
    plan: { attribute: false },
    forecast: { attribute: false },
    text: { attribute: false },
    who: { state: true },
    open: { state: true },
    writing: { state: true },
    told: { state: true },
  };
  plan: Plan | undefined;
  /** Of the plan as it stands. */
  forecast: Forecast | undefined;
  /** The plan document. */
  text = "";
  who: string | undefined;
  open = false;
  writing: typeof Writing | undefined;
  /** What became of the last file, below the buttons it came from. */
  told: { by: Group; words: string } | undefined;
  /** The brief was asked for while it was still being written: it is saved once it is. */
  #due: "html" | "md" | undefined;
  protected readonly kind = "brief";
  protected readonly doing = "Writing the brief";

  protected question() {
    return { kind: "brief" as const, today: today() };
  }

  protected override render() {
    return html`<div class="handing">
      ${this.#brief()}
      ${this.#whole()}
      ${this.#files()}
      <p class="note">
        Findings, approvals and objections are part of the plan and go with it. What is handed over supports a decision;
        your own rules for money, contracts and safety come first.
      </p>
    </div>`;
  }

  protected override updated(): void {
    super.updated();
    if (this.#due !== undefined && this.#ready !== undefined) void this.#saveBrief(this.#due);
  }

  #brief() {
    const ready = this.#ready !== undefined;
    const coming = ready || (this.plan !== undefined && !this.stopped && this.asked?.failed === undefined);
    return html`<h3 id="brief-title">The brief</h3>
      <p>What those who decide need, on one page: what is asked, what it takes, what drives it, what was done about it and when you come back to them.</p>
      <div class="asking-line">${ready && !this.older ? html`<p class="asking quiet">${this.#standing()}</p>` : this.status()}</div>
      <div class="handing-row">
        <label>For
          <select @change=${(event: Event) => {
            if (event.target instanceof HTMLSelectElement) this.who = event.target.value || undefined;
          }}>
            <option value="">everyone: the brief</option>
            ${readers(this.plan).map(
              ({ id, name }) =>
                html`<option value=${id} ?selected=${this.who === id}>${name}: a pre-brief</option>`,
            )}
          </select>
        </label>
        <button type="button" ?disabled=${!coming} @click=${() => this.#saveBrief("html")}>Save as HTML<span class="unseen">: the brief</span></button>
        <button type="button" ?disabled=${!coming} @click=${() => this.#saveBrief("md")}>Save as Markdown<span class="unseen">: the brief</span></button>
      </div>
      ${this.#told("brief")}
      <details class="brief-here" ?open=${this.open} @toggle=${this.#toggle}>
        <summary>Read it here</summary>
        ${this.open ? this.#here() : nothing}
      </details>`;
  }

  #standing() {
    const { brief } = this.#ready ?? {};
    return brief === undefined
      ? ""
      : `From ${groupDigits(brief.stamp.iterations)} futures, seed ${brief.stamp.seed}.`;
  }

  #whole() {
    return html`<h3>The whole notebook</h3>
      <p>One page to be read anywhere without installing anything: the answer, its figures and tables, and a line to move to another level.</p>
      <div class="handing-row">
        <button type="button" ?disabled=${this.#ready === undefined} @click=${this.#saveWhole}>Save as one page</button>
      </div>
      ${this.#told("whole")}`;
  }

  #files() {
    const none = this.plan === undefined || this.forecast?.plan.sha256 !== this.plan.sha256;
    return html`<h3>Tables and calendars</h3>
      <p>To go on with elsewhere. A table of tasks or of the register loses nothing of the plan.</p>
      <div class="handing-row">
        ${tables.map(
          ({
            what,
            name,
            says,
          }) => html`<button type="button" ?disabled=${none} @click=${() => this.#saveTable(what)}>
            <span class="unseen">Save </span>${name}<span class="quiet">, ${says}</span>
          </button>`,
        )}
      </div>
      ${this.#told("tables")}`;
  }

  #told(by: Group) {
    return html`<p class="note handed" role="status">${this.told?.by === by ? this.told.words : ""}</p>`;
  }

  /** What can be written: the plan must be the one that was asked about. */
  get #ready(): Writing.Written | undefined {
    const { plan, who, asked } = this;
    if (plan === undefined || asked?.answer === undefined || asked.plan !== plan.sha256) return undefined;
    const known = readers(plan).some(({ id }) => id === who);
    return { ...asked.answer, plan, who: known ? who : undefined };
  }

  #here() {
    const ready = this.#ready;
    if (ready === undefined) return html`<p class="quiet">Follows when the brief is written.</p>`;
    if (this.writing === undefined) {
      void this.#load();
      return nothing;
    }
    return this.writing.view(ready);
  }

  async #load(): Promise<typeof Writing> {
    this.writing ??= await import("./writeBrief.ts");
    return this.writing;
  }

  #toggle = (event: Event): void => {
    if (event.target instanceof HTMLDetailsElement) this.open = event.target.open;
  };

  #saveBrief(format: "html" | "md"): Promise<void> {
    if (this.#ready === undefined) {
      this.#due = format;
      this.told = { by: "brief", words: "It is still being written, and is saved as soon as it is." };
      return Promise.resolve();
    }
    this.#due = undefined;
    return this.#saving("brief", async () => {
      const ready = this.#ready;
      if (ready === undefined) return undefined;
      const { writtenHtml, writtenMarkdown } = await this.#load();
      const text = format === "html" ? writtenHtml(ready) : writtenMarkdown(ready);
      const ending = `${ready.who === undefined ? "brief" : `pre-brief-${ready.who}`}.${format}`;
      return { text, type: format === "html" ? "text/html" : "text/markdown", ending };
    });
  }

  #saveWhole = (): Promise<void> =>
    this.#saving("whole", async () => {
      const ready = this.#ready;
      if (ready === undefined) return undefined;
      const { text } = this;
      const { writeNotebook } = await import("./page/writeNotebook.ts");
      return { text: writeNotebook(ready, text), type: "text/html", ending: "notebook.html" };
    });

  #saveTable(what: What): Promise<void> {
    return this.#saving("tables", async () => {
      const { text, plan, forecast } = this;
      if (plan === undefined || forecast === undefined) return undefined;
      const { tableFile } = await import("./tables.ts");
      return tableFile(what, text, plan, forecast, today());
    });
  }

  async #saving(
    by: Group,
    make: () => Promise<{ text: string; type: string; ending: string } | undefined>,
  ): Promise<void> {
    try {
      const file = await make();
      if (file === undefined) return;
      const name = nameFrom(this.plan?.title).replace(/plan\.yaml$/, file.ending);
      saveText(file.text, file.type, name);
      this.told = { by, words: `${name} was handed to your downloads.` };
    } catch (error) {
      const words = `It was not saved: ${error instanceof Error ? error.message : String(error)}`;
      this.told = { by, words };
    }
  }
}

/** Who may be told before the meeting: those who approve first, then the other stakeholders. */
function readers(plan: Plan | undefined): { id: string; name: string }[] {
  if (plan === undefined) return [];
  const names = new Map([...plan.people, ...plan.stakeholders].map(({ id, name }) => [id, name]));
  const ids = new Set([...plan.approvals.map(({ who }) => who), ...plan.stakeholders.map(({ id }) => id)]);
  return [...ids].map((id) => ({ id, name: names.get(id) ?? id }));
}

customElements.define("leeway-hand-over", LeewayHandOver);
