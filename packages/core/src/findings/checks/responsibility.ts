import type { Plan } from "../../plan/types.ts";
import type { Check, Found } from "../context.ts";
import { textsOutsidePeople } from "../network/namedIn.ts";
import { takesNothing } from "../network/resources.ts";
import { joined } from "../words.ts";

/** Who answers for each task, who does it, and who is named nowhere. */
export const checkResponsibility: Check = ({ plan, work, written }) => [
  ...accountableFound(plan),
  ...(plan.people.length === 0
    ? [{ code: "no-people" as const, path: "", ids: [], says: "The plan names nobody who does the work." }]
    : work
        .filter(({ task }) => takesNothing(task, written?.tasks.get(task.id)?.duration ?? 0))
        .map(({ task, path }) => ({
          code: "task-without-people" as const,
          path,
          ids: [task.id],
          says: `${task.name} names nobody and costs nothing.`,
        }))),
  ...ratesFound(plan),
  ...unusedFound(plan),
];

/** Milestones take no work, so nobody has to answer for it. */
function accountableFound(plan: Plan): Found[] {
  const asked = plan.tasks
    .map((task, t) => ({ task, path: `tasks[${t}]` }))
    .filter(({ task }) => task.milestone === false && task.finished === undefined);
  if (asked.length === 0) return [];
  if (asked.every(({ task }) => task.accountable.length === 0)) {
    const says = "No task and no phase names anybody as accountable.";
    return [{ code: "nobody-accountable", path: "tasks", ids: [], says }];
  }
  return asked.flatMap(({ task, path }): Found[] => {
    const at = { path, ids: [task.id] };
    const named = [...new Set(task.accountable)];
    if (named.length === 1) return [];
    return named.length === 0
      ? [{ ...at, code: "accountable-missing", says: `Nobody answers for ${task.name}.` }]
      : [
          {
            ...at,
            code: "accountable-several",
            says: `${joined(named)} all answer for ${task.name}.`,
          },
        ];
  });
}

function ratesFound({ people, tasks }: Plan): Found[] {
  if (people.every(({ rate }) => rate === 0)) return [];
  const works = new Set(tasks.flatMap((task) => task.people.map(({ id }) => id)));
  return people.flatMap(({ id, name, rate, note }, p): Found[] =>
    rate !== 0 || note !== undefined || !works.has(id)
      ? []
      : [
          {
            code: "rate-missing",
            path: `people[${p}]`,
            ids: [id],
            says: `${name} has no rate, others have.`,
          },
        ],
  );
}

function unusedFound(plan: Plan): Found[] {
  const named = textsOutsidePeople(plan);
  return plan.people.flatMap(({ id, name }, p): Found[] =>
    named.has(id)
      ? []
      : [
          {
            code: "person-unused",
            path: `people[${p}]`,
            ids: [id],
            says: `${name} is named nowhere in the plan.`,
          },
        ],
  );
}
