import {
  type Askable,
  type Interview,
  type InterviewKey,
  type Opinion,
  type Plan,
  SHAPES,
} from "@leeway/core";
import { html, nothing } from "lit";
import { today } from "../handing/today.ts";
import type { Edit } from "../plan/edit.ts";
import { statedAt } from "../plan/stated.ts";
import type { Pending } from "../store/state.ts";
import type * as Parts from "./interviewParts.ts";
import "./leewayEstimateCurve.ts";
import { PageElement } from "./pageElement.ts";
import { RowTools } from "./rowTools.ts";

/** What the questions are about, on the buttons that go back to one. */
const names: Record<InterviewKey, string> = {
  basis: "Why they know",
  high: "High",
  low: "Low",
  likely: "Likely",
  dissent: "Dissent",
};

/**
 * One person is asked about one task at a time, by the questions of the library: the basis, the value exceeded one time
 * in ten, the one stayed below one time in ten, the likely one last. What they say is read back with its curve and then
 * written beside the task, one step to undo. The task's own estimate stays until it is settled, unless told otherwise.
 */
export class LeewayInterview extends PageElement {
  static override properties = {
    plan: { attribute: false },
    stated: { attribute: false },
    pending: { attribute: false },
    readonly: { type: Boolean },
    open: { type: Boolean },
    who: { state: true },
    which: { state: true },
    interview: { state: true },
    settles: { state: true },
    told: { state: true },
    parts: { state: true },
  };
  plan: Plan | undefined;
  stated: unknown;
  pending: ReadonlyMap<string, Pending> = new Map();
  readonly = false;
  open = false;
  /** Id of who is asked. */
  who = "";
  /** `TASK duration`: what they are asked about. */
  which = "";
  interview: Interview | undefined;
  /** What is said becomes the task's estimate too. */
  settles = false;
  told = "";
  parts: typeof Parts | undefined;
  #tools = new RowTools(this, { move: () => undefined, remove: () => ({ refused: "" }), name: () => "" });

  protected override render() {
    const { plan, readonly } = this;
    if (plan === undefined) return nothing;
    return html`<div class="interview">
      <button type="button" class="adds-button" aria-expanded=${this.open ? "true" : "false"} aria-controls="interview" ?disabled=${readonly}
        @click=${this.#toggle}>Ask somebody for their estimate</button>
      <div id="interview" ?hidden=${!this.open}>${this.open ? this.#inside(plan) : nothing}</div>
      <p class="rows-told" role="status">${this.told}</p>
    </div>`;
  }

  #inside(plan: Plan) {
    const people = [...plan.people, ...plan.stakeholders];
    if (people.length === 0)
      return html`<p class="quiet">Nobody can be asked yet: add who does the work under <a href="#people">People</a>.</p>`;
    if (this.parts === undefined) return html`<p class="quiet">One moment.</p>`;
    return this.interview === undefined ? this.#choose(plan, people) : this.#ask(this.interview);
  }

  #choose(plan: Plan, people: readonly { id: string; name: string }[]) {
    const who = people.some(({ id }) => id === this.who) ? this.who : (people[0]?.id ?? "");
    const asks = this.#asks(plan);
    const which = this.#next(plan, asks, who);
    if (asks.length === 0)
      return html`<p class="quiet">Nothing is left to be asked about: every task is done, or a milestone.</p>`;
    return html`<form class="interview-row" @submit=${(event: Event) => {
      event.preventDefault();
      this.#begin(
        asks.find((one) => keyOf(one) === which),
        who,
      );
    }}>
      <label>Who is asked
        <select data-first @change=${(event: Event) => {
          if (event.target instanceof HTMLSelectElement) this.who = event.target.value;
          this.which = "";
        }}>${people.map(({ id, name }) => html`<option value=${id} .selected=${id === who}>${name}</option>`)}</select></label>
      <label>About
        <select @change=${(event: Event) => {
          if (event.target instanceof HTMLSelectElement) this.which = event.target.value;
        }}>${asks.map(
          (one) =>
            html`<option value=${keyOf(one)} .selected=${keyOf(one) === which}>${one.name}, ${one.of === "cost" ? "cost" : one.unitWords}${said(plan, one, who) ? " (asked already)" : ""}</option>`,
        )}</select></label>
      <button type="submit">Begin</button>
    </form>`;
  }

  #ask(interview: Interview) {
    const { question, again, subject, order } = interview;
    if (question === undefined) return nothing;
    const asked = this.#personName(subject.by);
    if (question.key === "confirm") return this.#readBack(interview);
    const key = question.key;
    const words = key === "basis" || key === "dissent";
    const before = interview.answers[key];
    const step = (this.parts?.INTERVIEW_ORDER.indexOf(key) ?? 0) + 1;
    return html`<form class="interview-question" @submit=${this.#answer}>
      <p class="quiet">${asked} on “${subject.name}”, question ${step} of 5</p>
      <label><span class="question">${question.text}</span>
        ${
          words
            ? html`<textarea data-first name="answer" rows="2" data-typing="true" aria-describedby="interview-help" .value=${String(before ?? "")}></textarea>`
            : html`<input data-first class="field" name="answer" type="text" inputmode="decimal" autocomplete="off" aria-describedby="interview-help"
              aria-invalid=${again === undefined ? nothing : "true"} .value=${String(before ?? "")} data-shown="" />`
        }</label>
      <p class="note" id="interview-help">${question.help}</p>
      ${again === undefined ? nothing : html`<p class="message" role="alert">${again}</p>`}
      <p class="interview-row"><button type="submit">${key === "dissent" ? "Read it back" : "Next"}</button>
        ${order.length > 0 && key !== "basis" ? html`<button type="button" @click=${() => this.#take("back")}>Back</button>` : nothing}
        <button type="button" @click=${this.#stop}>Stop<span class="unseen"> the questions</span></button></p>
    </form>`;
  }

  #readBack(interview: Interview) {
    const { subject, answers, again } = interview;
    const opinion = this.parts?.answerInterview(interview, "yes").opinion;
    const estimate = opinion?.estimate;
    const of = subject.of === "cost" ? ("costs" as const) : ("takes" as const);
    return html`<form class="interview-question" @submit=${(event: Event) => {
      event.preventDefault();
      this.#write(opinion, subject);
    }}>
      <p class="question" tabindex="-1" data-first>Is that what ${this.#personName(subject.by)} means of “${subject.name}”?</p>
      ${
        estimate === undefined || estimate.kind === "outcomes"
          ? nothing
          : html`<leeway-estimate-curve .estimate=${estimate} .about=${{ name: subject.name, unitWords: subject.unitWords, of }}></leeway-estimate-curve>`
      }
      <dl>${(this.parts?.INTERVIEW_ORDER ?? []).map(
        (
          key,
        ) => html`<div><dt>${names[key]}</dt><dd>${answers[key] ?? "none"}${typeof answers[key] === "number" ? ` ${subject.unitWords}` : ""}
          <button type="button" @click=${() => this.#take(key)}>Correct<span class="unseen">: ${names[key]}</span></button></dd></div>`,
      )}</dl>
      ${again === undefined ? nothing : html`<p class="message" role="alert">${again}</p>`}
      <label class="settles"><input type="checkbox" .checked=${this.settles} @change=${(event: Event) => {
        if (event.target instanceof HTMLInputElement) this.settles = event.target.checked;
      }} /> It becomes the task's estimate too</label>
      <p class="interview-row"><button type="submit">Write it down</button>
        <button type="button" @click=${this.#stop}>Stop<span class="unseen"> without writing anything</span></button></p>
    </form>`;
  }

  #asks(plan: Plan): Askable[] {
    return plan.tasks.flatMap((task) => this.parts?.askableOf(plan, task) ?? []);
  }

  /** What was chosen, else the first that this person has not spoken of. */
  #next(plan: Plan, asks: readonly Askable[], who: string): string {
    const chosen = asks.find((one) => keyOf(one) === this.which);
    const open = asks.find((one) => one.of !== "cost" && !said(plan, one, who));
    const next = chosen ?? open ?? asks[0];
    return next === undefined ? "" : keyOf(next);
  }

  #personName(id: string): string {
    return (
      [...(this.plan?.people ?? []), ...(this.plan?.stakeholders ?? [])].find((one) => one.id === id)?.name ??
      id
    );
  }

  #toggle = (): void => {
    this.open = !this.open;
    this.told = "";
    if (!this.open) return;
    void import("./interviewParts.ts").then((parts) => {
      this.parts = parts;
      this.#focus();
    });
  };

  #begin(askable: Askable | undefined, by: string): void {
    if (askable === undefined) return;
    this.who = by;
    this.settles = false;
    this.told = "";
    this.interview = this.parts?.beginInterview({ ...askable, by, date: today() });
    this.#focus();
  }

  #answer = (event: Event): void => {
    event.preventDefault();
    const input = this.querySelector<HTMLInputElement | HTMLTextAreaElement>("[name=answer]");
    if (input !== null) this.#take(input.value);
  };

  #take(answer: string): void {
    if (this.interview === undefined || this.parts === undefined) return;
    const before = this.interview.question?.key;
    this.interview = this.parts.answerInterview(this.interview, answer);
    // An answer that cannot be read stays to be corrected; the next question begins empty.
    if (this.interview.question?.key !== before || answer === "back") this.#renew();
    this.#focus();
  }

  /** The value that stands in the field belongs to one question. */
  #renew(): void {
    void this.updateComplete.then(() => {
      const input = this.querySelector<HTMLInputElement | HTMLTextAreaElement>("[name=answer]");
      const key = this.interview?.question?.key;
      if (input === null || key === undefined || key === "confirm") return;
      input.value = String(this.interview?.answers[key] ?? "");
    });
  }

  #stop = (): void => {
    this.interview = undefined;
    this.told = "Nothing was written.";
    this.#focus();
  };

  #write(opinion: Opinion | undefined, subject: Interview["subject"]): void {
    const { settles } = this;
    this.#tools.act(
      () => {
        const at = this.plan?.tasks.findIndex(({ id }) => id === subject.task) ?? -1;
        const task = this.plan?.tasks[at];
        if (task === undefined || opinion === undefined || this.parts === undefined)
          return { refused: "The task is no longer part of the plan: nothing was written." };
        const written = this.parts.writeOpinion(opinion, task, usual(this.stated));
        const edits: Edit[] = [{ path: `tasks[${at}].opinions`, value: written, add: "last" }];
        if (settles) edits.push(...settled(at, opinion, written));
        return {
          edits,
          told: `Written down: ${this.#personName(opinion.by)} on “${task.name}”. ${settles ? "It is the task's estimate now." : "The task's estimate is as it was."} Undo takes it back.`,
        };
      },
      () => {
        this.interview = undefined;
        this.which = "";
        this.#focus();
      },
    );
  }

  #focus(): void {
    void this.updateComplete.then(() => {
      const first = this.querySelector<HTMLElement>("[data-first]");
      first?.focus();
      if (first instanceof HTMLInputElement) first.select();
    });
  }
}

function keyOf({ task, of }: Askable): string {
  return `${task} ${of}`;
}

function said(plan: Plan, { task, of }: Askable, who: string): boolean {
  const opinions = plan.tasks.find(({ id }) => id === task)?.opinions ?? [];
  return opinions.some((one) => one.by === who && one.of === of);
}

/** The plan's own shape and bounds, which an opinion need not repeat. */
function usual(stated: unknown): Parameters<typeof Parts.writeOpinion>[2] {
  const said = statedAt(stated, "estimates");
  const { shape, bounds }: { shape?: unknown; bounds?: unknown } =
    typeof said === "object" && said !== null ? said : {};
  return {
    shape: SHAPES.find((one) => one === shape),
    bounds: (["extremes", "p10-p90", "p5-p95"] as const).find((one) => one === bounds),
  };
}

/** The opinion as the task's own estimate, with who said so and why they would know. */
function settled(at: number, { of, by, basis }: Opinion, written: object): Edit[] {
  const keys = ["low", "likely", "high", "shape", "bounds", "unit"];
  const value = Object.fromEntries(Object.entries(written).filter(([key]) => keys.includes(key)));
  return [
    { path: `tasks[${at}].${of}`, value },
    ...(of === "cost" ? [] : [{ path: `tasks[${at}].estimatedBy`, value: by }]),
    ...(basis === undefined || of === "cost" ? [] : [{ path: `tasks[${at}].basis`, value: basis }]),
  ];
}

customElements.define("leeway-interview", LeewayInterview);
