import { type Problem, readPlan } from "@leeway/core";
import { OptionValues } from "../call/optionValues.ts";
import type { Call } from "../call/parseCall.ts";
import { exitCodes } from "../exitCodes.ts";
import { readDocument } from "../files/readDocument.ts";
import { printAnswer, printJson, printProblems } from "../output.ts";

/** One finding about a plan, as `check --json` prints it. */
export interface Finding {
  code: string;
  severity: "error" | "warning" | "note";
  path: string;
  ids: string[];
  message: string;
  advice: string;
  source: string;
}

const SEVERITIES = ["error", "warning", "note"] as const;

function findingOf(problem: Problem): Finding {
  const { code, severity, path, received, rule, remedy } = problem;
  const message = received === "" ? rule : `${received}: ${rule}`;
  return { code, severity, path, ids: [], message, advice: remedy, source: "the plan format" };
}

function findingsText(findings: readonly Finding[], name: string): string {
  if (findings.length === 0) return `${name}: no findings.\n`;
  const lines = findings.map(({ severity, path, message, advice }) => {
    const place = path === "" ? "" : ` ${path}`;
    return `${severity}${place}: ${message} ${advice}`.trim();
  });
  return `${lines.join("\n")}\n`;
}

/** Lists findings; code 1 when one is as severe as `--fail-on` asks, code 2 when there is no plan to check. */
export async function checkVerb(call: Call): Promise<number> {
  const values = new OptionValues(call.options);
  const failOn = values.oneOf("fail-on", SEVERITIES);
  if (values.problems.length > 0) {
    printProblems(values.problems);
    return exitCodes.invalid;
  }
  const document = await readDocument(call.subject ?? "-");
  if (document.text === undefined) {
    if (document.problem !== undefined) printProblems([document.problem], document.name);
    return exitCodes.invalid;
  }
  const { plan, problems } = readPlan(document.text);
  if (problems.length > 0) printProblems(problems, document.name);
  const findings = problems.map(findingOf);
  if (values.has("json")) printJson({ findings });
  else if (plan !== undefined) printAnswer(findingsText(findings, document.name));
  if (plan === undefined) return exitCodes.invalid;
  const worst = failOn === undefined ? -1 : SEVERITIES.indexOf(failOn);
  const found = findings.some(({ severity }) => SEVERITIES.indexOf(severity) <= worst);
  return found ? exitCodes.found : exitCodes.done;
}
