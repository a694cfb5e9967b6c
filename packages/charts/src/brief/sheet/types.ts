/**
 * A brief as a sheet of sections: text only, no markup. Whatever writes it out (Markdown, HTML) escapes every text, so
 * that no word of a plan is ever read as markup.
 */

/** A run of text; `strong` where it is what the reader looks for, `at` the section that says where the figure comes from. */
export type Span = string | { strong: string; at?: SectionKey };

/** A sentence as spans. */
export type Line = readonly Span[];

/** A piece of a section: a paragraph, a list, a table or a picture. */
export type Block =
  | { kind: "text"; line: Line; quiet?: boolean }
  | { kind: "list"; items: readonly Line[] }
  | { kind: "table"; caption: string; head: readonly Cell[]; rows: readonly Row[] }
  | { kind: "boxes"; caption: string; rows: readonly BoxRow[] };

/** A cell of a table, as text. */
export interface Cell {
  text: string;
  align: "start" | "end";
}
/** Cells of a row; `whole` for a sum of those above it. */
export interface Row {
  cells: readonly string[];
  whole?: boolean;
}
/** One who decides: what they may tick, and what is ticked. */
export interface BoxRow {
  name: string;
  boxes: readonly { label: string; ticked: boolean }[];
  remark: string;
}

/** Which section of a brief it is. */
export type SectionKey =
  | "decision"
  | "recommendation"
  | "commitment"
  | "worth"
  | "scope"
  | "drivers"
  | "responses"
  | "assumptions"
  | "objections"
  | "back"
  | "outcome"
  | "run"
  | "approver"
  | "questions"
  | "raised"
  | "expected";

/** A section of a brief: heading and pieces. */
export interface Section {
  key: SectionKey;
  title: string;
  blocks: readonly Block[];
}

/** How much is said: entries of a list, and characters of a name and of a text, the rest as "and N more" and "…". */
export interface Room {
  name: number;
  text: number;
  responses: number;
  assumptions: number;
  objections: number;
  triggers: number;
  /** Return triggers are told by their conditions alone. */
  unnamed?: true;
  scope: number;
  approvers: number;
  alternatives: number;
  benefits: number;
}

/** A brief in words, before it is written as Markdown or HTML. */
export interface Sheet {
  title: string;
  /** What sort of sheet it is, for whom and of which day. */
  head: string;
  sections: readonly Section[];
}
