import type { ToldFinding } from "../asking/tellFindings.ts";

/** What is told in one line: a finding, or all that are alike. */
export interface FindingLine {
  severity: ToldFinding["severity"];
  /** What is said ahead of the names; undefined: it is one finding, or each says something of its own. */
  of?: string;
  findings: readonly [ToldFinding, ...ToldFinding[]];
}

/** What is said of several at once, after their number, where each says no more than that. */
const together: Readonly<Record<string, string>> = {
  "open-start": "tasks wait for nothing",
  "open-end": "tasks are awaited by nothing",
  "no-effect-on-finish": "tasks cannot move the promised finish",
  "remaining-missing": "tasks are under way, and nothing says what remains of them",
  "range-missing": "tasks take one length of time in every future",
  "basis-missing": "tasks have an estimate that does not say what it rests on",
  "estimator-missing": "tasks have an estimate for which nobody is named",
  "accountable-missing": "tasks have nobody who answers for them",
  "task-without-people": "tasks name nobody and cost nothing",
  "task-without-scope": "tasks name no item in scope",
  "scope-without-task": "items in scope are delivered by no task",
  "goal-unserved": "goals are named by no benefit",
  "rate-missing": "people have no rate, others have",
  "person-unused": "people are named nowhere in the plan",
  "entry-without-owner": "entries of the register are owned by nobody",
  "no-response": "entries of the register have no response written down",
  "signpost-missing": "assumptions could fail with nothing to show it in time",
};

/** The findings of a section, those alike together, each kind where its first one stood. */
export function findingLines(findings: readonly ToldFinding[]): FindingLine[] {
  const alike = new Map<string, [ToldFinding, ...ToldFinding[]]>();
  for (const finding of findings) {
    const { code, severity, advice, ids } = finding;
    // What is about nothing in particular stands alone, and so does what is mended in its own way.
    const key = JSON.stringify(ids.length === 0 ? finding : { code, severity, advice });
    const own = alike.get(key);
    if (own === undefined) alike.set(key, [finding]);
    else own.push(finding);
  }
  return [...alike.values()].map((own): FindingLine => {
    const [{ severity, code }] = own;
    const words = together[code];
    const named = own.every(({ name }) => name !== undefined);
    return own.length === 1 || words === undefined || !named
      ? { severity, findings: own }
      : { severity, findings: own, of: `${own.length} ${words}` };
  });
}
