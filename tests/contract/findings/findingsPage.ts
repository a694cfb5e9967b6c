import { type CheckRule, checkRules, findingFamilies, measureRules } from "@leeway/core";

const FAMILIES = {
  purpose: "Purpose",
  logic: "Logic",
  estimates: "Estimates",
  register: "Register",
  people: "People",
  money: "Money",
  commitment: "Commitment",
  "sign-off": "Sign-off",
} as const;

const HEAD = `# Findings of the check

What \`leeway check\` and \`planFindings(plan, { today, forecast })\` say about a plan before anybody promises by it. A
finding is a matter of judgement and never an error of the document; severity comes before number, and nothing is
added up to a score.

- **error**: the plan contradicts its own promise, or its answer would mean nothing.
- **warning**: the answer is weaker than it looks.
- **note**: a question to ask.

Each names its place in the document (\`tasks[3].after[0]\`; a lone item of a list counts as \`[0]\`), the ids of what it is
about, why it matters, where the rule comes from and what to do. A threshold is a prompt to ask and no verdict. What depends on
chances is looked for only where a forecast is handed in; what depends on the day only where \`today\` is.

A finding that was looked at and may stay goes into the plan:

\`\`\`yaml
acceptedFindings:
  - finding: long-task
    ids: chairs-delivered
    who: project-lead
    date: 2027-01-15
    why: Waiting for a ship; there is nothing to break down.
\`\`\`

It is still listed, with who accepted it and why, and no longer counts for \`--fail-on\`. An acceptance takes findings of its
code that are about nothing but the ids it names; without \`ids\` all of its code. Acceptances are left out of the plan's
hash.

This page is written from the table in \`src/findings/rules\`:
\`LEEWAY_WRITE_OUTPUT=1 npx vitest run --project unit tests/contract/findings/page.test.ts\`.
`;

/** The page of all checks and measures, from the tables. */
export function findingsPage(): string {
  const families = findingFamilies.map((family) => {
    const rules = checkRules.filter((rule) => rule.family === family);
    return `## ${FAMILIES[family]}\n\n${rules.map(section).join("\n\n")}\n`;
  });
  const measures = measureRules.map(
    ({ name, definition, threshold, bound, unit, question, source }) =>
      `- **${name}.** ${definition} Threshold: ${limit(bound, threshold, unit)}. Outside it, ask: ${question} Source: ${source}`,
  );
  const about =
    "Figures about the whole plan as written, each beside the threshold the trade names for it " +
    "(`planMeasures(plan, { today })`). Tasks are unfinished ones, milestones left out; at exactly the threshold it is kept.";
  return `${[HEAD, ...families].join("\n")}\n## Measures\n\n${about}\n\n${measures.join("\n")}\n`;
}

function section({ code, severity, what, why, advice, source, threshold, needsForecast }: CheckRule): string {
  const lines = [
    `### ${code}`,
    "",
    `${what} (${severity}${needsForecast === true ? "; needs a forecast" : ""}). ${why} ${advice}`,
    "",
    ...(threshold === undefined ? [] : [`Threshold: ${threshold}.`]),
    /^Common practice/.test(source) ? source : `Source: ${source}`,
  ];
  return lines.join("\n");
}

function limit(bound: string, threshold: number, unit: string): string {
  if (threshold === 0) return "none";
  const value = unit === "share" ? `${Math.round(threshold * 100)} %` : String(threshold);
  return `${bound} ${value}${unit === "working days" ? " working days" : ""}`;
}
