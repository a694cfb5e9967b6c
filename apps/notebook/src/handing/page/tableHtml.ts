import { plainName } from "@leeway/charts";
import { escapeHtml } from "@leeway/charts/brief";
import type { Table } from "@leeway/core";

/** From so many columns on a slim screen shows a row below the other, each value behind the head of its column. */
const listedFrom = 4;
/** Characters of a head and its value beyond which they have a line of their own there. */
const long = 23;

/** A table whose first column names its rows; it scrolls inside its room where it is wide. */
export function tableHtml(caption: string, { header, rows }: Table): string {
  const listed = header.length >= listedFrom;
  const figures = header.map((_, at) => at > 0 && isFigures(rows.map((row) => row[at] ?? "")));
  const head = (at: number) => (listed ? ` data-head="${escapeHtml(String(header[at] ?? ""))}"` : "");
  const cell = (value: string | number, at: number) => {
    const text = shown(value);
    if (at === 0) return text === "" ? "<td></td>" : `<th scope="row">${escapeHtml(text)}</th>`;
    const own = listed && String(header[at] ?? "").length + 1 + text.length > long;
    const names = [own ? "long" : "", figures[at] === true ? "number" : ""].filter((name) => name !== "");
    return `<td${head(at)}${names.length === 0 ? "" : ` class="${names.join(" ")}"`}>${escapeHtml(text)}</td>`;
  };
  return `<div class="wide" role="region" tabindex="0" aria-label="${escapeHtml(caption)}"><table${listed ? ' class="listed"' : ""}><caption>${escapeHtml(caption)}</caption><thead><tr>${header
    .map(
      (name, at) =>
        `<th scope="col"${figures[at] === true ? ' class="number"' : ""}>${escapeHtml(name)}</th>`,
    )
    .join("")}</tr></thead><tbody>${rows
    .map((row) => `<tr>${row.map(cell).join("")}</tr>`)
    .join("")}</tbody></table></div>`;
}

/** A column of nothing but figures ends where they end. */
function isFigures(cells: readonly (string | number)[]): boolean {
  const said = cells.filter((cell) => cell !== "");
  return said.length > 0 && said.every((cell) => /^[-−+]?[\d,.]+(\s?%)?$/.test(String(cell)));
}

/** As long as it is written, on one line; nothing in it turns the direction of its neighbours. */
function shown(value: string | number): string {
  const text = String(value);
  return text.trim() === "" ? "" : plainName(text, 2000);
}
