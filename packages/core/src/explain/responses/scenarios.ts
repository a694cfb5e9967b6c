import { dayNumber } from "../../calendar/dates.ts";
import { addCapacity, capacityPayment } from "../../plan/addCapacity.ts";
import type { Plan, RegisterEntry } from "../../plan/types.ts";
import { compile } from "../../simulate/compile.ts";
import { compileCalendars } from "../../simulate/compileCalendars.ts";
import { compileRegister } from "../../simulate/compileRegister.ts";
import { constant, type Model, type ModelTask } from "../../simulate/model.ts";
import { slotList } from "../../simulate/slots.ts";
import { freeOfSlackPeople } from "./freeOfSlackPeople.ts";
import { nameOfSwitch, type Switch } from "./switches.ts";

/** Which switches are on: bit i for switch i. */
export type SwitchSet = bigint;

/**
 * The models of a plan with any set of switches on. Each is, number for number, what `compile` makes of the plan
 * with these decisions taken (`applyScenario`), but all share their slots, so that what is drawn once serves every
 * one of them.
 */
export interface Scenarios {
  switches: readonly Switch[];
  /** The set that is the plan as it stands. */
  stands: SwitchSet;
  /** Every switch's slots, nothing dropped: what is to be drawn. */
  drawn: Model;
  /** Rows enough for the model of any set. */
  frame: Model;
  model(set: SwitchSet): Model;
  /** The switches of capacity that are on: they alone change who can work when. */
  capacityOf(set: SwitchSet): SwitchSet;
}

/** What may be decided, by name and in the order of the sets' bits: what another thread needs to know of it (`gauger`). */
export function switchNames({ switches }: Pick<Scenarios, "switches">): string[] {
  return switches.map(nameOfSwitch);
}

/** Cost: one compilation for each combination of added capacity asked for; for each set the register is made anew. */
export function scenariosOf(plan: Plan, switches: readonly Switch[]): Scenarios {
  const bit = (i: number): SwitchSet => 1n << BigInt(i);
  const bits = new Map(switches.map(({ id }, i) => [id, bit(i)]));
  const isOn = (set: SwitchSet, id: string) => (set & (bits.get(id) ?? 0n)) !== 0n;
  const maskOf = (kind: Switch["kind"]) =>
    switches.reduce((mask, one, i) => (one.kind === kind ? mask | bit(i) : mask), 0n);
  const [responseMask, capacityMask] = [maskOf("response"), maskOf("capacity")];
  const stands = switches.reduce(
    (set, one, i) => (one.kind === "response" && one.response.adopted ? set | bit(i) : set),
    0n,
  );

  /** The register with the responses of a set adopted; responses that are no switches stay as they are. */
  const adopt = (set: SwitchSet) => {
    const change = <T extends RegisterEntry>(entry: T): T =>
      entry.responses.length === 0
        ? entry
        : {
            ...entry,
            responses: entry.responses.map((response) =>
              bits.has(response.id) ? { ...response, adopted: isOn(set, response.id) } : response,
            ),
          };
    return { risks: plan.risks.map(change), assumptions: plan.assumptions.map(change) };
  };

  const bases = new Map<SwitchSet, Model>();
  /** Everything adopted, nothing dropped, this capacity added. */
  const baseOf = (capacity: SwitchSet): Model => {
    const known = bases.get(capacity);
    if (known !== undefined) return known;
    const ids = new Set(switches.filter((_, i) => (capacity & bit(i)) !== 0n).map(({ id }) => id));
    // The payment is put among the responses below: as an entry of the register it would move the others' places.
    const { people } = addCapacity(plan, ids);
    const made = freeOfSlackPeople(compile({ ...plan, ...adopt(responseMask), people }));
    bases.set(capacity, made);
    return made;
  };

  const drawn = baseOf(0n);
  const { tasks } = drawn.plan;
  const startDay = dayNumber(plan.start);
  const payments = switches.flatMap((one) => {
    if (one.kind !== "capacity") return [];
    const { id, action, due } = capacityPayment(one.person);
    const dueDay = due === undefined ? 0 : Math.max(0, dayNumber(due) - startDay);
    return [{ of: one.id, payment: { id, name: action, dueDay, cost: constant(one.cost) } }];
  });
  const taskIndex = new Map(tasks.map((task, j) => [task.id, j]));
  const drawIds = new Map(tasks.map((task) => [task.id, task.was ?? task.id]));
  const calendars = compileCalendars(drawn.plan);
  const dropped = (set: SwitchSet, j: number) => {
    const { scope, started, finished } = tasks[j] as Plan["tasks"][number];
    const begun = started !== undefined || finished !== undefined;
    return scope !== undefined && bits.has(scope) && isOn(set, scope) && !begun;
  };
  /** Tasks that some set changes otherwise than by an impact. */
  const switched = tasks.map(
    ({ onlyIf, scope }) =>
      (onlyIf !== undefined && bits.has(onlyIf)) || (scope !== undefined && bits.has(scope)),
  );

  const model = (set: SwitchSet): Model => {
    const base = baseOf(set & capacityMask);
    // Register slots come first in every model, so a list of their own gives them the places they have there.
    const register = compileRegister(
      { ...drawn.plan, ...adopt(set) },
      taskIndex,
      drawIds,
      calendars,
      slotList(),
    );
    const responses = base.responses.filter(({ id }) => !bits.has(id) || isOn(set, id));
    for (const { of, payment } of payments) if (isOn(set, of)) responses.push(payment);
    return {
      ...base,
      register: register.entries,
      groups: register.groups,
      responses: responses.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)),
      tasks: base.tasks.map((task, j): ModelTask => {
        const impacts = register.impactsOn[j] ?? [];
        if (!switched[j]) return task.impacts.length === 0 ? task : { ...task, impacts };
        const onlyIf = tasks[j]?.onlyIf;
        const off = dropped(set, j) || (onlyIf !== undefined && bits.has(onlyIf) && !isOn(set, onlyIf));
        const chance = off && task.progress === undefined ? 0 : task.chance;
        return { ...task, impacts, chance, mayBePoint: task.mayBePoint || dropped(set, j) };
      }),
    };
  };

  const frame: Model = {
    ...drawn,
    tasks: drawn.tasks.map((task, j) => (switched[j] ? { ...task, chance: 0, mayBePoint: true } : task)),
  };
  return { switches, stands, drawn, frame, model, capacityOf: (set) => set & capacityMask };
}
