import type { Plan } from "../plan/types.ts";
import { beyondCalendar } from "../simulate/beyondCalendar.ts";
import { acceptFindings } from "./accept.ts";
import { checkContext } from "./checkContext.ts";
import { checkRules } from "./checkRules.ts";
import { checkCommitment } from "./checks/commitment.ts";
import { checkDates } from "./checks/dates.ts";
import { checkEstimates } from "./checks/estimates.ts";
import { checkHistory } from "./checks/history.ts";
import { checkIndices } from "./checks/indices.ts";
import { checkLinks } from "./checks/links.ts";
import { checkMoney } from "./checks/money.ts";
import { checkPath } from "./checks/path.ts";
import { checkPeople } from "./checks/people.ts";
import { checkBenefitRegister, checkPurpose } from "./checks/purpose.ts";
import { checkRegister } from "./checks/register.ts";
import { checkResponses } from "./checks/responses.ts";
import { checkResponsibility } from "./checks/responsibility.ts";
import { checkSignOff } from "./checks/signOff.ts";
import type { Check, CheckContext, Found } from "./context.ts";
import type { Finding, FindingOptions, FindingSeverity } from "./types.ts";

const checks: readonly Check[] = [
  checkPurpose,
  checkBenefitRegister,
  checkLinks,
  checkDates,
  checkPath,
  checkIndices,
  checkEstimates,
  checkHistory,
  checkRegister,
  checkResponses,
  checkResponsibility,
  checkPeople,
  checkMoney,
  checkCommitment,
  checkSignOff,
];
const rules = new Map<string, { rule: (typeof checkRules)[number]; at: number }>(
  checkRules.map((rule, at) => [rule.code, { rule, at }]),
);
const severities: readonly FindingSeverity[] = ["error", "warning", "note"];

/**
 * What is to be said about a plan before anybody promises by it. Plain JSON; nothing here is an error of the document,
 * and nothing is added up to a score. Errors first, then warnings, then notes; within those family by family, in the
 * order of the table, then of the document. What was accepted keeps its place and says so.
 *
 * Cost  three placements of the plan as written, and two for each task that sets its finish.
 */
export function planFindings(plan: Plan, options: FindingOptions = {}): Finding[] {
  return findingsOf(checkContext(plan, options));
}

/** The same, for who has the context already. */
export function findingsOf(context: CheckContext): Finding[] {
  const { plan } = context;
  const found = [...pastCalendar(context), ...checks.flatMap((check) => check(context))].map(findingOf);
  const unused = acceptFindings(plan, found).map(findingOf);
  return [...found, ...unused]
    .map((finding, at) => ({ finding, at }))
    .sort((a, b) => order(a.finding) - order(b.finding) || a.at - b.at)
    .map(({ finding }) => finding);
}

function order({ severity, code }: Finding): number {
  return severities.indexOf(severity) * 1e6 + (rules.get(code)?.at ?? 0);
}

function findingOf({ code, path, ids, says, advice, severity }: Found): Finding {
  const { rule } = rules.get(code) as { rule: (typeof checkRules)[number] }; // codes are those of the table
  return {
    code,
    severity: severity ?? rule.severity,
    path,
    ids: [...new Set(ids)],
    message: `${says} ${rule.why}`,
    advice: advice ?? rule.advice,
    source: rule.source,
  };
}

function pastCalendar({ plan, beyond }: CheckContext): Found[] {
  if (beyond === undefined) return [];
  const { path, rule } = beyondCalendar(beyond.model, beyond.at);
  const task = beyond.model.tasks[beyond.at];
  const t = plan.tasks.findIndex(({ id }) => id === task?.id);
  return [
    {
      code: "runs-past-calendar",
      path: t < 0 ? path : `tasks[${t}]`,
      ids: task === undefined ? [] : [task.id],
      says: `${task?.name ?? "The plan"}: ${rule}`,
    },
  ];
}
