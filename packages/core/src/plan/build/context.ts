import type { PlanDraft } from "../definition/draft.ts";
import type { EstimateDraft } from "../definition/estimate.ts";
import type {
  Benefit,
  Estimate,
  Goal,
  Person,
  Phase,
  Purpose,
  QualityBar,
  ScopeItem,
  Stakeholder,
} from "../types.ts";
import { toEstimate } from "./estimate.ts";
import { must, present } from "./must.ts";

/** What stands round the work: people, stakeholders, phases, purpose and benefits. */
export function buildContext(plan: PlanDraft) {
  const defaults = plan.estimates ?? {};
  const maybe = (draft: EstimateDraft | undefined) =>
    draft === undefined ? undefined : toEstimate(draft, defaults);
  const ownCalendar = plan.calendar ?? "weekdays";

  const people = (plan.people ?? []).map(
    (person): Person =>
      present({
        id: must(person.id),
        name: must(person.name),
        role: person.role,
        rate: person.rate ?? 0,
        share: person.share ?? 1,
        capacity: person.capacity ?? 1,
        calendar: person.calendar ?? ownCalendar,
        away: (person.away ?? []).map((absence) => {
          const from = must(absence.from);
          return present({ from, to: absence.to ?? from, share: absence.share ?? 1, why: absence.why });
        }),
        couldAdd:
          person.couldAdd &&
          present({
            capacity: must(person.couldAdd.capacity),
            cost: person.couldAdd.cost ?? 0,
            from: person.couldAdd.from,
          }),
        note: person.note,
        was: person.was,
      }),
  );

  const stakeholders = (plan.stakeholders ?? []).map((one): Stakeholder => {
    const { inform } = one;
    return present({
      id: must(one.id),
      name: must(one.name),
      role: one.role,
      interest: one.interest,
      stance: one.stance,
      inform:
        inform &&
        present({
          how: inform.how,
          every: inform.every,
          owner: inform.owner,
          what: inform.what,
          from: inform.from,
        }),
      approvesUpTo: one.approvesUpTo,
      delegate: one.delegate,
      note: one.note,
      was: one.was,
    });
  });

  const phases = (plan.phases ?? []).map(
    (phase): Phase =>
      present({
        name: must(phase.name),
        responsible: phase.responsible ?? [],
        accountable: phase.accountable ?? [],
        consulted: phase.consulted ?? [],
        informed: phase.informed ?? [],
        calendar: phase.calendar,
        note: phase.note,
        was: phase.was,
      }),
  );

  const benefits = (plan.benefits ?? []).map(
    (benefit): Benefit =>
      present({
        id: must(benefit.id),
        name: must(benefit.name),
        kind: benefit.kind,
        goal: benefit.goal,
        owner: benefit.owner,
        baseline: benefit.baseline,
        target: benefit.target,
        amount: maybe(benefit.amount),
        quantity: maybe(benefit.quantity),
        unit: benefit.unit,
        worth: benefit.worth,
        per: benefit.per ?? "year",
        starts: benefit.starts,
        lag: benefit.lag,
        ramp: benefit.ramp,
        lasts: benefit.lasts,
        until: benefit.until,
        note: benefit.note,
        was: benefit.was,
      }),
  );

  return { people, stakeholders, phases, benefits, purpose: buildPurpose(plan.purpose, maybe) };
}

function buildPurpose(
  draft: PlanDraft["purpose"],
  maybe: (estimate: EstimateDraft | undefined) => Estimate | undefined,
): Purpose {
  return present({
    problem: draft?.problem,
    goals: (draft?.goals ?? []).map(
      (goal): Goal =>
        present({
          id: must(goal.id),
          statement: must(goal.statement),
          measure: goal.measure,
          target: goal.target,
          by: goal.by,
          owner: goal.owner,
          note: goal.note,
          was: goal.was,
        }),
    ),
    scopeIn: (draft?.scope?.in ?? []).map((item): ScopeItem => {
      const id = must(item.id);
      return present({
        id,
        name: item.name ?? id,
        optional: item.optional ?? false,
        lost: item.lost,
        note: item.note,
        was: item.was,
      });
    }),
    scopeOut: draft?.scope?.out ?? [],
    constraints: draft?.constraints ?? [],
    quality: (draft?.quality ?? []).map(
      (bar): QualityBar =>
        present({
          id: must(bar.id),
          statement: must(bar.statement),
          atLeast: bar.atLeast,
          atMost: bar.atMost,
          unit: bar.unit,
          expected: maybe(bar.expected),
          measured: bar.measured,
          on: bar.on,
          owner: bar.owner,
          note: bar.note,
          was: bar.was,
        }),
    ),
  });
}
