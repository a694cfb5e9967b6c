import type { PlanDraft } from "../definition/draft.ts";
import type { EstimateDraft } from "../definition/estimate.ts";
import type { AcceptedFinding, Approval, Change, Interval, Objection, Overhead, Plan } from "../types.ts";
import { buildCalendars } from "./calendars.ts";
import { buildContext } from "./context.ts";
import { buildDecision } from "./decision.ts";
import { toEstimate } from "./estimate.ts";
import { must, present } from "./must.ts";
import { buildPageTexts } from "./pageTexts.ts";
import { buildRegister } from "./register.ts";
import { buildReturnTriggers } from "./returnTriggers.ts";
import { buildTasks } from "./tasks.ts";

/** The plan a faultless draft stands for, defaults filled in. */
export function buildPlan(draft: PlanDraft, hashes: Pick<Plan, "sha256" | "approvalSha256">): Plan {
  const defaults = draft.estimates ?? {};
  const maybe = (estimate: EstimateDraft | undefined) =>
    estimate === undefined ? undefined : toEstimate(estimate, defaults);
  const tasks = buildTasks(draft);
  const { commitment, lateness, appraisal } = draft;

  return present({
    format: 1 as const,
    title: must(draft.title),
    currency: draft.currency ?? "EUR",
    start: must(draft.start),
    statusDate: draft.statusDate,
    seed: draft.seed ?? "leeway",
    iterations: draft.iterations ?? 10000,
    commitment: present({
      finishOf: commitment?.finishOf,
      confidence: commitment?.confidence ?? 0.8,
      confidenceByDefault: commitment && commitment.confidence === undefined ? (true as const) : undefined,
      finishBy: commitment?.finishBy,
      budget: commitment?.budget,
      reserve: commitment?.reserve,
      holder: commitment?.holder,
      releaseRule: commitment?.releaseRule,
      funds: (commitment?.funds ?? []).map(({ from, amount }) => ({
        from: must(from),
        amount: must(amount),
      })),
    }),
    decision: buildDecision(draft.decision),
    lateness:
      lateness &&
      present({
        after: lateness.after ?? commitment?.finishBy,
        perWeek: maybe(lateness.perWeek),
        once: maybe(lateness.once),
      }),
    calendars: buildCalendars(draft.calendars),
    calendar: draft.calendar ?? "weekdays",
    ...buildContext(draft),
    appraisal: appraisal && { years: appraisal.years ?? 100, discountRate: appraisal.discountRate ?? 0 },
    respectCapacity: draft.respectCapacity ?? true,
    tasks,
    intervals: (draft.intervals ?? []).map((interval): Interval => {
      const id = must(interval.id);
      return present({
        id,
        name: interval.name ?? id,
        from: must(interval.from),
        to: must(interval.to),
        atMost: interval.atMost,
        note: interval.note,
        was: interval.was,
      });
    }),
    ...buildRegister(draft, tasks),
    correlations: (draft.correlations ?? []).map(({ between, coefficient, cause }) =>
      present({ between: must(between), coefficient: must(coefficient), cause }),
    ),
    overheads: (draft.overheads ?? []).map(
      (overhead): Overhead =>
        present({
          id: must(overhead.id),
          name: must(overhead.name),
          perDay: maybe(overhead.perDay) ?? { kind: "fixed", value: 0, unit: "days" },
          from: overhead.from,
          to: overhead.to,
          note: overhead.note,
          was: overhead.was,
        }),
    ),
    returnTriggers: buildReturnTriggers(draft.returnTriggers),
    texts: buildPageTexts(draft.texts),
    ...buildDecisions(draft),
    note: draft.note,
    was: draft.was,
    ...hashes,
  });
}

function buildDecisions(draft: PlanDraft) {
  const approvals = (draft.approvals ?? []).map(
    (approval): Approval =>
      present({
        who: must(approval.who),
        decision: approval.decision ?? "pending",
        date: approval.date,
        conditions: approval.conditions,
        conditionsBy: approval.conditionsBy,
        conditionsMet: approval.conditionsMet,
        plan: approval.plan,
        by: approval.by,
        note: approval.note,
        was: approval.was,
      }),
  );
  const objections = (draft.objections ?? []).map(
    (objection): Objection =>
      present({
        id: must(objection.id),
        who: objection.who,
        date: objection.date,
        text: objection.text,
        answer: objection.answer,
        evidence: objection.evidence,
        state: objection.state ?? "open",
        changedPlan: objection.changedPlan ?? false,
        acceptedBy: objection.acceptedBy,
        reopenedBy: objection.reopenedBy,
        note: objection.note,
        was: objection.was,
      }),
  );
  const changes = (draft.changes ?? []).map(
    (change): Change =>
      present({
        date: change.date,
        who: change.who,
        what: change.what,
        why: change.why,
        approvedBy: change.approvedBy,
        note: change.note,
        was: change.was,
      }),
  );
  const acceptedFindings = (draft.acceptedFindings ?? []).map(
    (accepted): AcceptedFinding =>
      present({
        finding: must(accepted.finding),
        ids: accepted.ids,
        who: must(accepted.who),
        date: must(accepted.date),
        why: must(accepted.why),
        note: accepted.note,
        was: accepted.was,
      }),
  );
  return { approvals, objections, changes, acceptedFindings };
}
