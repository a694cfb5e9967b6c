import type { Finding } from "@leeway/core";
import type { ToldFinding } from "../asking/tellFindings.ts";
import { findingLines } from "../words/findingLines.ts";

/** Section of the page by the key of the document a finding is at. */
const byKey: Record<string, string> = {
  tasks: "work",
  intervals: "work",
  correlations: "work",
  calendars: "calendar",
  calendar: "calendar",
  phases: "work",
  purpose: "purpose",
  benefits: "purpose",
  appraisal: "purpose",
  people: "people",
  stakeholders: "people",
  risks: "register",
  assumptions: "register",
  decision: "sign-off",
  approvals: "sign-off",
  objections: "sign-off",
  returnTriggers: "sign-off",
  changes: "sign-off",
  acceptedFindings: "sign-off",
};

/** Findings without a place in the document, by their code. */
const wholePlan: Record<string, string> = {
  "purpose-missing": "purpose",
  "problem-missing": "purpose",
  "goals-missing": "purpose",
  "scope-missing": "purpose",
  "scope-out-empty": "purpose",
  "constraints-empty": "purpose",
  "benefits-missing": "purpose",
  "appraisal-missing": "purpose",
  "register-empty": "register",
  "only-threats": "register",
  "correlations-repaired": "register",
  "nobody-accountable": "people",
  "no-people": "people",
  "rate-missing": "people",
  "link-mix": "work",
  "open-start": "work",
  "open-end": "work",
  "path-does-not-respond": "work",
  "cpli-low": "work",
  "bei-low": "work",
  "status-missing": "work",
  "status-stale": "work",
  "no-ranges": "work",
  "ranges-symmetric": "work",
  "ranges-miss-history": "work",
  "one-estimator": "work",
  "too-few-tasks": "work",
  "one-unknown": "work",
  "runs-past-calendar": "work",
};

/** The section that a finding is put right in; money and promise belong to the commitment. */
export function sectionOf({ path, code }: Finding): string {
  const key = /^[a-z]+/i.exec(path)?.[0] ?? "";
  return byKey[key] ?? wholePlan[code] ?? "commitment";
}

/** How many lines of findings there are in each section, those left out that somebody accepted. */
export function countBySection(findings: readonly ToldFinding[]): ReadonlyMap<string, number> {
  const own = new Map<string, ToldFinding[]>();
  for (const finding of findings) {
    if (finding.accepted !== undefined) continue;
    const section = sectionOf(finding);
    const others = own.get(section);
    if (others === undefined) own.set(section, [finding]);
    else others.push(finding);
  }
  return new Map([...own].map(([section, all]) => [section, findingLines(all).length]));
}
