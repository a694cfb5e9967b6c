import { type ForecastOptions, forecast } from "../../forecast/forecast.ts";
import type { Forecast } from "../../forecast/types.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Change, Plan, Task } from "../../plan/types.ts";
import { subPlan } from "./subPlan.ts";
import type { Wave, WaveComparison, WaveRange } from "./types.ts";

/** Coefficient at which the detail moves nearly as one: what splitting a task cannot have taken away. */
export const togetherCoefficient = 0.9;

/**
 * Rolling wave: outline tasks of an old plan that detail has replaced, the range of the outline beside that of its
 * detail. Detail names its outline by `detailOf`, or by `was` where the old task was an outline. Each side runs alone
 * from the plan's start with its own people and calendars, the register set aside (see `subPlan`), so that ranges are
 * compared and not positions in two plans.
 *
 * Splitting a task into parts that vary on their own narrows the sum by arithmetic alone and not by knowledge; `together`
 * shows the detail without that (common practice, no source).
 */
export function waveCompare(
  oldPlan: Plan,
  newPlan: Plan,
  options: Pick<ForecastOptions, "iterations" | "seed" | "design"> = {},
): WaveComparison {
  const result: WaveComparison = { waves: [], gone: [], still: [], problems: [] };
  const asked = { seed: newPlan.seed, iterations: newPlan.iterations, ...options };
  for (const outline of oldPlan.tasks) {
    const detail = newPlan.tasks.filter((task) => detailOf(task, outline));
    const { id, name } = outline;
    if (detail.length === 0) {
      if (outline.detail !== "outline") continue;
      const there = newPlan.tasks.some((task) => task.id === id);
      (there ? result.still : result.gone).push({ id, name });
      continue;
    }
    const run = (plan: Plan) => rangeOf(plan, asked, result.problems);
    const before = run(subPlan(oldPlan, [outline]));
    const after = run(subPlan(newPlan, detail));
    const own = subPlan(newPlan, detail, togetherCoefficient);
    const together = own.correlations.length > 0 ? run(own) : undefined;
    if (before === undefined || after === undefined) continue;
    const width = ({ workingDays }: WaveRange) => workingDays.p90 - workingDays.p10;
    const wave: Wave = {
      outline: { id, name },
      detail: detail.map((task) => ({ id: task.id, name: task.name })),
      before,
      after,
      ...(together && { together }),
      ...(width(before) > 0 && { widthRatio: width(after) / width(before) }),
      correlated: subPlan(newPlan, detail).correlations.some(({ coefficient }) => coefficient > 0),
      reasons: reasonsFor(outline, detail, oldPlan, newPlan),
    };
    result.waves.push(wave);
  }
  return result;
}

function detailOf(task: Task, outline: Task): boolean {
  if (task.detailOf !== undefined) return task.detailOf === outline.id;
  return outline.detail === "outline" && task.was === outline.id;
}

function rangeOf(plan: Plan, options: ForecastOptions, problems: Problem[]): WaveRange | undefined {
  const { forecast: found, problems: wrong } = forecast(plan, options);
  problems.push(...wrong);
  return found === undefined ? undefined : readOff(found);
}

function readOff({ finish, cost }: Forecast): WaveRange {
  const days = (p: number) => finish.percentiles.find((row) => row.p === p)?.workingDays ?? Number.NaN;
  const money = (p: number) => cost.percentiles.find((row) => row.p === p)?.value ?? Number.NaN;
  return {
    workingDays: { p10: days(0.1), p50: days(0.5), p90: days(0.9) },
    money: { p10: money(0.1), p50: money(0.5), p90: money(0.9) },
  };
}

/** Changes that are new and name the outline or its detail as whole words, by id or by name. */
function reasonsFor(outline: Task, detail: readonly Task[], oldPlan: Plan, newPlan: Plan): Change[] {
  const known = new Set(oldPlan.changes.map((change) => JSON.stringify(change)));
  const names = [outline, ...detail].flatMap(({ id, name }) => [id, name]);
  const words = names.map(asWords).filter((each) => each.length > 4); // two spaces and an `a` prove nothing
  return newPlan.changes.filter((change) => {
    if (known.has(JSON.stringify(change))) return false;
    const text = asWords(`${change.what ?? ""} ${change.why ?? ""}`);
    return words.some((each) => text.includes(each));
  });
}

/** Small letters and digits, one space between words and at both ends; a hyphen joins. */
function asWords(text: string): string {
  return ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}-]+/gu, " ")
    .trim()} `;
}
