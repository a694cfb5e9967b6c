import type { Estimate, Impact, RegisterEntry } from "../types.ts";
import { present } from "./must.ts";

/**
 * Of an entry that has occurred and says what it did in fact (`actual`): its impacts with the fact in place of the
 * range, and responses that no longer take anything off it. `cost` is money in all and falls once; `days` falls on each
 * task that an impact delays, multiplies or makes wait. What the fact does not say keeps its range, as the adopted
 * responses had left it.
 */
export function withFacts<T extends Pick<RegisterEntry, "status" | "actual" | "impacts" | "responses">>(
  entry: T,
): T {
  const { actual, status } = entry;
  if (status !== "occurred" || (actual?.cost === undefined && actual?.days === undefined)) return entry;
  const scale = entry.responses.reduce((product, one) => (one.adopted ? product * one.scale : product), 1);
  const { cost, days } = actual;
  const reached = new Set<string>();
  const impacts = entry.impacts.map((impact): Impact => {
    const own = cost === undefined ? scaled(impact.cost, scale, 0) : undefined;
    if (days === undefined) {
      return present({
        ...impact,
        delay: scaled(impact.delay, scale, 0),
        factor: scaled(impact.factor, scale, 1),
        wait: scaled(impact.wait, scale, 0),
        cost: own,
      });
    }
    const { delay, factor, wait, phase } = impact;
    const key = (delay ?? factor) !== undefined ? "delay" : "wait";
    // Two impacts on one task: the days are those of the event, so they fall on it once.
    const tasks = impact.tasks.filter((id) => !reached.has(id));
    if ((delay ?? factor ?? wait) === undefined || tasks.length === 0) {
      return present({ tasks: impact.tasks, phase, cost: own });
    }
    for (const id of tasks) reached.add(id);
    const whole = tasks.length === impact.tasks.length;
    return present({ tasks, phase: whole ? phase : undefined, [key]: fixed(days), cost: own });
  });
  if (cost !== undefined) {
    const at = entry.impacts.findIndex((impact) => impact.cost !== undefined);
    const bearer = impacts[at];
    if (bearer === undefined) impacts.push({ tasks: [], cost: fixed(cost) });
    else impacts[at] = { ...bearer, cost: fixed(cost) };
  }
  return { ...entry, impacts, responses: entry.responses.map((one) => ({ ...one, scale: 1 })) };
}

function fixed(value: number): Estimate {
  return { kind: "fixed", value, unit: "days" };
}

/** Each value as a response leaves it: `neutral` stays, and of the rest `scale` remains. */
function scaled(estimate: Estimate | undefined, scale: number, neutral: number): Estimate | undefined {
  if (estimate === undefined || scale === 1) return estimate;
  const by = (value: number): number => neutral + (value - neutral) * scale;
  if (estimate.kind === "fixed") return { ...estimate, value: by(estimate.value) };
  if (scale === 0) return { kind: "fixed", value: neutral, unit: estimate.unit };
  if (estimate.kind === "outcomes") {
    return {
      ...estimate,
      outcomes: estimate.outcomes.map(({ value, chance }) => ({ value: by(value), chance })),
    };
  }
  const { low, likely, high } = estimate;
  return present({
    ...estimate,
    low: by(low),
    likely: likely === undefined ? undefined : by(likely),
    high: by(high),
  });
}
