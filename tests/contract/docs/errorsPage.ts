import { checkRules, problemFamilies } from "@leeway/core";
import { callRules } from "../../../apps/command/src/call/callRules.ts";

const HEAD = `# Errors: what each code means

Every problem the reader, the command or the library tells has a code. The command prints it in brackets behind the message,
\`--json\` and the library carry it as \`code\`, and \`leeway help CODE\` prints what stands here. A message names the place, what
came, the rule and the way out for that one place; this page says the same in general, and why there is such a rule.

Nothing is guessed: as long as a document has an error, nothing is worked out from it. All problems of a document are told at
once. A warning changes nothing; it says what was assumed.

What \`leeway check\` says about a correct plan is a finding and not an error. Findings have codes too, each with its reason and
source in [FINDINGS.md](../packages/core/FINDINGS.md); they are listed at the end.

This page is written from the tables in \`packages/core/src/problems/rules\` and \`apps/command/src/call/callRules.ts\`:
\`LEEWAY_WRITE_OUTPUT=1 npx vitest run --project unit tests/contract/docs/errors.test.ts\`.
`;

/** The page of every code, from the tables. */
export function errorsPage(): string {
  const families = [...problemFamilies, callRules].map(({ title, rules }) => {
    const sections = rules.map(
      ({ code, what, rule, why, remedy }) =>
        `### ${code}\n\n${what}\n\n- The rule: ${rule}\n- Why: ${why}\n- The way out: ${remedy}`,
    );
    return `## ${title}\n\n${sections.join("\n\n")}\n`;
  });
  const findings = checkRules.map(
    ({ code, what }) => `- [${code}](../packages/core/FINDINGS.md#${code}): ${what}.`,
  );
  return `${[HEAD, ...families].join("\n")}\n## Findings\n\n${findings.join("\n")}\n`;
}
