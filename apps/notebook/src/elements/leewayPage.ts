import type { Theme } from "@leeway/charts";
import { html, nothing, type PropertyValues, type TemplateResult } from "lit";
import type { Asker } from "../asking/asker.ts";
import type { ToldFinding } from "../asking/tellFindings.ts";
import type { Keeper } from "../keeping/keeper.ts";
import { boundsWords } from "../plan/boundsWords.ts";
import { isCurrent, isFading, type NotebookState, staleWords } from "../store/state.ts";
import type { Store } from "../store/store.ts";
import { announcement } from "../words/answerWords.ts";
import { arriving } from "./arriving.ts";
import { EstimateCurves } from "./estimateCurves.ts";
import { listen } from "./events.ts";
import { fileKeys } from "./fileKeys.ts";
import { countBySection } from "./findingSections.ts";
import { Folding } from "./folding.ts";
import { holdInPlace } from "./holdInPlace.ts";
import { inView } from "./inView.ts";
import { LeewayChanges } from "./leewayChanges.ts";
import type { OutlineEntry } from "./leewayOutline.ts";
import { openEnds } from "./openEnds.ts";
import { PageElement } from "./pageElement.ts";
import { pageTurns } from "./pageTurns.ts";
import { printing } from "./printing.ts";
import { sectionKeys, sectionKeyWords } from "./sectionKeys.ts";
import { skipLinks } from "./skipLinks.ts";
import { undoKeys } from "./undoKeys.ts";

/** Ms that tables and charts let an answer go first; they mostly change with it. */
const answerFirst = 250;
/** Ms that they wait for the text once the answer is there: it is asked to hurry then. */
const textSoon = 150;

/** The page: hands the store's state to its sections and their events back to the store. */
export class LeewayPage extends PageElement {
  static override properties = {
    store: { attribute: false },
    keeper: { attribute: false },
    asker: { attribute: false },
    state: { state: true },
    theme: { state: true },
    current: { state: true },
    findings: { state: true },
    compact: { state: true },
    trying: { state: true },
  };
  store: Store | undefined;
  keeper: Keeper | undefined;
  asker: Asker | undefined;
  /** The text the page opened on. */
  opening = "";
  state: NotebookState | undefined;
  theme: Theme = "light";
  current = "answer";
  compact = false;
  /** What is worth a look in the plan, as last worked out. */
  findings: readonly ToldFinding[] | undefined;
  /** The level that is being looked at on the curves. */
  trying: number | undefined;
  #folding = new Folding(this);
  #keeping = false;
  #end: (() => void)[] = [];
  #said: string | undefined;
  #watching = false;

  constructor() {
    super();
    this.addController(new EstimateCurves(this, () => this.state));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const follow = (): void => {
      this.theme = dark.matches ? "dark" : "light";
    };
    follow();
    dark.addEventListener("change", follow);
    this.#end.push(() => dark.removeEventListener("change", follow));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const end of this.#end.splice(0)) end();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("store")) this.#attach();
  }

  #attach(): void {
    const { store } = this;
    if (store === undefined) return;
    this.state = store.state;
    this.#look();
    this.#end.push(
      store.subscribe(() => {
        this.#giveWay(store.state);
        this.state = store.state;
        this.#levelKept(store.state);
      }),
      arriving(document),
      printing(document),
      sectionKeys(document),
      undoKeys(document, { undo: store.undo, redo: store.redo }),
      fileKeys(document, {
        open: () => void this.keeper?.open(),
        save: (as) => void this.keeper?.save(as),
      }),
    );
    listen(this, "plan-edit", ({ field, cells, edits, waits }) => store.edit(field, cells, edits, waits));
    listen(this, "plan-foresee", ({ edits }) => store.foresee(edits));
    listen(this, "plan-refuse", ({ field, pending }) => store.refuse(field, pending));
    listen(this, "plan-drop", ({ field }) => store.drop(field));
    listen(this, "level-try", ({ confidence }) => {
      this.trying = confidence;
      this.#keeping = false;
    });
    listen(this, "level-keep", () => this.#keepLevel(store));
    listen(this, "level-drop", () => {
      this.trying = undefined;
    });
    listen(this, "plan-text", ({ text }) => store.setText(text));
    listen(this, "plan-undo", () => store.undo());
    listen(this, "plan-redo", () => store.redo());
    listen(this, "run-stop", () => store.stop());
    listen(this, "run-resume", () => store.resume());
    listen(this, "tornado-stop", () => store.stopTornado());
    listen(this, "tornado-start", () => store.startTornado());
    listen(this, "changes-last", () => {
      const changes = this.querySelector("leeway-changes");
      if (changes instanceof LeewayChanges) changes.showLast();
    });
  }

  /** Tables and charts wait for the answer and for the text it answers, so that they are drawn once for both. */
  #giveWay({ computing, reading }: NotebookState): void {
    const was = { computing: this.state?.computing === true, reading: this.state?.reading === true };
    const worked = was.computing || was.reading;
    if (computing ? !was.computing : reading && !worked) pageTurns.hold(answerFirst);
    else if (worked && !computing && !reading) pageTurns.go();
    else if (was.computing && !computing) pageTurns.hold(textSoon);
  }

  /** What was read off the curve becomes the plan's: one step to undo. */
  #keepLevel(store: Store): void {
    const { trying } = this;
    if (trying === undefined || this.#keeping) return;
    if (trying === store.state.plan?.commitment.confidence) {
      this.trying = undefined;
      return;
    }
    this.#keeping = true;
    const path = "commitment.confidence";
    store.edit(path, { value: String(Math.round(trying * 100)) }, [{ path, value: trying }]);
  }

  /** The reading stands until the answer at its level is there, or until it is plain that there will be none. */
  #levelKept({ reading, computing }: NotebookState): void {
    if (!this.#keeping || reading || computing) return;
    this.#keeping = false;
    this.trying = undefined;
  }

  /** Keeps what is worth a look up to date; it comes after the answer. */
  #look(): void {
    const { asker } = this;
    if (asker === undefined) return;
    asker.want({ kind: "findings", today: today() });
    this.#end.push(
      asker.subscribe(() => {
        const found = asker.get("findings")?.answer;
        if (found !== undefined) this.findings = found;
      }),
    );
  }

  protected override updated(): void {
    if (this.state !== undefined) this.querySelector(":scope > .opening")?.remove();
    const title = this.state?.plan?.title;
    document.title = title === undefined ? "Leeway" : `${title} · Leeway`;
    if (!this.#watching) this.#watch();
  }

  /** Follows what the reader is at, once there is something to read. */
  #watch(): void {
    const answer = this.querySelector("leeway-answer");
    if (answer === null) return;
    this.#watching = true;
    const seen = new IntersectionObserver(
      (entries) => {
        // The page may have been busy while it went out of sight and back: the last is how it stands.
        const entry = entries.at(-1);
        this.compact = entry !== undefined && !entry.isIntersecting && entry.boundingClientRect.top < 0;
      },
      { rootMargin: "-40px 0px 0px 0px" },
    );
    seen.observe(answer);
    this.#end.push(
      () => seen.disconnect(),
      holdInPlace(this.querySelectorAll("section[id]")),
      inView(this.querySelectorAll("section[id]"), (id) => {
        this.current = id;
      }),
    );
  }

  protected override render() {
    const { state, theme } = this;
    if (state === undefined) return nothing;
    const forecast = state.detail;
    const errors = state.problems.some((problem) => problem.severity === "error");
    const fading = isFading(state);
    const title = state.plan?.title ?? state.answer?.forecast.plan.title ?? "A plan";
    const current = state.current ?? "";
    return html`
      ${skipLinks(state.plan)}
      <leeway-outline .entries=${outline(state, this.findings)} current=${this.current}></leeway-outline>
      <div class="report">
        <leeway-bar .state=${state} .trying=${this.trying} ?compact=${this.compact}></leeway-bar>
        <main data-busy=${state.reading || state.computing}>
          <section id="answer" aria-labelledby="title">
            <leeway-file .keeper=${this.keeper}></leeway-file>
            <h1 id="title" dir="auto" tabindex="-1">${title}</h1>
            <leeway-answer .state=${state} .trying=${this.trying} .keeper=${this.keeper}></leeway-answer>
            <leeway-begin .keeper=${this.keeper}></leeway-begin>
          </section>
          ${this.#texts("answer", "the answer")}
          ${this.#part("futures", "Futures", html`<leeway-futures .forecast=${forecast} .trying=${this.trying} theme=${theme} ?fading=${fading} ?readonly=${errors}></leeway-futures>`)}
          ${this.#part(
            "drivers",
            "What drives it",
            html`<div class="figures ${fading ? "settling" : ""}">
              <leeway-figure chart="driversBars" .answer=${forecast} theme=${theme}></leeway-figure>
            </div>
            <leeway-tornado .state=${state} theme=${theme}></leeway-tornado>`,
          )}
          ${this.#part("contingency", "Contingency", html`<leeway-contingency .asker=${this.asker} current=${current} theme=${theme}></leeway-contingency>`)}
          ${this.#section("purpose", "Purpose", "", errors)}
          ${this.#section("people", "People", "", errors)}
          ${this.#part("calendar", "Calendar", html`<leeway-calendar .plan=${state.plan} .stated=${state.stated} .forecast=${forecast} .pending=${state.pending} ?readonly=${errors}></leeway-calendar>${this.#worthALook("calendar", errors)}`)}
          ${this.#section("work", "Work", workNote(state), errors)}
          ${this.#section("register", "Register", registerNote, errors)}
          ${this.#part("responses", "Responses", html`<leeway-worth .asker=${this.asker} .plan=${state.plan} ?readonly=${errors} current=${current} theme=${theme}></leeway-worth>`)}
          ${this.#section("commitment", "Commitment", "", errors)}
          ${this.#part("level", "Why this level", html`<leeway-level .asker=${this.asker} current=${current} theme=${theme}></leeway-level>`)}
          ${this.#part(
            "money",
            "Money",
            html`<leeway-money .asker=${this.asker} current=${current} theme=${theme}></leeway-money>
            <leeway-budget .plan=${state.plan} .stated=${state.stated} .pending=${state.pending} ?readonly=${errors}></leeway-budget>`,
          )}
          ${this.#part("reach", "What it would take", html`<leeway-reach .asker=${this.asker} .plan=${state.plan} .forecast=${forecast} current=${current} theme=${theme}></leeway-reach>`)}
          ${this.#part("one-future", "One future", html`<leeway-one-future .asker=${this.asker} .plan=${state.plan} current=${current} theme=${theme}></leeway-one-future>`)}
          ${this.#section("sign-off", "Sign-off", "", errors)}
          ${this.#part("changes", "Changes", html`<leeway-changes .asker=${this.asker} .keeper=${this.keeper} .opening=${this.opening} .origin=${state.origin} .lastText=${state.previousText} current=${current} theme=${theme}></leeway-changes>`)}
          ${this.#part("hand-over", "Hand over", html`<leeway-hand-over .asker=${this.asker} .plan=${state.plan} .forecast=${forecast} .text=${state.text} current=${current} theme=${theme}></leeway-hand-over>`)}
          ${this.#part("text", "Plan text", html`<leeway-plan-text .text=${state.text} .problems=${state.problems}></leeway-plan-text>`)}
          <leeway-suggest .stated=${state.stated}></leeway-suggest>
          <p class="unseen no-paper" id="section-keys">${sectionKeyWords}</p>
        </main>
        <footer>
          <h2>Run stamp</h2>
          <leeway-stamp .forecast=${forecast}></leeway-stamp>
          <p class="note on-paper">${leftOut}</p>
        </footer>
      </div>
      <p class="unseen" role="status" id="announcement">${this.#announce(state)}</p>
    `;
  }

  #section(
    id: "purpose" | "people" | "work" | "register" | "commitment" | "sign-off",
    title: string,
    note: "" | TemplateResult,
    errors: boolean,
  ) {
    const { state } = this;
    if (state === undefined) return nothing;
    const forecast = state.detail;
    const fading = isFading(state);
    const body = {
      purpose: () => html`<leeway-purpose .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} ?readonly=${errors} ?fading=${fading}></leeway-purpose>`,
      people: () => html`<leeway-people .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} ?readonly=${errors} ?fading=${fading}></leeway-people>`,
      work: () => html`<leeway-tasks .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} .ends=${openEnds(this.findings, state.plan)} ?readonly=${errors} ?fading=${fading}></leeway-tasks>
        <leeway-together .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} ?readonly=${errors}></leeway-together>
        <leeway-interview .plan=${state.plan} .stated=${state.stated} .pending=${state.pending} ?readonly=${errors}></leeway-interview>`,
      register: () => html`<leeway-register .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} ?readonly=${errors} ?fading=${fading}></leeway-register>`,
      commitment:
        () => html`<leeway-commitment .plan=${state.plan} .forecast=${forecast} .trying=${this.trying}
        .pending=${state.pending} ?readonly=${errors} ?fading=${fading}></leeway-commitment>`,
      "sign-off":
        () => html`<leeway-sign-off .plan=${state.plan} .stated=${state.stated} .forecast=${forecast}
        .pending=${state.pending} .findings=${this.findings} .keeper=${this.keeper} ?current=${isSettled(state)}
        ?readonly=${errors} ?fading=${fading}></leeway-sign-off>`,
    }[id];
    return this.#part(
      id,
      title,
      html`${note === "" ? nothing : html`<p class="note">${note}</p>`}
      ${errors ? html`<p class="stale-mark">The plan text has problems to put right first; this shows the last plan that could be read.</p>` : nothing}
      ${body()}
      ${this.#worthALook(id, errors)}`,
    );
  }

  #worthALook(section: string, errors: boolean) {
    const { state, findings } = this;
    return html`<leeway-findings section=${section} .findings=${findings} .plan=${state?.plan} .stated=${state?.stated} ?readonly=${errors}></leeway-findings>`;
  }

  /** A section that folds, and the free texts below it. */
  #part(id: string, title: string, body: unknown) {
    return html`${this.#folding.section(id, title, body)}${this.#texts(id, title)}`;
  }

  #texts(id: string, name: string) {
    const { state } = this;
    if (state === undefined || id === "text") return nothing;
    const errors = state.problems.some((problem) => problem.severity === "error");
    return html`<leeway-texts below=${id} name=${name} .plan=${state.plan} .stated=${state.stated} .pending=${state.pending} ?readonly=${errors}></leeway-texts>`;
  }

  /** Only a settled answer, or the reason there is none, is worth interrupting a reader for. */
  #announce(state: NotebookState): string {
    const stale = staleWords(state);
    if (stale !== undefined) this.#said = stale;
    else if (state.answer?.stage === "full" && isCurrent(state)) {
      this.#said = announcement(state.answer.forecast, state.previous);
    }
    return this.#said ?? "";
  }
}

/** Said on paper only. */
const leftOut =
  "Left out on paper, and to be found on the page: the plan text, the tables behind the charts, the details of tasks and of benefits, spans to watch and estimates that move together, owner, dates and effects under each row of the register, who answers for single tasks, earlier versions, and what is for handing over.";

const registerNote = html`Low, likely and high are the delay in working days. A ticked response is paid for, and its
  effect counts; what each is worth stands under <a href="#responses">Responses</a>.`;

function workNote(state: NotebookState): TemplateResult {
  const bounds = state.plan === undefined ? "" : boundsWords(state.plan);
  return html`Durations in working days unless a row says otherwise. ${bounds} A bar runs from the middle start to the middle finish of all futures (the medians); its fine line holds the finish of 8 futures in 10 (P10 to P90). A diamond is the plan as written. The line through all rows is the committed date, the dotted one the date asked for.
    <span class="no-paper">Arrow keys and Enter go from row to row; the Details of a row hold who works on it, how it waits for others, what it costs, its dates and how far it is.</span>`;
}

function outline(state: NotebookState, findings: readonly ToldFinding[] | undefined): OutlineEntry[] {
  const looks = countBySection(findings ?? []);
  const waiting = (...starts: string[]): number =>
    [...state.pending.keys()].filter((path) => starts.some((start) => path.startsWith(start))).length;
  const entries: OutlineEntry[] = [
    { id: "answer", name: "Answer", waiting: 0 },
    { id: "futures", name: "Futures", waiting: 0 },
    { id: "drivers", name: "Drivers", waiting: 0 },
    { id: "contingency", name: "Contingency", waiting: 0 },
    {
      id: "purpose",
      name: "Purpose",
      waiting: waiting("title", "start", "currency", "purpose", "benefits", "appraisal"),
    },
    { id: "people", name: "People", waiting: waiting("people", "respectCapacity", "stakeholders", "phases") },
    { id: "calendar", name: "Calendar", waiting: waiting("calendar") },
    { id: "work", name: "Work", waiting: waiting("tasks", "statusDate", "intervals", "correlations") },
    { id: "register", name: "Register", waiting: waiting("risks", "assumptions") },
    { id: "responses", name: "Responses", waiting: 0 },
    {
      id: "commitment",
      name: "Commitment",
      waiting: waiting("commitment.confidence", "commitment.finish", "commitment.budget"),
    },
    { id: "level", name: "Why this level", waiting: 0 },
    {
      id: "money",
      name: "Money",
      waiting: waiting(
        "overheads",
        "lateness",
        "commitment.funds",
        "commitment.reserve",
        "commitment.holder",
        "commitment.releaseRule",
      ),
    },
    { id: "reach", name: "What it takes", waiting: 0 },
    { id: "one-future", name: "One future", waiting: 0 },
    {
      id: "sign-off",
      name: "Sign-off",
      waiting: waiting("decision", "approvals", "objections", "returnTriggers", "changes"),
    },
    { id: "changes", name: "Changes", waiting: 0 },
    { id: "hand-over", name: "Hand over", waiting: 0 },
    {
      id: "text",
      name: "Plan text",
      waiting: state.problems.filter((problem) => problem.severity === "error").length,
    },
  ];
  return entries.map((entry) => ({ ...entry, looks: looks.get(entry.id) ?? 0 }));
}

/** The answer in full is that of the plan as it stands, and nothing entered waits to be taken in. */
function isSettled(state: NotebookState): boolean {
  const { reading, computing, answer } = state;
  const whole = isCurrent(state) && answer?.stage === "full" && !reading && !computing;
  return whole && staleWords(state) === undefined;
}

/** By the reader's own clock: what is overdue depends on it. */
function today(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

customElements.define("leeway-page", LeewayPage);
