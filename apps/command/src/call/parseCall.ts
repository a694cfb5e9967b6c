import { parseArgs } from "node:util";
import type { Problem } from "@leeway/core";
import { callProblem } from "./callProblem.ts";
import { nearest } from "./nearest.ts";
import type { OptionRule, VerbRule } from "./verbRule.ts";
import { verbs } from "./verbs.ts";

/** A call that keeps the rules of its verb. */
export interface Call {
  verb: (typeof verbs)[number];
  /** The plan (`-`: standard input), or for `help` the verb asked about. */
  subject?: string;
  /** The plan it is compared with, for a verb that takes two; or the word after the plan. */
  second?: string;
  /** All words after the plan, of a verb that takes many. */
  rest?: string[];
  /** Values given, in order; a switch has one empty text. */
  options: Map<string, string[]>;
}
export type ParsedCall =
  | { kind: "call"; call: Call }
  | { kind: "help"; about?: VerbRule }
  | { kind: "version" }
  | { kind: "problems"; problems: Problem[] };

function unknownOption(rawName: string, verb: VerbRule): Problem {
  const near = nearest(rawName.replace(/^-+/, ""), ["help", ...verb.options.map((option) => option.name)]);
  return callProblem(
    "unknown-option",
    rawName,
    `${verb.name} has no such option.`,
    near === undefined ? `See \`leeway help ${verb.name}\`.` : `Did you mean --${near}?`,
  );
}

function findVerb(word: string | undefined): Call["verb"] | Problem {
  if (word === undefined) {
    return callProblem("missing-verb", "leeway", "It needs a verb.", "Try `leeway help`.");
  }
  const found = verbs.find((verb) => verb.name === word);
  if (found !== undefined) return found;
  const names = verbs.map((verb) => verb.name);
  const near = nearest(word, names);
  const remedy = near === undefined ? `Verbs: ${names.join(", ")}.` : `Did you mean \`${near}\`?`;
  return callProblem("unknown-verb", word, "There is no such verb.", remedy);
}

function checkSubjects(verb: VerbRule, words: readonly string[], problems: Problem[]): void {
  const wordsAfterPlan =
    verb.word?.many === true ? Number.POSITIVE_INFINITY : verb.word === undefined ? 0 : 1;
  const most = verb.name === "help" ? 1 : verb.plans + wordsAfterPlan;
  const needed = verb.word !== undefined && verb.word.optional !== true && verb.word.many !== true;
  if (verb.word !== undefined && needed && words.length === verb.plans) {
    const { name, means } = verb.word;
    const rule = `${verb.name} needs ${means} after the plan.`;
    const remedy = `Write \`leeway ${verb.name} PLAN ${name}\`.`;
    problems.push(callProblem("missing-word", words.join(" "), rule, remedy));
  }
  if (words.length < verb.plans) {
    const [needs, names] = verb.plans === 2 ? ["two plans", "OLD NEW"] : ["a plan", "PLAN"];
    const what =
      verb.plans === 2 ? "files, one of them - for standard input" : "a file or - for standard input";
    const remedy = `Write \`leeway ${verb.name} ${names}\`, ${what}.`;
    problems.push(callProblem("missing-plan", words.join(" "), `${verb.name} needs ${needs}.`, remedy));
  }
  if (verb.plans === 2 && words[0] === "-" && words[1] === "-") {
    const rule = "Standard input can be one of the plans only.";
    problems.push(callProblem("repeated-plan", "- -", rule, "Name a file for the other."));
  }
  for (const extra of words.slice(most)) {
    const takes =
      verb.word !== undefined
        ? `takes ${verb.plans === 0 ? "" : "one plan and "}${verb.word.means}.`
        : (["takes no file.", "takes one plan at a time.", "takes two plans."][most] ?? "");
    problems.push(callProblem("extra-word", extra, `${verb.name} ${takes}`, "Leave it out."));
  }
}

/**
 * Reads the words after `leeway`. Every wrong one is a problem, all listed at once, each with the nearest
 * known word. `--help` and `--version` answer whatever else is there.
 */
export function parseCall(words: readonly string[]): ParsedCall {
  const wanted = words.find((word) => !word.startsWith("-"));
  const verb = findVerb(wanted);
  const known: readonly OptionRule[] = "options" in verb ? verb.options : [];
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(
      known.map(({ name, value }) => [
        name,
        { type: value === undefined ? "boolean" : "string", multiple: true } as const,
      ]),
    ),
    strict: false, // strict stops at the first wrong word; the tokens tell of all of them
    allowPositionals: true,
    tokens: true,
  });
  const options = new Map<string, string[]>();
  const positionals: string[] = [];
  const problems: Problem[] = [];
  let valueAt = -1; // where the value of a mistyped option stands: it is no plan
  for (const token of tokens) {
    if (token.kind === "positional" && token.index !== valueAt) positionals.push(token.value);
    if (token.kind !== "option") continue;
    if (token.name === "help" || token.rawName === "-h") {
      return "options" in verb && verb.name !== "help" ? { kind: "help", about: verb } : { kind: "help" };
    }
    if (token.name === "version") return { kind: "version" };
    if (!("options" in verb)) continue;
    const rule = token.rawName.startsWith("--") ? known.find(({ name }) => name === token.name) : undefined;
    if (rule === undefined) {
      const meant = nearest(
        token.name,
        known.map(({ name }) => name),
      );
      if (!token.inlineValue && known.find(({ name }) => name === meant)?.value !== undefined) {
        valueAt = token.index + 1;
      }
      problems.push(unknownOption(token.rawName, verb));
    } else if (rule.value === undefined && token.value !== undefined) {
      const remedy = `Write only ${token.rawName}.`;
      problems.push(
        callProblem("option-value", `${token.rawName}=${token.value}`, "It takes no value.", remedy),
      );
    } else if (
      rule.value !== undefined &&
      (token.value === undefined || (!token.inlineValue && /^--?[a-z]/.test(token.value)))
    ) {
      const remedy = `Write ${token.rawName} ${rule.value}.`;
      problems.push(callProblem("option-value", token.rawName, "It needs a value.", remedy));
    } else {
      const given = options.get(rule.name) ?? [];
      if (given.length > 0 && rule.repeats !== true && rule.value !== undefined) {
        problems.push(callProblem("option-twice", token.rawName, "It is given twice.", "Keep one of them."));
      }
      options.set(rule.name, [...given, token.value ?? ""]);
    }
  }
  if (!("options" in verb)) return { kind: "problems", problems: [verb] };
  const [, subject, second] = positionals;
  const rest = verb.word?.many === true ? positionals.slice(1 + verb.plans) : undefined;
  checkSubjects(verb, positionals.slice(1), problems);
  if (problems.length > 0) return { kind: "problems", problems };
  return {
    kind: "call",
    call: {
      verb,
      options,
      ...(subject === undefined ? {} : { subject }),
      ...(second === undefined ? {} : { second }),
      ...(rest === undefined ? {} : { rest }),
    },
  };
}
