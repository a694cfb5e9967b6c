import { plainName } from "@leeway/charts";
import { escapeHtml } from "@leeway/charts/brief";
import type { Table } from "@leeway/core";

/** A table whose first column names its rows; it scrolls inside its room where it is wide. */
export function tableHtml(caption: string, { header, rows }: Table): string {
  const cell = (value: string | number, at: number) =>
    at === 0 ? `<th scope="row">${escapeHtml(shown(value))}</th>` : `<td>${escapeHtml(shown(value))}</td>`;
  return `<div class="wide" role="region" tabindex="0" aria-label="${escapeHtml(caption)}"><table><caption>${escapeHtml(caption)}</caption><thead><tr>${header
    .map((name) => `<th scope="col">${escapeHtml(name)}</th>`)
    .join("")}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map(cell).join("")}</tr>`)
    .join("")}</tbody></table></div>`;
}

/** As long as it is written, on one line; nothing in it turns the direction of its neighbours. */
function shown(value: string | number): string {
  const text = String(value);
  return text.trim() === "" ? "" : plainName(text, 2000);
}
