import { tolerance } from "../../calendar/tolerance.ts";
import type { Plan } from "../../plan/types.ts";
import { checkContext } from "../checkContext.ts";
import { isHeldByDate } from "../checks/dates.ts";
import type { CheckContext } from "../context.ts";
import { linksOf } from "../network/links.ts";
import { openEnds } from "../network/openEnds.ts";
import { takesNothing } from "../network/resources.ts";
import { drivingWork, shockedBy } from "../network/shock.ts";
import { pathLengthIndex, timeLeft } from "../network/timeLeft.ts";
import { thresholds } from "../thresholds.ts";
import type { FindingOptions, PlanMeasure } from "../types.ts";
import { type MeasureCode, measureRules } from "./measureRules.ts";
import { type Taken, withThreshold } from "./withThreshold.ts";

/**
 * The trade's fourteen measures of a plan as written, each beside its threshold: figures to ask about, neither verdicts
 * nor points of a score.
 */
export function planMeasures(plan: Plan, options: FindingOptions = {}): PlanMeasure[] {
  return measuresOf(checkContext(plan, options));
}

/** The same, for who has the context already. */
export function measuresOf(context: CheckContext): PlanMeasure[] {
  const taken: Record<MeasureCode, Taken> = { ...ofLinks(context), ...ofTasks(context), ...ofTime(context) };
  return measureRules.map((rule) => withThreshold(rule, taken[rule.code]));
}

function ofLinks(context: CheckContext) {
  const { plan, work } = context;
  const links = linksOf(plan);
  const count = (has: (link: (typeof links)[number]) => boolean): Taken =>
    links.length === 0 ? "the plan has no links" : { count: links.filter(has).length, of: links.length };
  const { starts, ends } = openEnds(context);
  const open = new Set([...starts, ...ends].map(({ task }) => task.id)).size;
  return {
    "missing-logic": work.length === 0 ? nothingLeft : { count: open, of: work.length },
    leads: { count: links.filter(({ lag }) => lag < 0).length },
    lags: count(({ lag }) => lag > 0),
    "finish-to-start": count(({ link }) => link.link === "finish-to-start"),
  } as const;
}

const nothingLeft = "no task is left to do";

function ofTasks(context: CheckContext) {
  const { work, written, plan, now } = context;
  const placed = work.map(({ task }) => ({ task, at: written?.tasks.get(task.id) }));
  const share = (has: (each: (typeof placed)[number]) => boolean): Taken => {
    if (work.length === 0) return nothingLeft;
    return written === undefined ? noDates : { count: placed.filter(has).length, of: work.length };
  };
  const left = written === undefined ? undefined : timeLeft(written);
  const { finishBy } = plan.commitment;
  const unfinished = plan.tasks.filter(({ finished }) => finished === undefined);
  const past = unfinished.filter(
    ({ target }) => target !== undefined && now !== undefined && target < now,
  ).length;
  const askedPast = finishBy !== undefined && now !== undefined && finishBy < now && unfinished.length > 0;
  return {
    "hard-dates": share(({ task }) => isHeldByDate(task)),
    "high-float": share(
      ({ at }) =>
        at !== undefined && at.float > thresholds.days + tolerance && at.float < Number.POSITIVE_INFINITY,
    ),
    "negative-float":
      left === undefined
        ? noAsked
        : { count: placed.filter(({ at }) => (at?.float ?? 0) + left.float < -tolerance).length },
    "long-tasks": share(
      ({ at, task }) => (at?.duration ?? 0) > thresholds.days + tolerance && task.detail !== "outline",
    ),
    "past-dates":
      now === undefined ? "neither today nor a status date is known" : { count: past + (askedPast ? 1 : 0) },
    "without-resources": share(({ at, task }) => takesNothing(task, at?.duration ?? 0)),
  } as const;
}

const noDates = "the plan runs past what calendars cover";
const noAsked = "no date is asked for";

function ofTime(context: CheckContext) {
  const {
    plan,
    written,
    late: { due, finished, late },
  } = context;
  const left = written === undefined ? undefined : timeLeft(written);
  const nothingDue = plan.statusDate === undefined ? "the plan has no status date" : "nothing is due yet";
  const shock = written === undefined ? undefined : shockedBy(written);
  const moved = drivingWork(context).flatMap(({ at }) => shock?.(at.at, thresholds.slip) ?? []);
  return {
    "missed-tasks": due === 0 ? nothingDue : { count: late.length, of: due },
    "path-test": moved.length === 0 ? nothingLeft : { value: Math.min(...moved) },
    cpli: left === undefined ? noAsked : { value: pathLengthIndex(left) },
    bei: due === 0 ? nothingDue : { count: finished, of: due },
  } as const;
}
