import { tolerance } from "../../calendar/tolerance.ts";
import type { Check, CheckContext, Found, PlacedTask } from "../context.ts";
import { downstreamOf, successorsOf } from "../network/links.ts";
import { drivingWork, shockedBy } from "../network/shock.ts";
import { timeLeft } from "../network/timeLeft.ts";
import type { WrittenTask } from "../network/written.ts";
import { thresholds } from "../thresholds.ts";
import { daysText, fewNames } from "../words.ts";

interface PlacedWork extends PlacedTask {
  at: WrittenTask;
}

/** Float, long tasks, and whether the finish responds to the work that should set it. */
export const checkPath: Check = (context) => {
  const { written, work } = context;
  if (written === undefined) return [];
  const placed = work.flatMap((each): PlacedWork[] => {
    const at = written.tasks.get(each.task.id);
    return at?.needed === true ? [{ ...each, at }] : [];
  });
  return [
    ...floatsFound(placed),
    ...longFound(placed),
    ...negativeFound(context, placed),
    ...asideFound(context, placed),
    ...shocksFound(context),
  ];
};

function floatsFound(placed: readonly PlacedWork[]): Found[] {
  return placed
    .filter(({ at }) => at.float > thresholds.days + tolerance && at.float < Number.POSITIVE_INFINITY)
    .map(({ task, path, at }) => ({
      code: "high-float" as const,
      path,
      ids: [task.id],
      says: `${task.name} could slip ${daysText(at.float)} before the finish moved.`,
    }));
}

/** Outlines are left out: rolling wave planning is what they are for. */
function longFound(placed: readonly PlacedWork[]): Found[] {
  return placed
    .filter(({ task, at }) => at.duration > thresholds.days + tolerance && task.detail !== "outline")
    .map(({ task, path, at }) => ({
      code: "long-task" as const,
      path,
      ids: [task.id],
      says: `${task.name} takes ${daysText(at.duration)} as written.`,
    }));
}

function negativeFound({ written }: CheckContext, placed: readonly PlacedWork[]): Found[] {
  const left = written === undefined ? undefined : timeLeft(written);
  if (left === undefined || left.float >= -tolerance) return [];
  const short = placed.filter(({ at }) => at.float + left.float < -tolerance);
  if (short.length === 0) return [];
  const names = fewNames(short.map(({ task }) => task.name));
  return [
    {
      code: "negative-float",
      path: "commitment.finishBy",
      ids: short.map(({ task }) => task.id),
      says: `For the date asked for, ${daysText(-left.float)} are missing on ${short.length === 1 ? "one task" : `${short.length} tasks`}: ${names}.`,
    },
  ];
}

/** Work with something after it, none of which leads to what is promised: a strand that was left hanging. */
function asideFound({ plan }: CheckContext, placed: readonly PlacedWork[]): Found[] {
  const { finishOf } = plan.commitment;
  if (finishOf === undefined) return [];
  const successors = successorsOf(plan);
  const later = downstreamOf(finishOf, successors);
  const promised = plan.tasks.find(({ id }) => id === finishOf)?.name ?? finishOf;
  return placed
    .filter(
      ({ task, at }) =>
        at.float === Number.POSITIVE_INFINITY && !later.has(task.id) && successors.get(task.id)?.length !== 0,
    )
    .map(({ task, path }) => ({
      code: "no-effect-on-finish" as const,
      path,
      ids: [task.id],
      says: `Nothing ${task.name} does moves the finish of “${promised}”.`,
    }));
}

/** Zero, then lengthen each task that sets the finish. */
function shocksFound(context: CheckContext): Found[] {
  const { written } = context;
  const driving = drivingWork(context);
  if (written === undefined || driving.length === 0) return [];
  const all = [...written.tasks.values()].filter((task) => task.driving && task.duration > tolerance);
  const shock = shockedBy(written);
  // Where strands tie, taking one away moves nothing, and that is as it should be.
  const tied = (at: WrittenTask) =>
    all.some((other) => other !== at && other.start < at.finish && at.start < other.finish);
  return driving.flatMap(({ task, path, at }): Found[] => {
    const found = { code: "path-does-not-respond" as const, path, ids: [task.id] };
    const longer = shock(at.at, thresholds.slip);
    if (longer !== undefined && longer < thresholds.slip / 2) {
      const says = `${task.name} sets the finish, but taking ${daysText(thresholds.slip)} longer moves it by only ${daysText(longer)}.`;
      return [{ ...found, says }];
    }
    if (tied(at) || at.duration < 1) return [];
    const without = shock(at.at, -at.duration);
    if (without === undefined || without < -tolerance) return [];
    return [
      { ...found, says: `${task.name} sets the finish, but without its ${daysText(at.duration)} it stays.` },
    ];
  });
}
