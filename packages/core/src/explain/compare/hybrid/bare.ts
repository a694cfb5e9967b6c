import { present } from "../../../plan/build/must.ts";
import type { Plan, RegisterEntry, Task } from "../../../plan/types.ts";

/**
 * The plan without what moves neither its finish nor its cost: benefits, spans, funds, lateness, people to inform,
 * texts. Its finishes and costs are those of the plan, to the bit; runs of it compute nothing else.
 */
export function barePlan(plan: Plan): Plan {
  const { lateness: _lateness, appraisal: _appraisal, note: _note, ...rest } = plan;
  const { confidence, finishOf } = plan.commitment;
  return {
    ...rest,
    commitment: present({ confidence, finishOf, funds: [] }),
    purpose: { goals: [], scopeIn: [], scopeOut: [], constraints: [], quality: [] },
    benefits: [],
    stakeholders: [],
    phases: plan.phases.map(({ name, calendar }) =>
      present({ name, calendar, responsible: [], accountable: [], consulted: [], informed: [] }),
    ),
    tasks: plan.tasks.map(bareTask),
    intervals: [],
    risks: plan.risks.map(bareEntry),
    assumptions: plan.assumptions.map(bareEntry),
    approvals: [],
    objections: [],
    changes: [],
    texts: [],
  };
}

function bareTask({ scope: _scope, target: _target, basis: _basis, note: _note, ...task }: Task): Task {
  return { ...task, responsible: [], accountable: [], consulted: [], informed: [], estimatedBy: [] };
}

function bareEntry<T extends RegisterEntry>(entry: T): T {
  const { owner: _owner, note: _note, ...rest } = entry;
  const responses = entry.responses.map(({ owner: _, note: __, ...response }) => response);
  // Only optional keys were left out.
  return { ...rest, responses } as unknown as T;
}
