import { readCsv } from "@leeway/core";

/**
 * A block as it was copied from a spreadsheet or a mail, as rows of cells: parted by tabs, else by semicolons or commas
 * where every line has the same number of them, else one cell a line. Blank lines are left out.
 */
export function readBlock(text: string): { rows: string[][] } | { words: string } {
  const lines = text.split(/\r\n?|\n/).filter((line) => line.trim() !== "");
  const separator = text.includes("\t") ? "\t" : ([";", ","] as const).find((mark) => partsAll(lines, mark));
  if (separator === undefined)
    return { rows: lines.map((line) => [line.replace(/^\s*[-*•]\s+/, "").trim()]) };
  // The widest row first, so that none counts as too long; it is taken out again.
  const width = Math.max(...lines.map((line) => line.split(separator).length));
  const { cells, problems } = readCsv(`${Array(width).fill("x").join(separator)}\n${text}`, separator);
  const [problem] = problems;
  if (problem !== undefined) return { words: `${problem.rule} ${problem.remedy}`.trim() };
  const rows = cells.slice(1).map((row) => row.map((cell) => cell.replace(/\s+/g, " ").trim()));
  return { rows: rows.filter((row) => row.some((cell) => cell !== "")) };
}

/** Whether a mark parts every line into as many cells, with a number in one of them: then it is no mark of a sentence. */
function partsAll(lines: readonly string[], mark: string): boolean {
  const counts = lines.map((line) => line.replace(/"[^"]*"/g, "").split(mark).length);
  const [first = 1] = counts;
  const numbers = lines.some((line) => line.split(mark).some((cell) => /^\s*\d+([.,]\d+)?\s*$/.test(cell)));
  return first > 1 && numbers && counts.every((count) => count === first);
}
