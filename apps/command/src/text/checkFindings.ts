import { checkRules, type Finding, type FindingSeverity } from "@leeway/core";
import { inset } from "./inset.ts";
import { type Page, wrap } from "./page.ts";

/** Findings of one code that are shown one by one; the others are named by their ids. */
const SHOWN = 4;
const headings = { error: "Errors", warning: "Warnings", note: "Notes" } as const;
const rules = new Map<string, (typeof checkRules)[number]>(checkRules.map((rule) => [rule.code, rule]));

/** The findings of one severity and code, in their order. */
interface Group {
  code: string;
  findings: Finding[];
}

function groupsOf(findings: readonly Finding[]): Group[] {
  const groups = new Map<string, Group>();
  for (const finding of findings) {
    const group = groups.get(finding.code);
    if (group === undefined) groups.set(finding.code, { code: finding.code, findings: [finding] });
    else group.findings.push(finding);
  }
  return [...groups.values()];
}

/** One block for each severity that has findings nobody has accepted: a heading, then code by code. */
export function findingBlocks(findings: readonly Finding[], page: Page): string[][] {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  return (Object.keys(headings) as FindingSeverity[]).flatMap((severity) => {
    const groups = groupsOf(open.filter((finding) => finding.severity === severity));
    return groups.map((group, g) => [
      ...(g === 0 ? [page.strong(headings[severity]), ""] : []),
      ...groupLines(group, page),
    ]);
  });
}

function groupLines({ code, findings }: Group, { width, strong }: Page): string[] {
  const rule = rules.get(code);
  const [first] = findings;
  if (first === undefined) return [];
  const family = rule === undefined ? "document" : rule.family;
  const count = findings.length === 1 ? "" : ` (${findings.length})`;
  const shown = findings.length <= SHOWN + 1 ? findings : findings.slice(0, SHOWN);
  const rest = findings.slice(shown.length).flatMap(({ ids, path }) => ids[0] ?? path);
  const why = rule === undefined ? "" : `${rule.why} `;
  return [
    ...wrap(`${rule?.what ?? "The document"}${count}  [${family}/${code}]`, width).map(strong),
    ...shown.flatMap((finding) => itemLines(finding, rule?.why, width)),
    ...(rest.length === 0
      ? []
      : wrap(`and ${rest.length} more: ${rest.join(", ")}`, width - 4).map((line) => `    ${line}`)),
    ...inset(`${why}${first.advice}`, width),
    ...inset(sourceLine(first.source), width),
  ];
}

/** "Common practice, no source." needs no word before it. */
function sourceLine(source: string): string {
  return /^common practice/i.test(source) ? source : `Source: ${source}`;
}

function itemLines({ message, path, ids }: Finding, why: string | undefined, width: number): string[] {
  const said = why !== undefined && message.endsWith(why) ? message.slice(0, -why.length).trim() : message;
  // A number in a list is hard to find; the id is not.
  const place = /^\w+\[\d+\]/.test(path) && ids[0] !== undefined ? `${path} ${ids[0]}` : path;
  return wrap(`- ${said}${place === "" ? "" : ` (${place})`}`, width - 2, "  ").map((line) => `  ${line}`);
}

/** What was accepted, by whom and why: still there, no longer in the way. */
export function acceptedLines(findings: readonly Finding[], width: number): string[] {
  const accepted = findings.filter((finding) => finding.accepted !== undefined);
  if (accepted.length === 0) return [];
  return [
    "Accepted",
    ...accepted.flatMap((finding) => {
      const { who, date, why } = finding.accepted ?? { who: "", date: "", why: "" };
      const about = finding.ids.length === 0 ? "" : ` ${finding.ids[0]}`;
      return wrap(`- ${finding.code}${about}: ${why} (${who}, ${date})`, width - 2, "  ").map(
        (line) => `  ${line}`,
      );
    }),
  ];
}
