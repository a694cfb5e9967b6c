import { html, nothing, type TemplateResult } from "lit";
import type { ToldFinding } from "../asking/tellFindings.ts";
import { type FindingLine, findingLines } from "../words/findingLines.ts";
import { unbroken } from "../words/unbroken.ts";
import { codeWords } from "./codeWords.ts";
import { sectionOf } from "./findingSections.ts";
import { LongElement } from "./longElement.ts";
import { pieceWords } from "./pieceWords.ts";
import { rowId } from "./rowId.ts";

/** How many names a line holds; the others unfold. */
const most = 12;

/** What is worth a look in one section, at its foot; what somebody accepted is left out. */
export class LeewayFindings extends LongElement {
  static override properties = { findings: { attribute: false }, section: { type: String } };
  findings: readonly ToldFinding[] | undefined;
  section = "";

  protected override render() {
    if (this.findings === undefined) return nothing;
    const own = this.findings.filter((one) => one.accepted === undefined && sectionOf(one) === this.section);
    if (own.length === 0) return nothing;
    const lines = findingLines(own);
    const count = (severity: FindingLine["severity"], one: string): string => {
      const n = lines.filter((line) => line.severity === severity).length;
      return n === 0 ? "" : `${n} ${n === 1 ? one : `${one}s`}`;
    };
    const counts = [count("error", "contradiction"), count("warning", "warning"), count("note", "note")];
    return html`<details class="findings">
      <summary>Worth a look before you promise: ${counts.filter((words) => words !== "").join(", ")}</summary>
      <ul>${lines.map((line, at) => this.#line(line, lines[at + 1]))}</ul>
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
    </li>`;
  }
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
