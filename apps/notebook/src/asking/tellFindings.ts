import { checkRules, type Finding, type Plan } from "@leeway/core";

/** A finding, with what the page needs to tell those alike in one line. */
export interface ToldFinding extends Finding {
  /** Its message in two: what was found, and why it matters. */
  says: string;
  why: string;
  /** Name of what it is about, where that has one. */
  name?: string;
}

const whys = new Map<string, string>(checkRules.map(({ code, why }) => [code, why]));

export function tellFindings(plan: Plan, findings: readonly Finding[]): ToldFinding[] {
  const names = new Map<string, string>();
  const { scopeIn, goals } = plan.purpose;
  for (const { id, name } of [
    ...plan.tasks,
    ...plan.risks,
    ...plan.assumptions,
    ...plan.people,
    ...plan.stakeholders,
    ...plan.benefits,
    ...scopeIn,
    ...plan.overheads,
    ...plan.intervals,
  ])
    names.set(id, name);
  for (const { id, statement } of goals) names.set(id, statement);
  return findings.map((finding): ToldFinding => {
    const why = whys.get(finding.code) ?? "";
    const parted = why !== "" && finding.message.endsWith(` ${why}`);
    const name = names.get(finding.ids[0] ?? "");
    return {
      ...finding,
      says: parted ? finding.message.slice(0, -why.length - 1) : finding.message,
      why: parted ? why : "",
      ...(name === undefined ? {} : { name }),
    };
  });
}
