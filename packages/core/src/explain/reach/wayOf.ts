import { outlookOf } from "../responses/gauge.ts";
import type { Asking } from "../responses/gauges.ts";
import type { SwitchSet } from "../responses/scenarios.ts";
import { costOf, membersOf, only } from "../responses/sets.ts";
import type { Switch } from "../responses/switches.ts";
import type { ReachStep, ReachWay } from "../types.ts";
import { inOrderOfGain } from "./everySet.ts";
import { hitsIn, type Question } from "./question.ts";

/** Above this many steps their order is found on fewer iterations; what each adds is told on all. */
const mostOrdered = 12;

/**
 * A set as steps, each with what it adds to those before it: the one that adds most first.
 *
 * @param few  The same question on fewer iterations.
 */
export function* wayOf(question: Question, few: Question, set: SwitchSet): Asking<ReachWay> {
  const { gauges, scenarios, targets, costs } = question;
  const { stands, switches, drawn } = scenarios;
  let taken: SwitchSet = 0n;
  const many = membersOf(set, question.free).length > mostOrdered;
  const order = yield* inOrderOfGain(many ? few : question, set);
  let before: SwitchSet = stands;
  yield* gauges.need(
    order.map((i) => {
      before |= only(i);
      return before;
    }),
  );
  const steps = order.map((i): ReachStep => {
    const before = taken;
    taken |= only(i);
    const [was, is] = [gauges.of(stands | before), gauges.of(stands | taken)];
    return {
      ...describe(switches[i] as Switch),
      chance: hitsIn(question, taken) / gauges.n,
      bought: (hitsIn(question, taken) - hitsIn(question, before)) / gauges.n,
      effect: { workingDays: is.workingDays - was.workingDays, money: is.cost - was.cost },
    };
  });
  return {
    steps,
    cost: costOf(set, costs),
    chance: hitsIn(question, set) / gauges.n,
    outlook: outlookOf(gauges.of(stands | set), drawn, targets, gauges.n),
  };
}

function describe(one: Switch): Omit<ReachStep, "chance" | "bought" | "effect"> {
  const { kind, id, name, cost } = one;
  switch (one.kind) {
    case "response":
      return { kind, id, name, entry: { id: one.entry.id, name: one.entry.name }, cost };
    case "scope":
      return { kind, id, name, ...(one.item.lost === undefined ? {} : { lost: one.item.lost }), cost };
    case "capacity": {
      const { capacity = 0, from } = one.person.couldAdd ?? {};
      return { kind, id, name, capacity, ...(from === undefined ? {} : { from }), cost };
    }
  }
}
