import { createInterface } from "node:readline/promises";
import { starterPlan } from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { writeWhole } from "../files/writeWhole.ts";
import { printAnswer, printNote, printProblems } from "../output.ts";

interface Answers {
  title: string;
  start: string;
  currency: string;
}
type Rule = (text: string) => string | undefined;

const isTitle: Rule = (text) =>
  text.trim() === "" ? "A title is needed, e.g. New reading room." : undefined;
const isDate: Rule = (text) => {
  const date = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : undefined;
  const exists = date !== undefined && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
  return exists ? undefined : "A date is written year-month-day, e.g. 2027-02-01.";
};
const isCurrency: Rule = (text) =>
  /^[A-Z]{3}$/.test(text) ? undefined : "A currency is three capital letters, e.g. EUR.";

const RULES: Record<keyof Answers, { rule: Rule; question: string }> = {
  title: { rule: isTitle, question: "What is the project called?" },
  start: { rule: isDate, question: "On which day may work begin?" },
  currency: { rule: isCurrency, question: "In which currency is it paid?" },
};
const KEYS = ["title", "start", "currency"] as const;

/** The Monday after `today`, as an ISO date: a start nobody has to correct at once. */
function nextMonday(today: Date): string {
  const days = (8 - today.getDay()) % 7 || 7;
  return new Date(Date.UTC(today.getFullYear(), today.getMonth(), today.getDate() + days))
    .toISOString()
    .slice(0, 10);
}

async function ask(answers: Answers, isGiven: (key: keyof Answers) => boolean): Promise<Answers> {
  // Questions go to standard error: standard output is the plan's.
  const terminal = createInterface({ input: process.stdin, output: process.stderr });
  terminal.on("SIGINT", () => process.kill(process.pid, "SIGINT"));
  const asked = { ...answers };
  try {
    for (const key of KEYS) {
      if (isGiven(key)) continue;
      for (;;) {
        const text = (await terminal.question(`${RULES[key].question} [${asked[key]}] `)).trim();
        const fault = text === "" ? undefined : RULES[key].rule(text);
        if (text !== "" && fault === undefined) asked[key] = text;
        if (fault === undefined) break;
        printNote(fault);
      }
    }
  } finally {
    terminal.close();
  }
  return asked;
}

function write(path: string, text: string, force: boolean): number {
  try {
    writeWhole(path, text, force);
  } catch (error) {
    printProblems([whyNotWritten(path, error)]);
    return exitCodes.invalid;
  }
  printNote(`Wrote ${path}. Next: leeway forecast ${path}`);
  return exitCodes.done;
}

/** A starter plan, from questions on a terminal or from the options alone with `--yes`. */
export async function newVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  let answers: Answers = {
    title: values.text("title") ?? "A plan to start from",
    start: values.text("start") ?? nextMonday(new Date()),
    currency: values.text("currency") ?? "EUR",
  };
  const out = values.text("out");
  const problems = [...values.problems];
  for (const key of KEYS) {
    const fault = values.has(key) && answers[key] !== "" ? RULES[key].rule(answers[key]) : undefined;
    if (fault !== undefined)
      problems.push(callProblem("option-value", `--${key} ${answers[key]}`, fault, ""));
  }
  const mayAsk = process.stdin.isTTY === true && process.stderr.isTTY === true;
  if (!values.has("yes") && !mayAsk) {
    const rule = "Its questions need a terminal, and there is none here.";
    problems.push(callProblem("no-terminal", "leeway new", rule, "Add --yes to take the defaults."));
  }
  if (problems.length > 0) {
    printProblems(problems);
    return exitCodes.invalid;
  }
  if (!values.has("yes")) answers = await ask(answers, (key) => values.has(key));
  const text = starterPlan(answers);
  if (out !== undefined) return write(out, text, values.has("force"));
  printAnswer(text);
  return exitCodes.done;
}
