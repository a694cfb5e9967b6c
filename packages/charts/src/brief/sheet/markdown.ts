import type { Block, Line, Sheet, Span } from "./types.ts";

/**
 * A sheet as Markdown (CommonMark with tables). Every text is escaped: what a plan says can be neither a link, an
 * image, HTML, a heading nor a cell.
 */
export function sheetMarkdown(sheet: Sheet): string {
  const sections = sheet.sections.map(
    ({ title, blocks }) => `## ${escapeMarkdown(title)}\n\n${blocks.map(block).join("\n\n")}`,
  );
  return `# ${escapeMarkdown(sheet.title)}\n\n${escapeMarkdown(sheet.head)}\n\n${sections.join("\n\n")}\n`;
}

function block(one: Block): string {
  switch (one.kind) {
    case "text":
      return line(one.line);
    case "list":
      return one.items.map((item) => `- ${line(item)}`).join("\n");
    case "table":
      return table(
        one.head.map(({ text }) => text),
        one.head.map(({ align }) => (align === "end" ? "---:" : ":---")),
        one.rows.map(({ cells, whole }) =>
          cells.map((cell) =>
            whole === true && cell !== "" ? `**${escapeMarkdown(cell)}**` : escapeMarkdown(cell),
          ),
        ),
      );
    case "boxes": {
      const labels = one.rows[0]?.boxes.map(({ label }) => label) ?? [];
      return table(
        ["Who", ...labels, "Where it stands"],
        [":---", ...labels.map(() => ":---:"), ":---"],
        one.rows.map(({ name, boxes, remark }) => [
          escapeMarkdown(name),
          ...boxes.map(({ ticked }) => (ticked ? "☒" : "☐")),
          escapeMarkdown(remark),
        ]),
      );
    }
  }
}

function table(
  head: readonly string[],
  rule: readonly string[],
  rows: readonly (readonly string[])[],
): string {
  const row = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [row(head.map(escapeMarkdown)), row(rule), ...rows.map(row)].join("\n");
}

function line(spans: Line): string {
  const text = merged(spans)
    .map((span) => (typeof span === "string" ? escapeMarkdown(span) : emphasised(span.strong)))
    .join("")
    .trim();
  // At the beginning of a line these would open a list, a heading or a quotation.
  return text.replace(/^([-+#=])/, "\\$1").replace(/^(\d{1,9})([.)])/, "$1\\$2");
}

/** A figure that leads somewhere is one emphasis with the words round it: two side by side would be read as one mark. */
function merged(spans: Line): Line {
  const found: Span[] = [];
  for (const span of spans) {
    const before = found.at(-1);
    const at = typeof span === "object" && typeof before === "object" ? (before.at ?? span.at) : undefined;
    if (at !== undefined && typeof span === "object" && typeof before === "object")
      found[found.length - 1] = { strong: before.strong + span.strong, at };
    else found.push(span);
  }
  return found;
}

/** Emphasis must not begin or end with a space. */
function emphasised(text: string): string {
  const inner = text.trim();
  if (inner === "") return text;
  const [before, after] = [text.startsWith(" ") ? " " : "", text.endsWith(" ") ? " " : ""];
  return `${before}**${escapeMarkdown(inner)}**${after}`;
}

/** Backslash escapes of CommonMark 0.31 (section 2.4), for what may open something within a line. */
export function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_[\]<>|~&$]/g, "\\$&").replace(/:\/\//g, ":\\//");
}
