import { dayNumber } from "../../calendar/dates.ts";
import type { RangeEstimate, Task } from "../../plan/types.ts";
import type { Check, CheckContext, Found, PlacedTask } from "../context.ts";
import { zeroShare } from "../network/zeroShare.ts";
import { thresholds } from "../thresholds.ts";
import { percentText } from "../words.ts";

/** Ranges, what they rest on, who gave them, and whether their detail fits how near the work is. */
export const checkEstimates: Check = (context) => [
  ...rangesFound(context),
  ...symmetryFound(context),
  ...narrowFound(context),
  ...detailFound(context),
  ...saidBy(context),
  ...cutFound(context),
];

function estimateOf({ remaining, duration, effort }: Task) {
  return remaining ?? duration ?? effort;
}

/** Unfinished work that takes time. */
function timed({ work }: CheckContext): PlacedTask[] {
  return work.filter(({ task }) => {
    const estimate = estimateOf(task);
    return estimate !== undefined && !(estimate.kind === "fixed" && estimate.value === 0);
  });
}

function rangesFound(context: CheckContext): Found[] {
  const all = timed(context);
  const certain = all.filter(({ task }) => estimateOf(task)?.kind === "fixed");
  if (all.length > 0 && certain.length === all.length) {
    const says = `None of the ${all.length === 1 ? "durations" : `${all.length} durations`} has a range.`;
    return [{ code: "no-ranges", path: "tasks", ids: [], says }];
  }
  return certain
    .filter(({ task }) => task.basis === undefined)
    .map(({ task, path }) => ({
      code: "range-missing" as const,
      path,
      ids: [task.id],
      says: `${task.name} takes one length of time in every future.`,
    }));
}

/** A range with its likely value, as most shapes have. */
type Likely = RangeEstimate & { likely: number };

function ranges(context: CheckContext): (PlacedTask & { range: Likely })[] {
  return timed(context).flatMap((each) => {
    const estimate = estimateOf(each.task);
    if (estimate?.kind !== "range" || estimate.likely === undefined) return [];
    return [{ ...each, range: { ...estimate, likely: estimate.likely } }];
  });
}

function symmetryFound(context: CheckContext): Found[] {
  const all = ranges(context);
  const even = all.filter(({ range: { low, likely, high } }) => {
    const width = high - low;
    return Math.abs(high - likely - (likely - low)) <= 1e-6 * width;
  });
  if (all.length < 5 || even.length / all.length < 0.8) return [];
  const says = `${even.length} of ${all.length} ranges reach as far up as down.`;
  return [{ code: "ranges-symmetric", path: "tasks", ids: even.map(({ task }) => task.id), says }];
}

function narrowFound(context: CheckContext): Found[] {
  return ranges(context)
    .filter(({ range }) => {
      const days = range.unit === "weeks" ? range.likely * 5 : range.likely;
      return days >= 5 && range.high - range.low < thresholds.narrow * range.likely;
    })
    .map(({ task, path, range }) => ({
      code: "range-narrow" as const,
      path,
      ids: [task.id],
      says: `The range of ${task.name} is ${percentText((range.high - range.low) / range.likely)} of its likely value.`,
    }));
}

function detailFound(context: CheckContext): Found[] {
  const { written, now } = context;
  if (written === undefined) return [];
  const { startDay } = written.model;
  const from = Math.max(0, now === undefined ? 0 : dayNumber(now) - startDay);
  return timed(context).flatMap(({ task, path }): Found[] => {
    const at = written.tasks.get(task.id);
    if (at === undefined || !at.needed || task.started !== undefined) return [];
    const ahead = Math.round(at.start - from);
    const ids = [task.id];
    const when = ahead <= 0 ? "now" : `in ${ahead} days`;
    if (task.detail === "outline" && ahead <= thresholds.nearDays) {
      return [
        {
          code: "near-outline",
          path,
          ids,
          says: `${task.name} begins ${when}, as written, and is an outline.`,
        },
      ];
    }
    if (task.detail === "firm" && ahead > thresholds.farDays && at.duration < thresholds.fineDays) {
      const says = `${task.name} begins ${when} and is planned to the day.`;
      return [{ code: "far-detail", path, ids, says }];
    }
    return [];
  });
}

function estimatorsOf({ estimatedBy, opinions = [] }: Task): string[] {
  return [...estimatedBy, ...opinions.flatMap(({ by }) => by ?? [])];
}

function saidBy(context: CheckContext): Found[] {
  const all = timed(context);
  const people = new Set(all.flatMap(({ task }) => estimatorsOf(task)));
  const said = all.filter(({ task }) => estimatorsOf(task).length > 0);
  const [only] = people;
  return [
    ...all.flatMap(({ task, path }): Found[] => [
      ...(task.basis === undefined
        ? [
            {
              code: "basis-missing" as const,
              path,
              ids: [task.id],
              says: `The estimate of ${task.name} does not say what it rests on.`,
            },
          ]
        : []),
      ...(estimatorsOf(task).length === 0
        ? [
            {
              code: "estimator-missing" as const,
              path,
              ids: [task.id],
              says: `Nobody is named for the estimate of ${task.name}.`,
            },
          ]
        : []),
    ]),
    ...(people.size === 1 && said.length >= thresholds.fewTasks && said.length === all.length
      ? [
          {
            code: "one-estimator" as const,
            path: "tasks",
            ids: said.map(({ task }) => task.id),
            says: `All ${said.length} estimates are by ${only}.`,
          },
        ]
      : []),
  ];
}

function cutFound({ plan }: CheckContext): Found[] {
  const parts = ["duration", "effort", "remaining", "cost", "costPerDay"] as const;
  return plan.tasks.flatMap((task, t) =>
    task.finished !== undefined
      ? []
      : parts.flatMap((part): Found[] => {
          const estimate = task[part];
          const share = estimate === undefined ? 0 : zeroShare(estimate);
          if (share <= thresholds.cutAtZero) return [];
          const says = `${percentText(Math.round(share * 1000) / 1000)} of the values drawn for the ${words[part]} of ${task.name} fall below zero.`;
          return [{ code: "cut-at-zero", path: `tasks[${t}].${part}`, ids: [task.id], says }];
        }),
  );
}

const words = {
  duration: "duration",
  effort: "effort",
  remaining: "remainder",
  cost: "cost",
  costPerDay: "daily cost",
} as const;
