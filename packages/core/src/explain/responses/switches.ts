import { raisesSlot } from "../../plan/raisesSlot.ts";
import type { Estimate, Person, Plan, RegisterEntry, Response, ScopeItem } from "../../plan/types.ts";
import { estimateMean, estimateQuantile } from "../../sampling/index.ts";

/** Something that can be decided about a plan, one way or the other. Off: not adopted, not dropped, not added. */
export type Switch =
  | { kind: "response"; id: string; name: string; cost: number; response: Response; entry: RegisterEntry }
  | { kind: "scope"; id: string; name: string; cost: 0; item: ScopeItem }
  | { kind: "capacity"; id: string; name: string; cost: number; person: Person };

/** What can be decided, in id order, and what cannot and why. */
export interface Switches {
  list: Switch[];
  notes: string[];
}

/**
 * The responses of a plan, adopted or not. Those of a group entry one of whose responses would raise its slot are
 * left as they stand: not every combination of them is a correct plan.
 */
export function responseSwitches(plan: Plan): Switches {
  const notes: string[] = [];
  const list = [...plan.risks, ...plan.assumptions].flatMap((entry): Switch[] => {
    // Capacity already added is paid for by an entry of its own (`addCapacity`); it answers no risk.
    if (entry.id.includes(":")) return [];
    const raising = entry.responses.filter((response) =>
      raisesSlot({ ...entry, responses: [{ ...response, adopted: true }] }),
    );
    if (raising.length > 0) {
      const ids = raising.map(({ id }) => id).join(", ");
      notes.push(
        `The responses of ${entry.id} stay as they are: ${ids} would raise its chance in group ${entry.group}.`,
      );
      return [];
    }
    return entry.responses.map((response) => ({
      kind: "response",
      id: response.id,
      name: response.action,
      cost: meanCost(response.cost),
      response,
      entry,
    }));
  });
  return { list: list.sort(byId), notes };
}

/** Optional scope of which something has not begun yet, except what holds the promised finish itself. */
export function scopeSwitches(plan: Plan): Switches {
  const notes: string[] = [];
  const list = plan.purpose.scopeIn.flatMap((item): Switch[] => {
    const open = plan.tasks.filter(
      (task) => task.scope === item.id && task.started === undefined && task.finished === undefined,
    );
    if (!item.optional || open.length === 0) return [];
    if (open.some((task) => task.id === plan.commitment.finishOf)) {
      notes.push(`${item.id} is optional but holds the finish that is promised, so it is not dropped.`);
      return [];
    }
    return [{ kind: "scope", id: item.id, name: item.name, cost: 0, item }];
  });
  return { list: list.sort(byId), notes };
}

/** What people `couldAdd`, where people are limited and some task that has not begun needs them. */
export function capacitySwitches(plan: Plan): Switches {
  const notes: string[] = [];
  const list = plan.people.flatMap((person): Switch[] => {
    const { couldAdd } = person;
    if (couldAdd === undefined) return [];
    if (!plan.respectCapacity) {
      notes.push(
        `More of ${person.id} buys nothing: the plan does not limit people (respectCapacity: false).`,
      );
      return [];
    }
    const along = plan.tasks.some(
      (task) => task.started === undefined && task.people.some((one) => one.id === person.id && one.along),
    );
    if (couldAdd.from !== undefined && couldAdd.from > plan.start && along) {
      notes.push(
        `More of ${person.id} counts from ${couldAdd.from}, but from the start where ${person.id} goes \`along\`.`,
      );
    }
    return [{ kind: "capacity", id: person.id, name: person.name, cost: couldAdd.cost, person }];
  });
  return { list: list.sort(byId), notes };
}

/** Everything that can be decided, in id order. */
export function everySwitch(plan: Plan): Switches {
  const kinds = [responseSwitches(plan), scopeSwitches(plan), capacitySwitches(plan)];
  return {
    list: kinds.flatMap(({ list }) => list).sort(byId),
    notes: kinds.flatMap(({ notes }) => notes),
  };
}

/** A switch by what it is and its id, for whoever has the plan and is to find it there. */
export function nameOfSwitch({ kind, id }: Switch): string {
  return `${kind} ${id}`;
}

/** The mean of a cost cut at zero, as it is drawn. */
function meanCost(estimate: Estimate | undefined): number {
  if (estimate === undefined) return 0;
  if (estimate.kind === "fixed") return Math.max(0, estimate.value);
  if (estimate.kind === "outcomes") {
    return estimate.outcomes.reduce((sum, { value, chance }) => sum + Math.max(0, value) * chance, 0);
  }
  if (estimateQuantile(estimate, 1e-9) >= 0) return estimateMean(estimate);
  let sum = 0;
  for (let k = 0; k < strata; k++) sum += Math.max(0, estimateQuantile(estimate, (k + 0.5) / strata));
  return sum / strata;
}
const strata = 4096;

function byId(a: { id: string }, b: { id: string }): number {
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}
