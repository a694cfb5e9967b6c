import { formatDate } from "@leeway/charts";
import type { AcceptedFinding, Plan } from "@leeway/core";
import { html, nothing, type TemplateResult } from "lit";
import type { ToldFinding } from "../asking/tellFindings.ts";
import { today } from "../handing/today.ts";
import { type AcceptCells, acceptances, acceptFinding, acceptNoLonger } from "../plan/acceptFinding.ts";
import type { Edit } from "../plan/edit.ts";
import { type FindingLine, findingLines } from "../words/findingLines.ts";
import { unbroken } from "../words/unbroken.ts";
import { acceptForm } from "./acceptForm.ts";
import { codeWords } from "./codeWords.ts";
import { send } from "./events.ts";
import { sectionOf } from "./findingSections.ts";
import { LongElement } from "./longElement.ts";
import { pieceWords } from "./pieceWords.ts";
import { rowId } from "./rowId.ts";

/** How many names a line holds; the others unfold. */
const most = 12;

/** What is worth a look in one section, at its foot; below it what somebody let stand. */
export class LeewayFindings extends LongElement {
  static override properties = {
    findings: { attribute: false },
    plan: { attribute: false },
    stated: { attribute: false },
    section: { type: String },
    readonly: { type: Boolean },
    opened: { state: true },
    words: { state: true },
    told: { state: true },
  };
  findings: readonly ToldFinding[] | undefined;
  plan: Plan | undefined;
  stated: unknown;
  section = "";
  readonly = false;
  /** The line for which somebody is about to answer. */
  opened: string | undefined;
  words: { who?: string; why?: string } = {};
  told = "";

  protected override render() {
    const { findings, plan } = this;
    if (findings === undefined) return nothing;
    const own = findings.filter((one) => one.accepted === undefined && sectionOf(one) === this.section);
    const stand =
      plan === undefined
        ? []
        : acceptances(plan, findings).filter(
            ({ lets: [first] }) => first !== undefined && sectionOf(first) === this.section,
          );
    if (own.length === 0 && stand.length === 0) return nothing;
    const lines = findingLines(own);
    const count = (severity: FindingLine["severity"], one: string): string => {
      const n = lines.filter((line) => line.severity === severity).length;
      return n === 0 ? "" : `${n} ${n === 1 ? one : `${one}s`}`;
    };
    const counts = [count("error", "contradiction"), count("warning", "warning"), count("note", "note")];
    const worth = counts.filter((words) => words !== "").join(", ");
    const standing = stand.length === 0 ? "" : `${stand.length} let stand`;
    return html`<details class="findings">
      <summary>${own.length === 0 ? `Looked at before: ${standing}` : `Worth a look before you promise: ${[worth, standing].filter((words) => words !== "").join("; ")}`}</summary>
      <ul>${lines.map((line, at) => this.#line(line, lines[at + 1]))}</ul>
      ${stand.length === 0 ? nothing : html`<ul class="stand">${stand.map((one) => this.#standing(one))}</ul>`}
      <p class="rows-told" role="status">${this.told}</p>
    </details>`;
  }

  /** The same advice is given once, after the last it is for. */
  #line({ severity, of, findings }: FindingLine, next: FindingLine | undefined) {
    const [first] = findings;
    const { advice, why } = first;
    const single = findings.length === 1;
    return html`<li class=${severity === "error" ? "error" : "other"}>
      ${
        single
          ? codeWords(unbroken(first.message))
          : of === undefined
            ? html`<ul>${findings.map((one) => html`<li>${codeWords(unbroken(one.says))} ${shows(one)}</li>`)}</ul>${why}`
            : html`${of}: ${names(findings)}. ${why}`
      }
      ${next?.findings[0].advice === advice ? nothing : html`<span class="quiet">${pieceWords(advice)}</span>`}
      ${single ? shows(first) : nothing}
      ${this.#accepting(findings, of ?? first.says)}
    </li>`;
  }

  /** A way to answer for it, and what is filled in then. */
  #accepting(findings: FindingLine["findings"], about: string) {
    const { plan } = this;
    if (plan === undefined || this.readonly) return nothing;
    const few = unbroken(about.slice(0, 60));
    const [, unused] = /^acceptedFindings\[(\d+)\]$/.exec(findings[0].path) ?? [];
    if (unused !== undefined) return this.#noLongerButton(Number(unused), few);
    const line = lineKey(findings);
    if (this.opened !== line)
      return html`<button type="button" class="does no-paper" data-line=${line} @click=${() => this.#open(line)}>Let it stand<span class="unseen">: ${few}</span></button>`;
    return acceptForm({
      plan,
      about: few,
      words: this.words,
      accept: (cells) => this.#accept(findings, cells),
      leave: () => this.#close(),
    });
  }

  #standing({ at, accepted, lets }: { at: number; accepted: AcceptedFinding; lets: readonly ToldFinding[] }) {
    const { plan } = this;
    const { who, date, why, finding } = accepted;
    const name =
      [...(plan?.people ?? []), ...(plan?.stakeholders ?? [])].find(({ id }) => id === who)?.name ?? who;
    const more = lets.length === 1 ? "" : ` And ${lets.length - 1} more like it.`;
    const what = `${lets[0]?.says ?? finding}${more}`;
    return html`<li class="other">${codeWords(unbroken(what))}
      <span class="quiet">${unbroken(`Accepted by ${name}, ${formatDate(date)}: ${why}`)}</span>
      ${this.readonly ? nothing : this.#noLongerButton(at, unbroken(what.slice(0, 60)))}
    </li>`;
  }

  #noLongerButton(at: number, few: string) {
    return html`<button type="button" class="does no-paper" @click=${() => this.#noLonger(at)}>No longer accept it<span class="unseen">: ${few}</span></button>`;
  }

  #open(line: string): void {
    this.opened = line;
    this.words = {};
    this.told = "";
    this.drawNow();
    this.querySelector<HTMLElement>(".accept select")?.focus();
  }

  #close(): void {
    const { opened } = this;
    this.opened = undefined;
    this.words = {};
    this.drawNow();
    const buttons = [...this.querySelectorAll<HTMLElement>("[data-line]")];
    buttons.find((one) => one.dataset.line === opened)?.focus();
  }

  #accept(findings: FindingLine["findings"], cells: AcceptCells): void {
    const made = acceptFinding(findings, cells, today());
    if ("words" in made) {
      this.words = made.words;
      this.drawNow();
      this.querySelector<HTMLElement>(".accept [aria-invalid=true]")?.focus();
      return;
    }
    this.#send(
      made.edits,
      "It may stay: noted in the plan with name, day and reason. Undo takes the note back.",
    );
  }

  #noLonger(at: number): void {
    this.#send(acceptNoLonger(this.stated, at), "No longer accepted. Undo brings the note back.");
  }

  /** Lines come and go with it, so the reader is taken to their heading. */
  #send(edits: readonly Edit[], told: string): void {
    this.opened = undefined;
    this.words = {};
    this.told = told;
    send(this, "plan-edit", { field: "acceptedFindings", cells: {}, edits });
    this.drawNow();
    this.querySelector("summary")?.focus();
  }
}

/** A line by what it is about: it stays the same while others come and go. */
function lineKey([first, ...others]: FindingLine["findings"]): string {
  return JSON.stringify([first.code, first.path, ...first.ids, others.length]);
}

function names(findings: readonly ToldFinding[]): TemplateResult {
  const list = (some: readonly ToldFinding[]) =>
    some.map((one, at) => html`${at === 0 ? "" : ", "}${way(one, one.name ?? "")}`);
  const [few, rest] = [findings.slice(0, most), findings.slice(most)];
  return html`${list(few)}${
    rest.length === 0
      ? nothing
      : html`<details class="more-names"><summary>and ${rest.length} more</summary>${list(rest)}</details>`
  }`;
}

function shows(finding: ToldFinding) {
  const { ids, says } = finding;
  if (placeOf(finding) === undefined) return nothing;
  return html`<span class="no-paper">${way(finding, html`Show<span class="unseen"> ${ids[0]}: ${says.slice(0, 60)}</span>`)}</span>`;
}

/** A way to the row it is about, and there to the cell that mends it. */
function way(finding: ToldFinding, words: string | TemplateResult) {
  const place = placeOf(finding);
  if (place === undefined) return html`${words}`;
  return html`<a href="#${place}" data-within=${cellOf(finding) ?? nothing}>${words}</a>`;
}

function placeOf({ ids, path }: ToldFinding): string | undefined {
  const [id] = ids;
  if (id === undefined) return undefined;
  if (path.startsWith("tasks")) return `task-${id}`;
  if (/^(risks|assumptions)/.test(path)) return `entry-${id}`;
  const [row] = /^(people|stakeholders|benefits|purpose\.(goals|scope\.in|quality))\[\d+\]/.exec(path) ?? [];
  return row === undefined ? undefined : rowId(row);
}

/** Where in its row the finding is mended, if that is not where a link to the row leads anyway. */
function cellOf({ code, path }: ToldFinding): string | undefined {
  if (path.includes(".after") || code === "open-start") return ".after .field";
  return /^(entry-(without-owner|expired)|signpost-missing|review-overdue)$/.test(code)
    ? ".more summary"
    : undefined;
}

customElements.define("leeway-findings", LeewayFindings);
