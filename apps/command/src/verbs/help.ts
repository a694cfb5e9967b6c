import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";
import type { VerbRule } from "../call/verbRule.ts";
import { verbs } from "../call/verbs.ts";
import { wordsAfter } from "../call/wordsAfter.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printProblems } from "../output.ts";
import { pageOf, wrap } from "../text/page.ts";

/** Two columns; what the second says goes on below itself where a line is full. */
function columns(rows: [left: string, right: string][], width: number): string {
  const widest = Math.max(...rows.map(([left]) => left.length));
  return rows
    .flatMap(([left, right]) =>
      wrap(right, width - widest - 4).map((line, k) => `  ${(k === 0 ? left : "").padEnd(widest)}  ${line}`),
    )
    .join("\n");
}

const pageWidth = () => pageOf(process.env, process.stdout).width;

const paragraph = (text: string, width: number) => wrap(text, width).join("\n");

/** The list of verbs and of exit codes. */
export function overviewText(): string {
  const width = pageWidth();
  const list = columns(
    verbs.map((verb) => [`${verb.name}${wordsAfter(verb)}`, verb.summary]),
    width,
  );
  return [
    "leeway VERB PLAN [options]",
    paragraph(
      "From a project plan to a date and a sum you can commit to: the plan is lived through thousands of times, each " +
        "a future of its own, and answers are read off them all. PLAN is a plan document (YAML or JSON), or - for " +
        "standard input. Begin with `leeway new`, then `leeway forecast`.",
      width,
    ),
    list,
    paragraph(
      "`leeway help VERB` lists the options of a verb, `leeway help CODE` says what is behind a problem or finding (its " +
        "code stands in brackets); `leeway --version` prints the version.",
      width,
    ),
    paragraph(
      "Exit codes: 0 done; 1 done, the check found what --fail-on asked about; 2 the plan or the call is invalid; " +
        "3 stopped, nothing half-written.",
      width,
    ),
  ]
    .join("\n\n")
    .concat("\n");
}

/** One verb and its options. */
export function verbText(verb: VerbRule): string {
  const width = pageWidth();
  const options = verb.options.map(({ name, value, help }): [string, string] => [
    value === undefined ? `--${name}` : `--${name} ${value}`,
    help,
  ]);
  return [
    `leeway ${verb.name}${wordsAfter(verb)}${options.length > 0 ? " [options]" : ""}`,
    paragraph(`${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}.`, width),
    ...(verb.notes === undefined ? [] : [paragraph(verb.notes, width)]),
    ...(options.length === 0 ? [] : [columns(options, width)]),
  ]
    .join("\n\n")
    .concat("\n");
}

/** `help`, `help VERB` and `help CODE`. */
export async function helpVerb(about: string | undefined): Promise<number> {
  const verb = verbs.find(({ name }) => name === about);
  if (about === undefined || verb?.name === "help") printAnswer(overviewText());
  else if (verb !== undefined) printAnswer(verbText(verb));
  else {
    // Read when asked for only: the tables are long, and no other verb needs them.
    const { codeHelp, codes } = await import("../call/codeHelp.ts");
    const text = codeHelp(about, pageWidth());
    if (text === undefined) return refuse(about, codes);
    printAnswer(text);
  }
  return exitCodes.done;
}

function refuse(about: string, codes: readonly string[]): number {
  const names = verbs.map(({ name }) => name);
  const near = nearest(about, names) ?? nearest(about, codes);
  const remedy = near === undefined ? `Verbs: ${names.join(", ")}.` : `Did you mean \`${near}\`?`;
  printProblems([callProblem("unknown-verb", about, "There is no such verb, and no such code.", remedy)]);
  return exitCodes.invalid;
}
