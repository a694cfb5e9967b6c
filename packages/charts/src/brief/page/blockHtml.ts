import type { Block, Line, Row } from "../sheet/types.ts";
import { escapeHtml } from "./escapeHtml.ts";

/** One block of a sheet as HTML. Every text is escaped; nothing of a plan is ever markup. */
export function blockHtml(block: Block): string {
  switch (block.kind) {
    case "text":
      return `<p${block.quiet === true ? ' class="quiet"' : ""}>${lineHtml(block.line)}</p>`;
    case "list":
      return `<ul>${block.items.map((item) => `<li>${lineHtml(item)}</li>`).join("")}</ul>`;
    case "table": {
      const head = block.head
        .map(({ text, align }) => `<th scope="col" class="${align}">${escapeHtml(text)}</th>`)
        .join("");
      const aligns = block.head.map(({ align }) => align);
      return `<table><caption>${escapeHtml(block.caption)}</caption><thead><tr>${head}</tr></thead><tbody>${block.rows
        .map((row) => rowHtml(row, aligns))
        .join("")}</tbody></table>`;
    }
    case "boxes":
      return `<table class="boxes"><caption>${escapeHtml(block.caption)}</caption><thead class="away"><tr><th scope="col">Who</th>${(
        block.rows[0]?.boxes ?? []
      )
        .map(({ label }) => `<th scope="col">${escapeHtml(label)}</th>`)
        .join("")}<th scope="col">Where it stands</th></tr></thead><tbody>${block.rows
        .map(
          ({ name, boxes, remark }) =>
            `<tr><th scope="row">${escapeHtml(name)}</th>${boxes
              .map(
                ({ label, ticked }) =>
                  `<td class="box"><span aria-hidden="true">${ticked ? "☒" : "☐"}</span> ${escapeHtml(label)}<span class="away">${ticked ? ": chosen" : ": not chosen"}</span></td>`,
              )
              .join("")}<td>${escapeHtml(remark)}</td></tr>`,
        )
        .join("")}</tbody></table>`;
  }
}

function rowHtml({ cells, whole }: Row, aligns: readonly string[]): string {
  const cell = (text: string, at: number) =>
    at === 0
      ? `<th scope="row">${escapeHtml(text)}</th>`
      : `<td class="${aligns[at] ?? "start"}">${escapeHtml(text)}</td>`;
  return `<tr${whole === true ? ' class="whole"' : ""}>${cells.map(cell).join("")}</tr>`;
}

export function lineHtml(line: Line): string {
  return line
    .map((span) => {
      if (typeof span === "string") return escapeHtml(span);
      const words = `<strong>${escapeHtml(span.strong)}</strong>`;
      return span.at === undefined ? words : `<a href="#${span.at}">${words}</a>`;
    })
    .join("");
}
