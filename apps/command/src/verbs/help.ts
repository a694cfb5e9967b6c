import { callProblem } from "../call/callProblem.ts";
import { nearest } from "../call/nearest.ts";
import { type VerbRule, verbs, wordsAfter } from "../call/verbs.ts";
import { exitCodes } from "../exitCodes.ts";
import { printAnswer, printProblems } from "../output.ts";

function columns(rows: [left: string, right: string][]): string {
  const widest = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(widest)}  ${right}`).join("\n");
}

/** The list of verbs and of exit codes. */
export function overviewText(): string {
  const list = columns(verbs.map((verb) => [`${verb.name}${wordsAfter(verb)}`, verb.summary]));
  return `leeway VERB PLAN [options]

From a project plan to a date and a sum you can commit to. PLAN is a plan document (YAML or JSON), or - for
standard input.

${list}

\`leeway help VERB\` lists the options of a verb; \`leeway --version\` prints the version.
Exit codes: 0 done; 1 done, the check found what --fail-on asked about; 2 the plan or the call is invalid;
3 stopped, nothing half-written.
`;
}

/** One verb and its options. */
export function verbText(verb: VerbRule): string {
  const options = verb.options.map(({ name, value, help }): [string, string] => [
    value === undefined ? `--${name}` : `--${name} ${value}`,
    help,
  ]);
  return [
    `leeway ${verb.name}${wordsAfter(verb)}${options.length > 0 ? " [options]" : ""}`,
    `${verb.summary[0]?.toUpperCase()}${verb.summary.slice(1)}.`,
    ...(verb.notes === undefined ? [] : [verb.notes]),
    ...(options.length === 0 ? [] : [columns(options)]),
  ]
    .join("\n\n")
    .concat("\n");
}

/** `help` and `help VERB`. */
export function helpVerb(about: string | undefined): number {
  const verb = verbs.find(({ name }) => name === about);
  if (about === undefined || verb?.name === "help") printAnswer(overviewText());
  else if (verb !== undefined) printAnswer(verbText(verb));
  else {
    const names = verbs.map(({ name }) => name);
    const near = nearest(about, names);
    const remedy = near === undefined ? `Verbs: ${names.join(", ")}.` : `Did you mean \`${near}\`?`;
    printProblems([callProblem("unknown-verb", about, "There is no such verb.", remedy)]);
    return exitCodes.invalid;
  }
  return exitCodes.done;
}
