import type { Exported } from "./exported.ts";

/** An entry point of a library and what it exports. */
export interface Entry {
  /** As it is imported: `@leeway/core`. */
  name: string;
  exported: readonly Exported[];
}

/** Longer declarations are shown by their beginning: what follows is data. */
const LONGEST = 4_000;

const ROOMS: Readonly<Record<string, string>> = {
  brief: "the one page for approvers",
  budget: "where the money goes",
  communicate: "who does, answers for and is told what",
  estimating: "estimates made with the team",
  exchange: "tables, calendars, schemas",
  explain: "why this much, what responses buy, what it would take, what moved",
  findings: "what is to be said about a plan before anybody promises by it",
  forecast: "the answer every view is read from",
  kernel: "the loops in WebAssembly",
  live: "a plan under way",
  models: "small public plans with known answers",
  plan: "the document: reading, editing, hashing, its types",
  problems: "what stands behind each problem code",
  sampling: "shapes, streams, designs, dependence",
  signoff: "decisions, objections, the change log",
  quality: "whether quality bars are met",
  simulate: "the simulation itself, for who builds on it",
};

/** Every page of docs/reference by its file name: one for each room of the core, one for each other entry point, an index. */
export function referencePages(entries: readonly Entry[]): Map<string, string> {
  const parts = entries.flatMap(({ name, exported }) => {
    if (name !== "@leeway/core")
      return [{ file: fileOf(name), title: name, about: "", from: name, exported }];
    const rooms = [...new Set(exported.map(roomOf))].sort();
    return rooms.map((room) => ({
      file: `core-${room}.md`,
      title: `${name}: ${room}`,
      about: ROOMS[room] ?? "",
      from: name,
      exported: exported.filter((one) => roomOf(one) === room),
    }));
  });
  const pages = new Map(
    parts.map(({ file, title, about, from, exported }): [string, string] => [
      file,
      `# ${title}\n\n${about === "" ? "" : `${upper(about)}. `}All of it comes from \`${from}\`.\n\n${exported.map(section).join("\n")}`,
    ]),
  );
  const lists = parts.map(({ file, title, about, exported }) => {
    const names = exported.map(({ name }) => `[${name}](${file}#${name.toLowerCase()})`);
    return `## [${title}](${file})\n\n${about === "" ? "" : `${upper(about)}.\n\n`}${names.join(", ")}\n`;
  });
  return pages.set("README.md", `${HEAD}\n${lists.join("\n")}`);
}

const HEAD = `# Reference

Everything the libraries export, with its types, units and errors, written from the docstrings of the sources. A figure's
unit stands in its name or docstring: \`days\` are days since the plan's start, \`workingDays\` days of the plan's calendar, money is in
the plan's currency, a chance is a number from 0 to 1. What can go wrong comes back as \`problems\` or \`refusals\` (see
[errors](../errors.md)); an exception means a mistake in the calling program, and the docstring names it.

Where to begin is told in the [guide for programs](../programs.md). These pages are written by
\`npm run -s reference\`.
`;

function section({ name, doc, declaration }: Exported): string {
  const whole = declaration.length > LONGEST ? `${declaration.slice(0, LONGEST)}\n// ...` : declaration;
  const narrow = whole.replace(/^(?: {4})+/gm, (indent) => indent.slice(indent.length / 2));
  return `## ${name}\n\n${prose(doc)}\n\n\`\`\`ts\n${narrow}\n\`\`\`\n`;
}

/** A docstring as Markdown: parameters and the lines that begin with a word of ours become a list. */
function prose(doc: string): string {
  return doc
    .replace(/^@param (\w+)\s+/gm, "\n- `$1`: ")
    .replace(/^@returns?\s+/gm, "\n- Returns ")
    .replace(/^(Throws|Error|Cost|Edges|Source|Units?|Shapes?)(?: {1,}|: )(?=\S)/gm, "\n- $1: ")
    .replace(/\n{3,}/g, "\n\n")
    .replace(/^(- .*)\n\n(?=- )/gm, "$1\n")
    .trim();
}

function roomOf({ file }: Exported): string {
  return file.includes("/") ? file.slice(0, file.indexOf("/")) : "general";
}

function fileOf(name: string): string {
  return `${name.replace("@leeway/", "").replace("/", "-")}.md`;
}

function upper(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
