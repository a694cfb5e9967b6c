import { formatDate } from "@leeway/charts";
import type { CheckAnswer, Finding } from "@leeway/core";
import { acceptedLines, findingBlocks } from "./checkFindings.ts";
import { measureLines } from "./checkMeasures.ts";
import { explanationStamp } from "./confidenceHead.ts";
import { type Next, nextLines } from "./nextLines.ts";
import { cut, type Page, wrap } from "./page.ts";
import { plainText, plainTexts } from "./plainText.ts";

/**
 * Findings as a person reads them: how many of which severity, the grave ones first, what was accepted, the trade's
 * measures, and where to look next.
 *
 * @returns text ending with a newline
 */
export function checkText(given: CheckAnswer, page: Page, planName: string): string {
  // A place in the document is no name: empty, it is the whole.
  const findings = given.findings.map((finding) => ({
    ...plainTexts(finding),
    path: plainText(finding.path),
  }));
  const answer = { ...plainTexts(given), findings };
  const { width, strong } = page;
  const { measures, run } = answer;
  const blocks: string[][] = [
    [headLine(answer, page)],
    [
      ...wrap(countSentence(findings), width).map(strong),
      ...(run === undefined
        ? wrap("Without a forecast: what depends on chances was not looked at.", width)
        : []),
    ],
    ...findingBlocks(findings, page),
    acceptedLines(findings, width),
    measureLines(measures, width),
    nextLines(nextRows(findings, planName), width),
    run === undefined ? [] : wrap(explanationStamp(run), width),
  ];
  return `${blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

function headLine({ plan, today }: CheckAnswer, { width, strong }: Page): string {
  const day = `looked at on ${formatDate(today, "short")}`;
  const title = cut(plan.title, width - day.length - 2);
  return strong(title) + " ".repeat(Math.max(2, width - [...title].length - day.length)) + day;
}

function countSentence(findings: readonly Finding[]): string {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  const count = (severity: Finding["severity"], word: string) => {
    const n = open.filter((finding) => finding.severity === severity).length;
    return `${n === 0 ? "no" : n} ${word}${n === 1 ? "" : "s"}`;
  };
  const accepted = findings.length - open.length;
  const also = accepted === 0 ? "" : ` ${accepted} more ${accepted === 1 ? "is" : "are"} accepted.`;
  if (open.length === 0) return `No findings.${also}`;
  const what = `${open.length} ${open.length === 1 ? "finding" : "findings"}`;
  return `${what}: ${count("error", "error")}, ${count("warning", "warning")}, ${count("note", "note")}.${also}`;
}

/** The verbs that answer what was found. */
function nextRows(findings: readonly Finding[], planName: string): Next[] {
  const found = (...codes: string[]) =>
    findings.some(({ code, accepted }) => accepted === undefined && codes.includes(code));
  return [
    ...(found("date-unlikely", "budget-unlikely", "finish-by-before-plan", "over-budget")
      ? [[`leeway reach ${planName}`, "what it would take"] satisfies Next]
      : []),
    ...(found("response-undecided")
      ? [[`leeway responses ${planName}`, "what each response costs and buys"] satisfies Next]
      : []),
    [`leeway forecast ${planName}`, "finish and cost with their chances"],
  ];
}
