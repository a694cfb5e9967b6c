import { dayNumber } from "../../calendar/dates.ts";
import { brokenLink } from "../../live/record/brokenLink.ts";
import type { Task } from "../../plan/types.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import { thresholds } from "../thresholds.ts";
import { daysText } from "../words.ts";

/** Dates that hold tasks, dates that have passed, and progress that is not recorded. */
export const checkDates: Check = (context) => [
  ...heldByDate(context),
  ...passedDates(context),
  ...progressFound(context),
  ...outOfSequence(context),
  ...context.late.late.map(
    ({ task, path, days }): Found => ({
      code: "missed-task",
      path,
      ids: [task.id],
      says:
        task.finished === undefined
          ? `${task.name} should be finished and is not.`
          : `${task.name} finished ${daysText(days)} later than the plan without progress says.`,
    }),
  ),
];

/** Whether a date holds it that nothing in the plan gives a reason for. */
export function isHeldByDate({ notBefore, holdToPlan, started, note }: Task): boolean {
  return (notBefore !== undefined || holdToPlan) && started === undefined && note === undefined;
}

function heldByDate({ work }: CheckContext): Found[] {
  return work
    .filter(({ task }) => isHeldByDate(task))
    .map(({ task, path }) => ({
      code: "hard-date" as const,
      path,
      ids: [task.id],
      says:
        task.notBefore === undefined
          ? `${task.name} never starts before its start as written.`
          : `${task.name} may not start before ${task.notBefore}.`,
    }));
}

function passedDates({ plan, now }: CheckContext): Found[] {
  if (now === undefined) return [];
  const { finishBy } = plan.commitment;
  const open = plan.tasks.some(({ finished }) => finished === undefined);
  return [
    ...plan.tasks.flatMap((task, t): Found[] =>
      task.finished !== undefined || task.target === undefined || task.target >= now
        ? []
        : [
            {
              code: "date-past",
              path: `tasks[${t}].target`,
              ids: [task.id],
              says: `The target of ${task.name}, ${task.target}, has passed and it is not finished.`,
            },
          ],
    ),
    ...(finishBy !== undefined && finishBy < now && open
      ? [
          {
            code: "date-past" as const,
            path: "commitment.finishBy",
            ids: [],
            says: `The date asked for, ${finishBy}, has passed and the plan is not finished.`,
          },
        ]
      : []),
  ];
}

function progressFound({ plan, today }: CheckContext): Found[] {
  const { statusDate, start } = plan;
  const age = today === undefined || statusDate === undefined ? 0 : dayNumber(today) - dayNumber(statusDate);
  return [
    ...(statusDate === undefined && today !== undefined && start < today
      ? [
          {
            code: "status-missing" as const,
            path: "start",
            ids: [],
            says: `The plan began on ${start} and says of no day how far it is.`,
          },
        ]
      : []),
    ...(age > thresholds.staleDays && plan.tasks.some(({ finished }) => finished === undefined)
      ? [
          {
            code: "status-stale" as const,
            path: "statusDate",
            ids: [],
            says: `Progress was last recorded on ${statusDate}, ${age} days ago.`,
          },
        ]
      : []),
    ...plan.tasks.flatMap((task, t): Found[] =>
      task.started === undefined || task.finished !== undefined || task.remaining !== undefined
        ? []
        : [
            {
              code: "remaining-missing",
              path: `tasks[${t}]`,
              ids: [task.id],
              says: `${task.name} is under way, and nothing says what remains of it.`,
            },
          ],
    ),
  ];
}

/** At the task that has not happened yet; where both have days, at the link. */
function outOfSequence({ plan }: CheckContext): Found[] {
  const tasks = new Map(plan.tasks.map((task, at) => [task.id, { task, at }]));
  return plan.tasks.flatMap((task, t) =>
    task.after.flatMap((link, l): Found[] => {
      const before = tasks.get(link.task);
      const broken = before === undefined ? undefined : brokenLink(task, link, before.task);
      if (before === undefined || broken === undefined) return [];
      const { from, to, mine, theirs } = broken;
      const code = "out-of-sequence" as const;
      const did = task.milestone === false ? to : "was reached";
      if (theirs === undefined) {
        const says = `${task.name} ${did} on ${mine}, and “${before.task.name}”, which it waits for, has not ${from}.`;
        return [{ code, path: `tasks[${before.at}]`, ids: [before.task.id, task.id], says }];
      }
      const says = `${task.name} ${did} on ${mine}, and “${before.task.name}”, which it waits for, ${from} on ${theirs}.`;
      const advice = "Correct the day that is wrong, or let the link say what really holds the work.";
      return [{ code, path: `tasks[${t}].after[${l}]`, ids: [task.id, before.task.id], says, advice }];
    }),
  );
}
