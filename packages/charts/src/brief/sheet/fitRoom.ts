import type { Brief } from "@leeway/core";
import { textWidth } from "../../draw/textWidth.ts";
import { briefSheet } from "../briefSheet.ts";
import { columnKeys } from "./columnKeys.ts";
import { rooms } from "./rooms.ts";
import type { Block, Line, Room, Section, Sheet } from "./types.ts";

/**
 * The printed page in CSS px (1/96 inch) without printing it: A4 less its margins, type of 8.5 pt. Measured once in
 * Chromium; tests/browser/brief prints pages that are full to the edge.
 */
const page = { width: 703, height: 1050, size: 11.33, line: 14.3, column: 341 };
/** The fifty futures with their caption. */
const figure = 152;
/** What the page's serif and sans measure against `textWidth`, with what a line leaves at its end. */
const faces = { serif: 1.05, sans: 0.93 };
type Face = keyof typeof faces;

/** The most that may be said so that the brief still takes one printed page. */
export function fitRoom(brief: Brief): Room {
  const last = rooms[rooms.length - 1] as Room; // the list is not empty
  return rooms.find((room) => heightOf(briefSheet(brief, room)) <= page.height) ?? last;
}

/** What the sheet takes on paper, px. */
export function heightOf({ sections }: Sheet): number {
  const of = (key: Section["key"]) => sections.find((section) => section.key === key);
  const middle = columnKeys.flatMap((key) => of(key) ?? []);
  const outcome = of("outcome");
  const run = of("run");
  return (
    26 +
    decisionHeight(of("decision")) +
    commitmentHeight(of("commitment")) +
    columnsHeight(middle) +
    (outcome === undefined ? 0 : 22 + blocksHeight(outcome.blocks, page.width)) +
    (run === undefined ? 0 : 6 + blocksHeight(run.blocks, page.width, "sans"))
  );
}

/** Two columns divided where they come out most alike; what may not be broken stays whole. */
function columnsHeight(sections: readonly Section[]): number {
  const pieces = sections.flatMap(piecesOf);
  const whole = pieces.reduce((sum, piece) => sum + piece, 0);
  let left = 0;
  let best = whole;
  for (const piece of pieces) {
    left += piece;
    best = Math.min(best, Math.max(left, whole - left));
  }
  return best;
}

/** A heading keeps with the line under it; tables are whole, entries of a list and lines of a text are pieces. */
function piecesOf({ blocks, key }: Section): number[] {
  const heading = 23;
  if (key === "drivers") return [heading + blocksHeight(blocks, page.column)];
  const pieces: number[] = [];
  for (const block of blocks) {
    if (block.kind === "list") {
      const items = block.items.map((item) => lines(item, page.column - 14, "sans") * 13.9 + 1);
      if (items.length > 0) items[items.length - 1] = (items[items.length - 1] as number) + 2.5;
      pieces.push(...items);
    } else if (block.kind === "text") {
      const count = lines(block.line, page.column, "serif");
      const each = Array.from({ length: count }, () => page.line);
      each[count - 1] = page.line + 2.5;
      pieces.push(...each);
    } else pieces.push(blockHeight(block, page.column, "serif") + 2.5);
  }
  pieces[0] = (pieces[0] ?? 0) + heading;
  return pieces;
}

function decisionHeight(section: Section | undefined): number {
  const sizes = [1.45, 1.12, 1];
  return (section?.blocks ?? []).reduce((sum, block, at) => {
    const scale = sizes[at] ?? 1;
    const tall = page.size * scale * 1.22;
    return sum + (block.kind === "text" ? lines(block.line, page.width, "serif", scale) * tall + 3 : 0);
  }, 16);
}

function commitmentHeight(section: Section | undefined): number {
  if (section === undefined) return 0;
  const [table, ...words] = section.blocks;
  const rows = table?.kind === "table" ? table.rows.length + 1 : 0;
  return 28 + rows * 16.4 + Math.max(figure, blocksHeight(words, page.column));
}

function blocksHeight(blocks: readonly Block[], width: number, face: Face = "serif"): number {
  return blocks.reduce((sum, block) => sum + blockHeight(block, width, face) + 2.5, 0);
}

function blockHeight(block: Block, width: number, face: Face): number {
  switch (block.kind) {
    case "text":
      return lines(block.line, width, face) * page.line;
    case "list":
      return block.items.reduce((sum, item) => sum + lines(item, width - 12, "sans") * 13.9 + 1, 0);
    case "table": {
      // Figures and bars take what they need, names what is left.
      const room = width - (block.head.length - 1) * 84;
      return block.rows.reduce(
        (sum, { cells }) => sum + lines([cells[0] ?? ""], room, "sans") * 13.9 + 2.5,
        16.4,
      );
    }
    case "boxes": {
      // The boxes take 225 px, the longest name what it needs; what is left is for where it stands.
      const longest = Math.max(0, ...block.rows.map(({ name }) => textWidth(name, page.size) * 0.905));
      const room = Math.max(90, width - 225 - longest - 8);
      return block.rows.reduce((sum, { remark }) => {
        const count = Math.ceil((textWidth(remark, page.size) * 0.905) / room);
        return sum + Math.max(1, count) * 13.9 + 5.6;
      }, 0);
    }
  }
}

function lines(line: Line, width: number, face: Face, scale = 1): number {
  const text = line.map((span) => (typeof span === "string" ? span : span.strong)).join("");
  return Math.max(1, Math.ceil((textWidth(text, page.size * scale) * faces[face]) / width));
}
