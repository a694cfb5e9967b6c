import type { Id, Plan } from "../../plan/types.ts";
import type { Role, RoleFault, RoleLoad, RoleMatrix, RoleRow } from "./types.ts";

/** Which rows and columns the matrix has. */
export interface RoleOptions {
  /** What the rows are; default tasks. */
  rows?: "tasks" | "phases";
}
type Parts = Record<"responsible" | "accountable" | "consulted" | "informed", readonly Id[]>;

const LETTERS = [
  ["R", "responsible"],
  ["A", "accountable"],
  ["C", "consulted"],
  ["I", "informed"],
] as const satisfies readonly (readonly [Role, keyof Parts])[];

/**
 * Who does what, answers for it, is asked and is told, for every task or every phase. A row is faulty unless exactly one
 * is accountable and somebody is responsible: common practice, no source. Milestones need no one who does them.
 */
export function roleMatrix(plan: Plan, { rows: which = "tasks" }: RoleOptions = {}): RoleMatrix {
  const source: { row: Omit<RoleRow, "roles">; parts: Parts; point: boolean }[] =
    which === "phases"
      ? plan.phases.map((phase) => ({
          row: { kind: "phase", id: phase.name, name: phase.name },
          parts: phase,
          point: false,
        }))
      : plan.tasks.map((task) => ({
          row: {
            kind: "task",
            id: task.id,
            name: task.name,
            ...(task.phase !== undefined && { phase: task.phase }),
          },
          parts: task,
          point: task.milestone !== false,
        }));
  const named = new Set(source.flatMap(({ parts }) => LETTERS.flatMap(([, key]) => parts[key])));
  const seen = new Set<Id>();
  const people = [
    ...plan.people.map(({ id, name }) => ({ id, name, kind: "person" as const })),
    ...plan.stakeholders.map(({ id, name }) => ({ id, name, kind: "stakeholder" as const })),
  ].filter(({ id }) => {
    const first = named.has(id) && !seen.has(id);
    seen.add(id);
    return first;
  });
  const rows = source.map(({ row, parts }): RoleRow => {
    const roles = people.map(({ id }) =>
      LETTERS.filter(([, key]) => parts[key].includes(id)).map(([letter]): Role => letter),
    );
    return { ...row, roles };
  });
  const nameOf = new Map(people.map(({ id, name }) => [id, name]));
  const faults = source.flatMap(({ row: { id, name }, parts, point }) => {
    const accountable = [...new Set(parts.accountable)].map((who) => ({
      id: who,
      name: nameOf.get(who) ?? who,
    }));
    const found: RoleFault[] = [];
    if (accountable.length === 0) found.push({ code: "no-accountable", row: id, name, who: [] });
    if (accountable.length > 1) found.push({ code: "many-accountable", row: id, name, who: accountable });
    if (parts.responsible.length === 0 && !point)
      found.push({ code: "no-responsible", row: id, name, who: [] });
    return found;
  });
  const { title, sha256 } = plan;
  return { plan: { title, sha256 }, rows, people, faults, load: loadOf(people, rows) };
}

function loadOf(people: RoleMatrix["people"], rows: readonly RoleRow[]): RoleLoad[] {
  const held = rows.filter(({ roles }) => roles.some((each) => each.includes("A"))).length;
  return people
    .map(({ id, name }, at): RoleLoad => {
      const count = (role: Role) => rows.filter(({ roles }) => roles[at]?.includes(role)).length;
      const accountable = count("A");
      const counts = { responsible: count("R"), accountable, consulted: count("C"), informed: count("I") };
      return { id, name, ...counts, part: held === 0 ? 0 : accountable / held };
    })
    .sort((a, b) => b.accountable - a.accountable || b.responsible - a.responsible || (a.id < b.id ? -1 : 1));
}
