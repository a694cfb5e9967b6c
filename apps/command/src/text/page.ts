/** How wide and how loud the text may be. */
export interface Page {
  /** Columns, 60 to 110. */
  width: number;
  /** Bold for the few words that matter. */
  strong: (text: string) => string;
}

const NARROWEST = 60;
/** Longer lines are hard to read back to their beginning. */
const WIDEST = 110;

/**
 * The page standard output offers: COLUMNS, else the terminal's width, else 80. Weight only on a terminal
 * that does not ask for plain text (NO_COLOR, https://no-color.org, recalled from memory; TERM=dumb).
 */
export function pageOf(
  environment: Readonly<Record<string, string | undefined>>,
  terminal: { isTTY?: boolean; columns?: number },
): Page {
  const asked = Number(environment.COLUMNS);
  const offered = asked > 0 ? asked : terminal.isTTY === true ? terminal.columns || 80 : 80;
  const plain = terminal.isTTY !== true || Boolean(environment.NO_COLOR) || environment.TERM === "dumb";
  return {
    width: Math.max(NARROWEST, Math.min(WIDEST, Math.floor(offered))),
    strong: plain ? (text) => text : (text) => `\u001b[1m${text}\u001b[22m`,
  };
}

/** Breaks text into lines of at most `width`; a longer word keeps a line of its own. */
export function wrap(text: string, width: number, indent = ""): string[] {
  const lines: string[] = [];
  let line = "";
  // "61 %" stays in one piece.
  for (const word of text.split(/ (?!%)/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** Cuts text to `width`, an ellipsis showing that it was cut. */
export function cut(text: string, width: number): string {
  const letters = [...text];
  return letters.length <= width ? text : `${letters.slice(0, Math.max(1, width - 1)).join("")}…`;
}

/** A bar of at most `width` columns, to half a column; empty for nothing or less. */
export function bar(value: number, largest: number, width: number): string {
  if (!(value > 0) || !(largest > 0)) return "";
  const halves = Math.max(1, Math.round((value / largest) * width * 2));
  return "█".repeat(halves >> 1) + (halves % 2 === 1 ? "▌" : "");
}

export interface Column {
  heading: string;
  align: "left" | "right";
}

/** No first column is cut below this many letters. */
const LEAST_NAME = 8;

/**
 * Rows under headings, two spaces between columns, two in front. Figures stand right-aligned; names, in the
 * first column, are cut to what the others leave of `width`.
 *
 * @param rows  One text per column.
 */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width = Number.POSITIVE_INFINITY,
): string[] {
  const lines = [columns.map((column) => column.heading), ...rows];
  const widths = columns.map((_, k) => Math.max(...lines.map((row) => [...(row[k] ?? "")].length)));
  const others = widths.slice(1).reduce((sum, wide) => sum + wide + 2, 2);
  const first = Math.min(widths[0] ?? 0, Math.max(LEAST_NAME, width - others));
  return lines.map((row) => {
    const cells = columns.map(({ align }, k) => {
      const cell = k === 0 ? cut(row[k] ?? "", first) : (row[k] ?? "");
      const space = " ".repeat((k === 0 ? first : (widths[k] ?? 0)) - [...cell].length);
      return align === "right" ? space + cell : cell + space;
    });
    return `  ${cells.join("  ")}`.trimEnd();
  });
}
