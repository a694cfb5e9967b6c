import { escapeHtml } from "@leeway/charts/brief";
import type { Table } from "@leeway/core";

/** A table whose first column names its rows; it scrolls inside its room where it is wide. */
export function tableHtml(caption: string, { header, rows }: Table): string {
  const cell = (value: string | number, at: number) =>
    at === 0 ? `<th scope="row">${escapeHtml(String(value))}</th>` : `<td>${escapeHtml(String(value))}</td>`;
  return `<div class="wide" role="region" tabindex="0" aria-label="${escapeHtml(caption)}"><table><caption>${escapeHtml(caption)}</caption><thead><tr>${header
    .map((name) => `<th scope="col">${escapeHtml(name)}</th>`)
    .join("")}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map(cell).join("")}</tr>`)
    .join("")}</tbody></table></div>`;
}
