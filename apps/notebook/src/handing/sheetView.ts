import type { Block, Line, Sheet } from "@leeway/charts/brief";
import { html, nothing, type TemplateResult } from "lit";

/** A sheet to be read on the page. Its texts are texts: nothing of a plan becomes markup. */
export function sheetView({ head, sections }: Sheet): TemplateResult {
  return html`<div class="sheet" dir="auto">
    <p class="note">${head}</p>
    ${sections.map(({ title, blocks }) => html`<h3>${title}</h3>${blocks.map(blockView)}`)}
  </div>`;
}

function blockView(block: Block): TemplateResult {
  switch (block.kind) {
    case "text":
      return html`<p class=${block.quiet === true ? "quiet" : nothing}>${lineView(block.line)}</p>`;
    case "list":
      return html`<ul>${block.items.map((item) => html`<li>${lineView(item)}</li>`)}</ul>`;
    case "table":
      return html`<div class="sheet-scroll" role="region" tabindex="0" aria-label=${block.caption}><table>
        <caption class="unseen">${block.caption}</caption>
        <thead><tr>${block.head.map(({ text, align }) => html`<th scope="col" class=${align}>${text}</th>`)}</tr></thead>
        <tbody>${block.rows.map(
          ({ cells }) =>
            html`<tr>${cells.map((cell, at) =>
              at === 0
                ? html`<th scope="row">${cell}</th>`
                : html`<td class=${block.head[at]?.align ?? "start"}>${cell}</td>`,
            )}</tr>`,
        )}</tbody>
      </table></div>`;
    case "boxes":
      return html`<ul>${block.rows.map(
        ({ name, boxes, remark }) => html`<li><strong>${name}</strong>:
          ${boxes.map(({ label, ticked }) => html`<span aria-hidden="true">${ticked ? "☒" : "☐"}</span> ${label}<span class="unseen">${ticked ? " (chosen)" : " (not chosen)"}</span> `)}
          · ${remark}</li>`,
      )}</ul>`;
  }
}

function lineView(line: Line) {
  return line.map((span) => (typeof span === "string" ? span : html`<strong>${span.strong}</strong>`));
}
