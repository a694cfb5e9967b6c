import { html, nothing, type TemplateResult } from "lit";
import type { Asked, Asker } from "../asking/asker.ts";
import type { Kind, Question } from "../asking/questions.ts";
import { KeptFocus } from "./keptFocus.ts";
import { LongElement } from "./longElement.ts";

const inSight = new WeakMap<Element, (near: boolean) => void>();
const sight = new IntersectionObserver(
  (entries) => {
    for (const { target, isIntersecting } of entries) inSight.get(target)?.(isIntersecting);
  },
  { rootMargin: "30% 0px" },
);

/** What paper says in the place of what is not there, and of what is older than the rest. */
const onPaper = {
  unanswered:
    "Not worked out when this was printed. Go to this section on the page, wait for its answer, and print again.",
  older:
    "This belongs to the plan before its last change. On the page the new answer follows; print again then.",
};

/**
 * The base of sections that show what a question about the plan brings: worked out while they are in sight, or near,
 * and not otherwise; what was worked out for an older plan stays, marked as such, until the new answer is there.
 */
export abstract class AskingElement<K extends Kind> extends LongElement {
  static override properties = {
    asker: { attribute: false },
    current: { type: String },
    theme: { type: String },
    near: { state: true },
    stopped: { state: true },
  };
  asker: Asker | undefined;
  /** Hash of the plan as it stands. */
  current = "";
  theme: "light" | "dark" = "light";
  near = false;
  /** The reader stopped it: it starts again only when asked. */
  stopped = false;
  #end: (() => void) | undefined;

  constructor() {
    super();
    new KeptFocus(this);
  }

  protected abstract readonly kind: K;
  /** What is asked now; undefined: nothing. */
  protected abstract question(): Extract<Question, { kind: K }> | undefined;
  /** How the status names the work: "Splitting the contingency". */
  protected abstract readonly doing: string;

  override connectedCallback(): void {
    super.connectedCallback();
    this.dataset.unanswered = onPaper.unanswered;
    this.dataset.older = onPaper.older;
    inSight.set(this, (near) => {
      this.near = near;
    });
    sight.observe(this);
    this.addEventListener("figure-drawn", this.#keepRoom);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    sight.unobserve(this);
    this.removeEventListener("figure-drawn", this.#keepRoom);
    this.asker?.unwant(this.kind);
    this.#end?.();
    this.#end = undefined;
  }

  protected override updated(): void {
    const { asker, kind } = this;
    this.#keepRoom();
    this.toggleAttribute("older", this.older);
    if (asker === undefined) return;
    this.#end ??= asker.subscribe(() => this.requestUpdate());
    const question = this.near && !this.stopped ? this.question() : undefined;
    if (question === undefined) asker.unwant(kind);
    else asker.want(question);
  }

  /** Until there is an answer, its figures drawn, its room is kept, so that nothing below jumps when it comes. */
  #keepRoom = (): void => {
    const drawn = [...this.querySelectorAll("leeway-figure")].every((figure) => figure.hasAttribute("drawn"));
    const answered = this.asked?.answer !== undefined && drawn;
    this.toggleAttribute("answered", answered || this.question() === undefined);
  };

  protected get asked(): Asked<K> | undefined {
    return this.asker?.get(this.kind);
  }

  /** What is shown belongs to the plan before the last change. */
  protected get older(): boolean {
    const { asked } = this;
    return asked?.answer !== undefined && asked.plan !== this.current;
  }

  /** How far the work is, with a way to stop it; what went wrong, at whatever length; or nothing. */
  protected status(): TemplateResult | typeof nothing {
    const { asked, doing } = this;
    if (asked?.progress !== undefined) {
      return html`<p class="asking">
        <label>${doing} <progress max="1" .value=${asked.progress}></progress></label>
        <button type="button" @click=${() => this.#stop(true)}>Stop<span class="unseen">: ${doing}</span></button>
      </p>`;
    }
    if (asked?.failed !== undefined)
      return html`<p class="asking at-length stale-mark">It failed: ${asked.failed}</p>`;
    const [problem] = asked?.answer === undefined || this.older ? (asked?.problems ?? []) : [];
    if (problem !== undefined)
      return html`<p class="asking at-length quiet">${`${problem.rule} ${problem.remedy}`.trim()}</p>`;
    if (this.stopped) {
      return html`<p class="asking quiet">
        ${this.older ? "This belongs to the plan before your last change." : "You stopped it."}
        <button type="button" @click=${() => this.#stop(false)}>Work it out</button>
      </p>`;
    }
    if (asked?.answer === undefined)
      return html`<p class="asking quiet">Worked out once the answer is there.</p>`;
    return this.older
      ? html`<p class="asking quiet">This belongs to the plan before your last change.</p>`
      : nothing;
  }

  #stop(stopped: boolean): void {
    this.stopped = stopped;
  }
}
