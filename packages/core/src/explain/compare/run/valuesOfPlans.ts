import { rankSelector } from "../../../forecast/rankSelector.ts";
import { rankOf } from "../../../forecast/ranks.ts";
import type { Plan } from "../../../plan/types.ts";
import { planAsWritten } from "../../../simulate/asWritten.ts";
import { compile } from "../../../simulate/compile.ts";
import { freeOfSlackPeople } from "../../responses/freeOfSlackPeople.ts";
import { keysOf, numbering } from "./keys.ts";
import { calendarPool } from "./poolCalendars.ts";
import { type Member, runFamily } from "./runFamily.ts";
import type { Terms } from "./terms.ts";
import { workingDaysFrom } from "./workingDaysFrom.ts";

/** Tasks of models in memory at once, about 4 kB each. */
const tasksAtOnce = 20_000;

/** Committed working days and money of a plan. */
export type Value = readonly [workingDays: number, money: number];

/**
 * Committed values of plans on the same draws, in the terms of a comparison; undefined for a plan whose work runs
 * past what calendars cover. Whoever computes them, and in whatever parts, the same numbers.
 *
 * Cost: a compilation of each plan (a millisecond per hundred tasks and per calendar); plans with the same tasks share
 * draws, and of each only what differs from the one before it is placed again.
 */
export function valuesOfPlans(
  { draw, confidence, newer, earliest }: Terms,
  plans: readonly Plan[],
  onProgress?: (done: number, total: number) => void,
): (Value | undefined)[] {
  const workingDays = workingDaysFrom(newer, earliest);
  const select = rankSelector(draw.iterations);
  const ranks = [rankOf(confidence, draw.iterations)];
  const values = new Array<Value | undefined>(plans.length);
  const atOnce = Math.max(4, Math.floor(tasksAtOnce / Math.max(1, newer.tasks.length)));
  for (let first = 0; first < plans.length; first += atOnce) {
    for (const family of familiesOf(plans.slice(first, first + atOnce))) {
      const members = family.map(({ member }) => member);
      const measured = runFamily(draw, members, ({ finish, cost }, i): Value => {
        const [day = 0] = select(finish, ranks);
        const [sum = 0] = select(cost, ranks);
        return [workingDays(day, plans[first + (family[i]?.at ?? 0)]?.start ?? earliest), sum];
      });
      family.forEach(({ at }, i) => {
        values[first + at] = measured[i];
      });
    }
    onProgress?.(Math.min(plans.length, first + atOnce), plans.length);
  }
  return values;
}

/** Plans whose models can be computed on the same rows, in their order. */
function familiesOf(plans: readonly Plan[]): { at: number; member: Member }[][] {
  const pooled = calendarPool();
  const numbers = numbering();
  const families = new Map<string, { at: number; member: Member }[]>();
  plans.forEach((plan, at) => {
    const model = freeOfSlackPeople(pooled(compile(plan)));
    const planned = model.tasks.some((task) => task.holdToPlan)
      ? planAsWritten(model).starts
      : new Float64Array(model.tasks.length);
    const member = { model, planned, keys: keysOf(model, planned, numbers) };
    const family = families.get(member.keys.shape);
    if (family === undefined) families.set(member.keys.shape, [{ at, member }]);
    else family.push({ at, member });
  });
  return [...families.values()];
}
