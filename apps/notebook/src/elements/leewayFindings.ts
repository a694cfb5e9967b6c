import type { Finding } from "@leeway/core";
import { html, nothing } from "lit";
import { unbroken } from "../words/unbroken.ts";
import { codeWords } from "./codeWords.ts";
import { sectionOf } from "./findingSections.ts";
import { LongElement } from "./longElement.ts";

/** What is worth a look in one section, at its foot; what somebody accepted is left out. */
export class LeewayFindings extends LongElement {
  static override properties = { findings: { attribute: false }, section: { type: String } };
  findings: readonly Finding[] | undefined;
  section = "";

  protected override render() {
    if (this.findings === undefined) return nothing;
    const own = this.findings.filter((one) => one.accepted === undefined && sectionOf(one) === this.section);
    if (own.length === 0) return nothing;
    const count = (severity: Finding["severity"], one: string): string => {
      const n = own.filter((finding) => finding.severity === severity).length;
      return n === 0 ? "" : `${n} ${n === 1 ? one : `${one}s`}`;
    };
    const counts = [count("error", "contradiction"), count("warning", "warning"), count("note", "note")];
    return html`<details class="findings">
      <summary>Worth a look before you promise: ${counts.filter((words) => words !== "").join(", ")}</summary>
      <ul>${own.map((finding, at) => this.#one(finding, own[at + 1]))}</ul>
    </details>`;
  }

  /** The same advice is given once, after the last it is for. */
  #one({ severity, message, advice, ids, path }: Finding, next: Finding | undefined) {
    const [id] = ids;
    const row = path.startsWith("tasks") ? "task" : /^(risks|assumptions)/.test(path) ? "entry" : undefined;
    return html`<li class=${severity === "error" ? "error" : "other"}>
      ${codeWords(unbroken(message))}
      ${next?.advice === advice ? nothing : html`<span class="quiet">${codeWords(unbroken(advice))}</span>`}
      ${row === undefined || id === undefined ? nothing : html`<a href="#${row}-${id}">Show<span class="unseen"> ${id}: ${message.slice(0, 60)}</span></a>`}
    </li>`;
  }
}

customElements.define("leeway-findings", LeewayFindings);
