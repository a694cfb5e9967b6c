import { formatDate } from "@leeway/charts";
import { html, nothing } from "lit";
import { PageElement } from "../elements/pageElement.ts";
import { today } from "../handing/today.ts";
import type { Keeper } from "../keeping/keeper.ts";
import { nameFrom } from "../keeping/planFile.ts";
import type { ExampleName } from "./examples.ts";
import { firstDay } from "./firstDay.ts";
import type { Strand, Worry } from "./ownPlan.ts";

const away = "leeway-tour-away";
const examples: readonly { name: ExampleName; says: string }[] = [
  { name: "clinic", says: "a clinic opens" },
  { name: "food-bank", says: "a food bank moves" },
  { name: "ferry", says: "a ferry sells tickets" },
];
const rows = [1, 2, 3] as const;

/** Three steps for who is here the first time, a plan of one's own from five questions, and the other examples. */
export class LeewayBegin extends PageElement {
  static override properties = {
    keeper: { attribute: false },
    example: { state: true },
    away: { state: true },
    problems: { state: true },
    told: { state: true },
  };
  keeper: Keeper | undefined;
  example = false;
  away = wasPutAway();
  problems: readonly string[] = [];
  told = "";
  #end: (() => void) | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#end?.();
    this.#end = undefined;
  }

  protected override willUpdate(): void {
    const { keeper } = this;
    if (keeper === undefined || this.#end !== undefined) return;
    this.example = keeper.state.safety.kind === "example";
    this.#end = keeper.subscribe(() => {
      // The tour stays for the visit it began in: what it says is to be tried.
      if (keeper.state.safety.kind === "example") this.example = true;
    });
  }

  protected override render() {
    return html`${this.example && !this.away ? this.#tour() : nothing}
      <details class="begin">
        <summary>Begin a plan of your own, or another example</summary>
        ${this.#own()}
        <p class="begin-other"><strong>Another example</strong></p>
        <div class="handing-row">
          ${examples.map(
            ({ name, says }) =>
              html`<button type="button" @click=${() => this.#take(name)}>Open: ${says}</button>`,
          )}
        </div>
      </details>
      <p class="note" role="status">${this.told}</p>`;
  }

  #tour() {
    return html`<div class="tour" role="group" aria-label="Three things to try">
      <ol>
        <li><a href="#work">Change an estimate</a> and see the date move.</li>
        <li>See <a href="#drivers">what drives it</a>, and <a href="#changes">why it moved</a>.</li>
        <li><a href="#responses">Adopt a response</a>, then <a href="#hand-over">hand over the brief</a>.</li>
      </ol>
      <button type="button" @click=${this.#putAway}>Put these away</button>
    </div>`;
  }

  #own() {
    return html`<form class="own" novalidate @submit=${this.#start}>
      <p class="note">Five questions make a plan that already forecasts. Everything can be changed afterwards, and Undo brings back the plan you have here. Save it first if you want both.</p>
      <p><label>What is it called? <input name="title" autocomplete="off" /></label></p>
      <p><label>First day on which work may happen <input name="start" autocomplete="off" value=${formatDate(firstDay(today()))} /></label></p>
      <p><label>What has to be finished? <input name="finish" autocomplete="off" /></label></p>
      <fieldset aria-describedby="own-low-high">
        <legend>The strands of work, in working days. They run side by side until you say what waits for what.</legend>
        <p class="note" id="own-low-high">Low: one time in ten it takes less. High: one time in ten it takes more. Likely: the usual case, between them.</p>
        ${rows.map((n) => this.#row("strand", `Strand ${n}`, n))}
      </fieldset>
      <fieldset aria-describedby="own-low-high">
        <legend>What could go wrong: its chance, and the working days it would take, low and high as above. May stay empty.</legend>
        ${rows.map((n) => this.#row("worry", `Trouble ${n}`, n))}
      </fieldset>
      ${
        this.problems.length === 0
          ? nothing
          : html`<div class="message" role="alert"><ul>${this.problems.map((words) => html`<li>${words}</li>`)}</ul></div>`
      }
      <button type="submit">Make the plan</button>
    </form>`;
  }

  #row(kind: "strand" | "worry", label: string, n: number) {
    const cells = kind === "worry" ? ["chance", "low", "likely", "high"] : ["low", "likely", "high"];
    return html`<div class="own-row">
      <label class="own-name">${label} <input name="${kind}-${n}-name" autocomplete="off" /></label>
      ${cells.map(
        (
          cell,
        ) => html`<label>${cell === "chance" ? "chance, %" : cell}<span class="unseen"> of ${label}</span>
          <input class="own-days" name="${kind}-${n}-${cell}" inputmode="decimal" autocomplete="off" /></label>`,
      )}
    </div>`;
  }

  #start = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const data = new FormData(event.target);
    const read = (name: string): string => String(data.get(name) ?? "");
    const strand = (kind: string, n: number): Strand => ({
      name: read(`${kind}-${n}-name`),
      low: read(`${kind}-${n}-low`),
      likely: read(`${kind}-${n}-likely`),
      high: read(`${kind}-${n}-high`),
    });
    const { ownPlan } = await import("./ownPlan.ts");
    const title = read("title");
    const made = ownPlan({
      title,
      start: read("start"),
      finish: read("finish"),
      strands: rows.map((n) => strand("strand", n)),
      worries: rows.map((n): Worry => ({ ...strand("worry", n), chance: read(`worry-${n}-chance`) })),
    });
    if ("problems" in made) {
      this.problems = made.problems;
      return;
    }
    this.problems = [];
    const name = nameFrom(title);
    // It is a plan now, and asked no more.
    event.target.reset();
    await this.#open(name, made.text, `Made ${name} from your answers. Save writes it to a file.`);
  };

  async #take(name: ExampleName): Promise<void> {
    const { examples: texts } = await import("./examples.ts");
    await this.#open(`${name}.plan.yaml`, texts[name]);
  }

  async #open(name: string, text: string, words?: string): Promise<void> {
    await this.keeper?.drop(async () => ({ name, text }), words);
    const details = this.querySelector("details");
    if (details !== null) details.open = false;
    // To what came of it: the answer is above, and on a small window out of sight.
    document.querySelector("#answer")?.scrollIntoView();
    document.querySelector<HTMLElement>("#answer > h1")?.focus({ preventScroll: true });
  }

  #putAway = (): void => {
    this.away = true;
    this.querySelector("summary")?.focus();
    try {
      localStorage.setItem(away, "1");
    } catch {
      // Storage refused: it is away for this visit.
    }
  };
}

function wasPutAway(): boolean {
  try {
    return localStorage.getItem(away) !== null;
  } catch {
    return false;
  }
}

customElements.define("leeway-begin", LeewayBegin);
