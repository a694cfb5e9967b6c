import { tolerance } from "../../calendar/tolerance.ts";
import type { Check, CheckContext, Found } from "../context.ts";
import { thresholds } from "../thresholds.ts";
import { futuresText, moneyText, percentText } from "../words.ts";

/** What is asked for against the plan as written and, where a forecast is handed in, against its chances. */
export const checkCommitment: Check = (context) => {
  const { finishBy, budget } = context.plan.commitment;
  return [
    ...(finishBy === undefined && budget === undefined
      ? [
          {
            code: "no-commitment" as const,
            path: "",
            ids: [],
            says: "The plan asks for no date and for no sum.",
          },
        ]
      : []),
    ...(context.plan.commitment.confidenceByDefault === true
      ? [
          {
            code: "confidence-by-default" as const,
            path: "commitment",
            ids: [],
            says: "The commitment does not say how sure to be; 8 times in 10 is taken.",
          },
        ]
      : []),
    ...writtenFound(context),
    ...chancesFound(context),
    ...worthSimulating(context),
  ];
};

/** What has passed is told by that alone. */
function isPast(date: string | undefined, now: string | undefined): boolean {
  return date !== undefined && now !== undefined && date < now;
}

function writtenFound({ plan, written, now }: CheckContext): Found[] {
  if (written === undefined) return [];
  const { model, asWritten } = written;
  const { finishBy } = plan.commitment;
  return [
    ...(finishBy !== undefined && model.finishByDay !== undefined && asWritten.finishDay > model.finishByDay
      ? [
          {
            code: "finish-by-before-plan" as const,
            path: "commitment.finishBy",
            ids: [],
            says: `The date asked for is ${finishBy}; as written the plan finishes ${asWritten.finishDay - model.finishByDay} calendar days later.`,
          },
        ]
      : []),
    ...plan.tasks.flatMap((task, t): Found[] => {
      const at = written.tasks.get(task.id);
      const day = at === undefined ? undefined : model.tasks[at.at]?.targetDay;
      if (at === undefined || day === undefined || !at.needed || task.finished !== undefined) return [];
      // Said once, of the date asked for, where the target is that date.
      if ((task.id === plan.commitment.finishOf && task.target === finishBy) || isPast(task.target, now))
        return [];
      const late = Math.ceil(at.finish - tolerance) - 1 - day;
      if (late <= 0) return [];
      const says = `The target of ${task.name} is ${task.target}; as written it comes ${late} calendar days later.`;
      return [{ code: "target-before-plan", path: `tasks[${t}].target`, ids: [task.id], says }];
    }),
  ];
}

function chancesFound({ plan, forecast, written, now }: CheckContext): Found[] {
  if (forecast === undefined) return [];
  const { chance, tasks } = forecast;
  const { finishBy, budget } = plan.commitment;
  const low = (value: number | undefined): value is number => value !== undefined && value < 0.5;
  const targets = new Map(tasks.map(({ id, target }) => [id, target?.chance]));
  return [
    ...(low(chance.finishBy)
      ? [
          {
            code: "date-unlikely" as const,
            path: "commitment.finishBy",
            ids: [],
            says: `${finishBy} is made ${futuresText(chance.finishBy, forecast.iterations)}.`,
          },
        ]
      : []),
    ...(low(chance.budget)
      ? [
          {
            code: "budget-unlikely" as const,
            path: "commitment.budget",
            ids: [],
            says: `The budget of ${moneyText(budget ?? 0, plan.currency)} is kept ${futuresText(chance.budget, forecast.iterations)}.`,
          },
        ]
      : []),
    ...plan.tasks.flatMap((task, t): Found[] => {
      const made = targets.get(task.id);
      const asked = task.id === plan.commitment.finishOf && task.target === finishBy;
      const needed = written?.tasks.get(task.id)?.needed !== false;
      if (!low(made) || asked || isPast(task.target, now) || !needed || task.finished !== undefined)
        return [];
      const says = `The target of ${task.name}, ${task.target}, is made ${futuresText(made, forecast.iterations)}.`;
      return [{ code: "target-unlikely", path: `tasks[${t}].target`, ids: [task.id], says }];
    }),
  ];
}

/** When a range and a few named cases would serve better. */
function worthSimulating({ plan, forecast }: CheckContext): Found[] {
  const count = plan.tasks.filter(({ milestone }) => milestone === false).length;
  const gains = (forecast?.drivers ?? []).filter(({ days }) => days > 0);
  const sum = gains.reduce((total, { days }) => total + days, 0);
  const top = [...gains].sort((a, b) => b.days - a.days)[0];
  return [
    ...(count < thresholds.fewTasks
      ? [
          {
            code: "too-few-tasks" as const,
            path: "tasks",
            ids: [],
            says: `The plan has ${count} ${count === 1 ? "task" : "tasks"}, milestones left out.`,
          },
        ]
      : []),
    ...(top !== undefined && gains.length > 1 && sum >= 1 && top.days > thresholds.dominating * sum
      ? [
          {
            code: "one-unknown" as const,
            path: "",
            ids: [top.id],
            says: `"${top.name}" adds ${percentText(top.days / sum)} of the days that everything uncertain adds.`,
          },
        ]
      : []),
  ];
}
