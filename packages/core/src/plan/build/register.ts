import type {
  AssumptionDraft,
  ImpactDraft,
  PlanDraft,
  ResponseDraft,
  RiskDraft,
} from "../definition/draft.ts";
import type { EstimateDraft } from "../definition/estimate.ts";
import type { Assumption, Impact, Response, Risk, Task } from "../types.ts";
import { toEstimate } from "./estimate.ts";
import { withFacts } from "./facts.ts";
import { must, present } from "./must.ts";

/** Risks and assumptions with impacts resolved to tasks. */
export function buildRegister(
  plan: PlanDraft,
  tasks: readonly Task[],
): { risks: Risk[]; assumptions: Assumption[] } {
  const defaults = plan.estimates ?? {};
  const maybe = (draft: EstimateDraft | undefined) =>
    draft === undefined ? undefined : toEstimate(draft, defaults);
  const byPhase = new Map<string, string[]>();
  for (const task of tasks) {
    if (task.phase === undefined || task.milestone !== false) continue;
    const ids = byPhase.get(task.phase);
    if (ids === undefined) byPhase.set(task.phase, [task.id]);
    else ids.push(task.id);
  }

  const impact = (draft: ImpactDraft): Impact =>
    present({
      tasks: draft.tasks ?? (draft.phase === undefined ? [] : [...(byPhase.get(draft.phase) ?? [])]),
      phase: draft.phase,
      delay: maybe(draft.delay),
      factor: maybe(draft.factor),
      wait: maybe(draft.wait),
      cost: maybe(draft.cost),
    });
  const response = (draft: ResponseDraft): Response =>
    present({
      id: must(draft.id),
      action: must(draft.action),
      owner: draft.owner,
      due: draft.due,
      cost: maybe(draft.cost),
      adopted: draft.adopted ?? false,
      probability: draft.probability,
      scale: draft.scale ?? 1,
      note: draft.note,
      was: draft.was,
    });
  const shared = (draft: RiskDraft | AssumptionDraft) => ({
    id: must(draft.id),
    owner: draft.owner,
    cause: draft.cause,
    impacts: (draft.impacts ?? []).map(impact),
    responses: (draft.responses ?? []).map(response),
    group: draft.group,
    status: draft.status ?? ("open" as const),
    actual: draft.actual && present({ cost: draft.actual.cost, days: draft.actual.days }),
    expires: draft.expires,
    onlyIf: draft.onlyIf,
    note: draft.note,
    was: draft.was,
  });

  return {
    risks: (plan.risks ?? []).map(
      (draft): Risk =>
        withFacts(
          present({
            kind: "risk" as const,
            name: must(draft.name),
            probability: must(draft.probability),
            ...shared(draft),
          }),
        ),
    ),
    assumptions: (plan.assumptions ?? []).map(
      (draft): Assumption =>
        withFacts(
          present({
            kind: "assumption" as const,
            name: must(draft.statement),
            probability: must(draft.chanceWrong),
            reviewBy: draft.reviewBy,
            signpost: draft.signpost,
            tripped: draft.tripped,
            ...shared(draft),
          }),
        ),
    ),
  };
}
