import { addCapacity } from "./addCapacity.ts";
import type { Problem } from "./problem.ts";
import { raisesSlot } from "./raisesSlot.ts";
import { type ScenarioChoice, scenarioProblems } from "./scenarioProblems.ts";
import type { Plan, RegisterEntry, Task } from "./types.ts";

/**
 * The same plan with responses and what people `couldAdd` taken in (`with`) and risks, assumptions, optional scope
 * items or adopted responses left out (`without`). Draws are untouched, so two scenarios differ by what was
 * switched and by nothing else. The plan's hash stays that of the document.
 */
export function applyScenario(plan: Plan, choice: ScenarioChoice): { plan: Plan; problems: Problem[] } {
  const taken = new Set(choice.with ?? []);
  const left = new Set(choice.without ?? []);
  if (taken.size === 0 && left.size === 0) return { plan, problems: [] };
  const problems = scenarioProblems(plan, choice);
  const change = <T extends RegisterEntry>(entry: T): T => ({
    ...entry,
    status: left.has(entry.id) ? "closed" : entry.status,
    responses: entry.responses.map((response) => ({
      ...response,
      adopted: !left.has(response.id) && (response.adopted || taken.has(response.id)),
    })),
  });
  const changed: Plan = {
    ...plan,
    risks: plan.risks.map(change),
    assumptions: plan.assumptions.map(change),
    tasks: plan.tasks.map((task) =>
      task.scope !== undefined && left.has(task.scope) && !begun(task) ? { ...task, chance: 0 } : task,
    ),
  };
  for (const entry of [...changed.risks, ...changed.assumptions]) {
    if (raisesSlot(entry)) problems.push(raised(entry));
  }
  return { plan: addCapacity(changed, taken), problems };
}

/** Work that has begun stays, whatever is left out. */
function begun({ started, finished }: Task): boolean {
  return (started ?? finished) !== undefined;
}

function raised({ id, group, probability, responses }: RegisterEntry): Problem {
  const adopted = responses.filter((response) => response.adopted).map((response) => response.id);
  return {
    code: "group-raised",
    severity: "error",
    path: "--with",
    received: adopted.map((response) => `\`${response}\``).join(", "),
    rule: `In group ${group} responses may not raise the chance of \`${id}\`, which is ${probability}.`,
    remedy: "Leave out the one that raises it, or lower its `probability`.",
  };
}
