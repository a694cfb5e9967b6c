import type { PersonDraft, PlanDraft, TaskDraft } from "../definition/draft.ts";
import type { EstimateDraft } from "../definition/estimate.ts";
import type { Estimate, Link, Task, TaskPerson } from "../types.ts";
import { toEstimate } from "./estimate.ts";
import { must, present } from "./must.ts";
import { buildOpinions } from "./opinions.ts";

/** The tasks with links, people and calendars in full. */
export function buildTasks(plan: PlanDraft): Task[] {
  const defaults = plan.estimates ?? {};
  const maybe = (draft: EstimateDraft | undefined) =>
    draft === undefined ? undefined : toEstimate(draft, defaults);
  const people = new Map((plan.people ?? []).map((person) => [must(person.id), person]));
  const phases = new Map((plan.phases ?? []).map((phase) => [must(phase.name), phase]));

  return must(plan.tasks).map((task): Task => {
    const phase = task.phase === undefined ? undefined : phases.get(task.phase);
    const team = (task.people ?? []).map((member) => buildMember(member, people));
    const first = team[0]?.id;
    return present({
      id: must(task.id),
      name: must(task.name),
      phase: task.phase,
      scope: task.scope,
      duration: maybe(task.duration),
      effort: maybe(task.effort),
      milestone: task.milestone === true ? ("finish" as const) : (task.milestone ?? (false as const)),
      target: task.target,
      after: (task.after ?? []).map((link) => buildLink(link, maybe)),
      notBefore: task.notBefore,
      holdToPlan: task.holdToPlan ?? false,
      calendar: task.calendar ?? phase?.calendar ?? plan.calendar ?? "weekdays",
      unbroken: task.unbroken,
      people: team,
      cost: maybe(task.cost),
      due: task.due ?? ("evenly" as const),
      costPerDay: maybe(task.costPerDay),
      priority: task.priority ?? 0,
      detail: task.detail,
      chance: task.chance ?? 1,
      onlyIf: task.onlyIf,
      responsible: task.responsible ?? phase?.responsible ?? (first === undefined ? [] : [first]),
      accountable: task.accountable ?? phase?.accountable ?? [],
      consulted: task.consulted ?? phase?.consulted ?? [],
      informed: task.informed ?? phase?.informed ?? [],
      estimatedBy: task.estimatedBy ?? [],
      basis: task.basis,
      enteredBy: task.enteredBy,
      started: task.started,
      finished: task.finished,
      remaining: maybe(task.remaining),
      spent: task.spent,
      opinions: buildOpinions(task, defaults),
      detailOf: task.detailOf,
      note: task.note,
      was: task.was,
    });
  });
}

function buildMember(
  member: NonNullable<TaskDraft["people"]>[number],
  people: ReadonlyMap<string, PersonDraft>,
): TaskPerson {
  const id = must(member.id);
  return { id, share: member.share ?? people.get(id)?.share ?? 1, along: member.along ?? false };
}

function buildLink(
  link: NonNullable<TaskDraft["after"]>[number],
  maybe: (draft: EstimateDraft | undefined) => Estimate | undefined,
): Link {
  return present({
    task: must(link.task),
    link: link.link ?? "finish-to-start",
    lag: maybe(link.lag?.days) ?? { kind: "fixed", value: 0, unit: "days" },
    lagCalendar: link.lag?.calendar,
  });
}
