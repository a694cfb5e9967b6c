/**
 * Texts that mean something to whatever might read them: HTML, SVG, Markdown, YAML, tables, calendars, terminals.
 *
 * Source  the kinds are those of OWASP (XSS filter evasion, CSV injection; CWE-79, CWE-1236, CWE-150), RFC 5545, CommonMark
 *         0.31, ECMA-48 for escape sequences and Unicode Standard Annex 9 for turns of direction; recalled from memory,
 *         the wording is ours.
 */
export const corpus = {
  script: "<script>window.ran=1</script>",
  "end of a script": "</script><script>window.ran=1</script>",
  "end of a style": "</style></title></textarea></svg><img src=x onerror=window.ran=1>",
  attribute: `" onmouseover="window.ran=1" autofocus onfocus="window.ran=1" x="`,
  "attribute in apostrophes": "' onclick='window.ran=1' x='",
  svg: "<svg/onload=window.ran=1><animate onbegin=window.ran=1>",
  frame: "<iframe srcdoc='<script>parent.ran=1</script>'></iframe>",
  entities: "&lt;img src=x onerror=window.ran=1&gt; &#60;b&#62; &amp;lt; &nbsp",
  comment: "--><!--<![CDATA[]]>?><base href=//x>",
  link: "javascript:window.ran=1//https://example.org",
  "link in Markdown":
    "[press](javascript:window.ran=1) ![x](https://example.org/x.png) <https://example.org>",
  "blocks in Markdown": "# heading | cell | `code` **bold** ~~gone~~",
  template: "$" + "{window.ran=1} {{window.ran=1}} <%= 1 %> `+window.ran+`",
  "formula =": '=HYPERLINK("https://example.org";"x")',
  "formula +": "+1+cmd|' /C calc'!A0",
  "formula -": "-2+3",
  "formula @": "@SUM(1;1)",
  "formula behind a tab": "\t=1+1",
  "formula behind a return": "\r=1+1",
  "formula, full width": "＝1＋1",
  separators: `a;b,c"d"",'e`,
  calendar: "a\r\nEND:VEVENT\r\nBEGIN:VALARM\r\nATTACH:https://example.org\\;x",
  tags: "!!js/function x &a *a {b: [c, - d # e",
  "YAML at a line of its own": "a\n---\ntitle: other\n- b: c\n",
  "escape sequences": "\u001b[31mred\u001b[2J\u001b]0;title\u0007\u009b1A",
  "link of a terminal": "\u001b]8;;https://example.org\u001b\\press\u001b]8;;\u001b\\",
  controls: "a\u0000b\u0008\u0008c\u007fd\u0085e\u000bf",
  "turned direction": "a\u202Egpj.exe\u202C \u2066b\u2069\u200f",
  combining: `Z${"\u0301\u0335".repeat(60)} \uFB03 e\u0301`,
  "lines of Unicode": "a\u2028b\u2029c\uFEFFd\u00a0e",
  "other letters": "مرحبا שלום 你好 👩‍👩‍👧‍👦 🏴󠁧󠁢󠁥󠁮󠁧󠁿",
  "own property": "__proto__",
  "own method": "constructor",
} as const satisfies Record<string, string>;

/** No text at all: half a character. The reader of plans refuses it, and must say so without passing it on. */
export const halves = ["a\ud83d", "\ude00b", "\udbff\ud800"];

export type HostileName = keyof typeof corpus;
export const hostileNames = Object.keys(corpus) as HostileName[]; // its keys, by the type above
