import type { Problem } from "./problem.ts";
import type { Plan, RegisterEntry } from "./types.ts";

/**
 * The same plan with responses taken in (`with`) and risks, assumptions, optional scope items or adopted
 * responses left out (`without`). Draws are untouched, so two scenarios differ by what was switched and by
 * nothing else. The plan's hash stays that of the document.
 */
export function applyScenario(
  plan: Plan,
  choice: { with?: readonly string[]; without?: readonly string[] },
): { plan: Plan; problems: Problem[] } {
  const taken = new Set(choice.with ?? []);
  const left = new Set(choice.without ?? []);
  if (taken.size === 0 && left.size === 0) return { plan, problems: [] };
  const entries: RegisterEntry[] = [...plan.risks, ...plan.assumptions];
  const responses = entries.flatMap((entry) => entry.responses);
  const optional = plan.purpose.scopeIn.filter((item) => item.optional);
  const problems: Problem[] = [];
  for (const id of taken) {
    if (!responses.some((response) => response.id === id)) {
      problems.push(
        unknown(
          "with",
          id,
          "It takes in responses that are not adopted yet.",
          responses.map((r) => r.id),
        ),
      );
    }
  }
  const droppable = [...entries, ...responses, ...optional].map((item) => item.id);
  for (const id of left) {
    if (!droppable.includes(id)) {
      problems.push(
        unknown(
          "without",
          id,
          "It leaves out risks, assumptions, optional scope items and responses.",
          droppable,
        ),
      );
    }
  }
  const change = <T extends RegisterEntry>(entry: T): T => ({
    ...entry,
    status: left.has(entry.id) ? "closed" : entry.status,
    responses: entry.responses.map((response) => ({
      ...response,
      adopted: !left.has(response.id) && (response.adopted || taken.has(response.id)),
    })),
  });
  return {
    plan: {
      ...plan,
      risks: plan.risks.map(change),
      assumptions: plan.assumptions.map(change),
      tasks: plan.tasks.map((task) =>
        task.scope !== undefined && left.has(task.scope) && task.started === undefined
          ? { ...task, chance: 0 }
          : task,
      ),
    },
    problems,
  };
}

function unknown(option: string, id: string, rule: string, known: readonly string[]): Problem {
  return {
    code: "unknown-id",
    severity: "error",
    path: `--${option}`,
    received: `\`${id}\``,
    rule,
    remedy: known.length === 0 ? "This plan has none." : `Name one of: ${[...known].sort().join(", ")}.`,
  };
}
