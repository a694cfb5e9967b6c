import { addCapacity } from "./addCapacity.ts";
import type { Problem } from "./problem.ts";
import { raisesSlot } from "./raisesSlot.ts";
import type { Plan, RegisterEntry } from "./types.ts";

/**
 * The same plan with responses and what people `couldAdd` taken in (`with`) and risks, assumptions, optional scope
 * items or adopted responses left out (`without`). Draws are untouched, so two scenarios differ by what was
 * switched and by nothing else. The plan's hash stays that of the document.
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
  const takeable = [
    ...responses.map((response) => response.id),
    ...plan.people.filter((person) => person.couldAdd !== undefined).map((person) => person.id),
  ];
  for (const id of taken) {
    if (!takeable.includes(id)) {
      const rule = "It takes in responses that are not adopted yet, and people who `couldAdd` capacity.";
      problems.push(unknown("with", id, rule, takeable));
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
  const changed: Plan = {
    ...plan,
    risks: plan.risks.map(change),
    assumptions: plan.assumptions.map(change),
    tasks: plan.tasks.map((task) =>
      task.scope !== undefined && left.has(task.scope) && task.started === undefined
        ? { ...task, chance: 0 }
        : task,
    ),
  };
  for (const entry of [...changed.risks, ...changed.assumptions]) {
    if (raisesSlot(entry)) problems.push(raised(entry));
  }
  return { plan: addCapacity(changed, taken), problems };
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
