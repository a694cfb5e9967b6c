import type { Brief } from "@leeway/core";
import type { Section } from "../sheet/types.ts";
import { blockHtml } from "./blockHtml.ts";
import { escapeHtml } from "./escapeHtml.ts";

const width = 60;

/**
 * The drivers' table with a bar beside each figure, as long as its part of the largest. Bars repeat the figures, so a
 * screen reader passes over them.
 */
export function driversHtml({ key, title, blocks }: Section, { drivers, spends }: Brief): string {
  const rows = [...drivers.rows, ...(drivers.rest === undefined ? [] : [drivers.rest])];
  const most = (of: (row: { workingDays: number; money: number }) => number) =>
    Math.max(0, ...rows.map((row) => Math.abs(of(row))));
  const days = most(({ workingDays }) => workingDays);
  const money = most(({ money: sum }) => sum);
  const bars = rows.map((row) => [
    bar(row.workingDays, days, "days"),
    ...(spends ? [bar(row.money, money, "money")] : []),
  ]);
  const told = blocks.map((block) =>
    block.kind === "table"
      ? `<table><caption>${escapeHtml(block.caption)}</caption><thead><tr>${block.head
          .map(({ text, align }, at) =>
            at === 0
              ? `<th scope="col">${escapeHtml(text)}</th>`
              : `<th scope="col" class="${align}">${escapeHtml(text)}</th><td class="bars"></td>`,
          )
          .join("")}</tr></thead><tbody>${block.rows
          .map(
            ({ cells, whole }, row) =>
              `<tr${whole === true ? ' class="whole"' : ""}>${cells
                .map((text, at) =>
                  at === 0
                    ? `<th scope="row">${escapeHtml(text)}</th>`
                    : `<td class="end">${escapeHtml(text)}</td><td class="bars">${bars[row]?.[at - 1] ?? ""}</td>`,
                )
                .join("")}</tr>`,
          )
          .join("")}</tbody></table>`
      : blockHtml(block),
  );
  return `<section class="${key}"><h2>${escapeHtml(title)}</h2>${told.join("")}</section>`;
}

/** Full for what adds, open for what takes away. */
function bar(value: number, most: number, role: "days" | "money"): string {
  const long = most > 0 ? (Math.abs(value) / most) * (width - 1) : 0;
  if (long < 0.5) return "";
  const less = value < 0 ? " less" : "";
  return `<svg class="bar" viewBox="0 0 ${width} 8" preserveAspectRatio="none" aria-hidden="true"><rect x="0.5" y="0.5" width="${Math.round(long * 100) / 100}" height="7" class="${role}${less}"/></svg>`;
}
