import type { YAMLError } from "yaml";
import type { Fault } from "./node.ts";

/** What to say to someone who does not know YAML, by the parser's code for the fault. */
const WORDS: Record<string, [rule: string, remedy: string]> = {
  TAB_AS_INDENT: ["Lines are indented with spaces.", "Replace the tab by spaces."],
  BAD_INDENT: ["Keys of one object stand in one column.", "Indent this line like the lines beside it."],
  BLOCK_AS_IMPLICIT_KEY: [
    "Keys of one object stand in one column, each with its value behind it.",
    "Indent this line and the next alike; put text with a colon between quotes.",
  ],
  MULTILINE_IMPLICIT_KEY: [
    "A key stands on one line, with a colon after it.",
    "Write `key: value` on one line.",
  ],
  MISSING_CHAR: [
    "Something is opened here and not closed, or a sign is missing.",
    "Check quotes, brackets and colons.",
  ],
  BAD_ALIAS: ["`*` begins a reference to something marked with `&`.", "Put the text between quotes."],
  BAD_DQ_ESCAPE: ["`\\` in double quotes begins an escape.", "Use single quotes, or write `\\\\`."],
  BAD_SCALAR_START: ["Text may not begin with this sign.", "Put the text between quotes."],
  MULTIPLE_DOCS: ["A plan is one document.", "Remove the `---` and what follows it."],
  TAG_RESOLVE_FAILED: [
    "A plan holds only text, numbers, true or false, lists and objects.",
    "Remove the tag.",
  ],
  BLOCK_IN_FLOW: [
    "Inside brackets everything is written in brackets.",
    "Write lists as [a, b], and text with a colon between quotes.",
  ],
  COMMENT_SPACE: ["A comment begins with a space and `#`.", "Put a space before the `#`."],
  UNEXPECTED_TOKEN: [
    "This does not belong here.",
    "Put text between quotes, or check brackets and indentation.",
  ],
};

/** Turns a fault of the YAML parser into words for a planner. */
export function describeYamlError(error: YAMLError, text: string): Fault {
  const at = error.pos[0];
  const [rule, remedy] = WORDS[unclosed(error) ? "MISSING_CHAR" : error.code] ?? [
    `${error.message.split("\n")[0]}.`,
    "Check this line.",
  ];
  const newline = text.indexOf("\n", at);
  const received = text.slice(at, Math.min(newline < 0 ? text.length : newline, at + 40)).trim();
  const code = error.code === "MULTIPLE_DOCS" ? "several-documents" : "yaml-syntax";
  return { code, at, received, rule, remedy };
}

/** Brackets that never end come as an error of indentation. */
function unclosed(error: YAMLError): boolean {
  return error.code === "BAD_INDENT" && /and end with/.test(error.message);
}
