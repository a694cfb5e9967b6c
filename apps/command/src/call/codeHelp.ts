import { checkRules, type ProblemRule, problemFamilies } from "@leeway/core";
import { wrap } from "../text/page.ts";
import { callRules } from "./callRules.ts";

const problems: readonly ProblemRule[] = [...problemFamilies, callRules].flatMap(({ rules }) => rules);

/** Every code `help` knows: those of problems and those of findings. */
export const codes: readonly string[] = [
  ...problems.map(({ code }) => code),
  ...checkRules.map(({ code }) => code as string),
];

/** What stands behind a code, in sentences of at most `width` columns; undefined when there is no such code. */
export function codeHelp(code: string, width: number): string | undefined {
  const problem = problems.find((rule) => rule.code === code);
  const finding = checkRules.find((rule) => rule.code === code);
  const parts = [
    ...(problem === undefined
      ? []
      : [
          `${code}: a problem`,
          problem.what,
          `The rule: ${problem.rule}`,
          `Why: ${problem.why}`,
          `The way out: ${problem.remedy}`,
        ]),
    ...(finding === undefined
      ? []
      : [
          `${code}: a finding of \`leeway check\` (${finding.severity})`,
          `${finding.what}.`,
          `Why: ${finding.why}`,
          `The way out: ${finding.advice}`,
          /^Common practice/.test(finding.source) ? finding.source : `Source: ${finding.source}`,
        ]),
  ];
  if (parts.length === 0) return undefined;
  return `${parts.flatMap((part) => wrap(part, width)).join("\n")}\n`;
}
