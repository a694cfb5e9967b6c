/**
 * A story is a Markdown page that can be followed line by line: a reader types what stands after `$ ` and sees what
 * stands below it. Three kinds of fenced blocks are acted on, everything else is told as it stands.
 *
 * - `console`, with `exit=N` (default 0) and `lines=A-B` (which lines of the output the page shows): one command after
 *   `$ `, its output below.
 * - any language with `write=FILE`: the block becomes that file.
 * - `yaml` with `put=PATH` (`purpose`, `tasks.survey.duration`; `plan=FILE` says into which plan): the block becomes the
 *   value at that place, as a person would type it there. With `from=EXAMPLE` (a file of examples/) the value is what
 *   stands there at the same path, and the block shows some of its lines; `...` says that others are left out.
 */
export type Step =
  | { kind: "told"; text: string }
  | { kind: "run"; info: string; command: string; exit: number; lines?: [number, number] }
  | { kind: "write"; info: string; file: string; text: string }
  | { kind: "put"; info: string; plan: string; path: string[]; text: string; from?: string };

const fence = /^```([^\n]*)\n([\s\S]*?)^```$/gm;

export function storySteps(page: string): Step[] {
  const steps: Step[] = [];
  let at = 0;
  for (const match of page.matchAll(fence)) {
    steps.push({ kind: "told", text: page.slice(at, match.index) });
    steps.push(stepOf(match[1] as string, match[2] as string, match[0]));
    at = match.index + match[0].length;
  }
  return [...steps, { kind: "told", text: page.slice(at) }];
}

function stepOf(info: string, body: string, whole: string): Step {
  const said = Object.fromEntries([...info.matchAll(/(\w+)=(\S+)/g)].map(([, key, value]) => [key, value]));
  if (info.startsWith("console")) {
    const command = /^\$ (.*)$/m.exec(body)?.[1];
    if (command === undefined) throw new Error(`No command in this block:\n${whole}`);
    const lines = said.lines?.split("-").map(Number) as [number, number] | undefined;
    return { kind: "run", info, command, exit: Number(said.exit ?? 0), ...(lines && { lines }) };
  }
  if (said.write !== undefined) return { kind: "write", info, file: said.write, text: body };
  if (said.put === undefined) return { kind: "told", text: whole };
  if (said.plan === undefined) throw new Error(`Which plan? Say plan=FILE:\n${whole}`);
  const from = said.from === undefined ? {} : { from: said.from };
  return { kind: "put", info, plan: said.plan, path: said.put.split("."), text: body, ...from };
}

/** The words of a command line: blanks part them, quotes hold them together. */
export function commandWords(command: string): string[] {
  return [...command.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map((m) => m[1] ?? m[2] ?? (m[3] as string));
}

/** What the page shows of an output. */
export function shownLines(output: string, lines: [number, number] | undefined): string {
  const all = output.trimEnd().split("\n");
  if (lines === undefined) return all.join("\n");
  const [from, to] = lines;
  const cut = all.slice(from - 1, to);
  return [...(from > 1 ? ["..."] : []), ...cut, ...(to < all.length ? ["..."] : [])].join("\n");
}
