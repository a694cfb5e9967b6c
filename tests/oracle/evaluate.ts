import type { Plan } from "../../packages/core/src/plan/types.ts";
import { criticalTasks, planFinish } from "./critical.ts";
import { dateOfDay } from "./dates.ts";
import { jobOf } from "./job.ts";
import { overheadMoney, registerMoney, responseMoney, taskCost } from "./money.ts";
import { type Position, placeAll, type World } from "./place.ts";
import { readDates } from "./reading.ts";
import { asWrittenRealisation, type Realisation } from "./realisation.ts";
import { TOLERANCE, workBetween } from "./time.ts";
import { calendarDays } from "./workdays.ts";

export { asWrittenRealisation, type Realisation } from "./realisation.ts";

/** One task in one iteration; moments in days since the plan's start, durations in working days. */
export interface TaskEvaluation {
  start: number;
  finish: number;
  duration: number;
  cost: number;
  critical: boolean;
  needed: boolean;
  startDate: string;
  finishDate: string;
}

/** One iteration of a plan. `cost` is the total; the three other sums are parts of it. */
export interface Evaluation {
  tasks: Map<string, TaskEvaluation>;
  finish: number;
  finishDate: string;
  workingDays: number;
  cost: number;
  overheads: number;
  registerCost: number;
  responsesCost: number;
}

/** The jobs of one iteration, and where they stand. */
function settlePlan(plan: Plan, realisation: Realisation, plannedStarts: Map<string, number>) {
  const jobs = new Map(plan.tasks.map((task) => [task.id, jobOf(plan, task, realisation)]));
  const world: World = { plan, realisation, jobs, plannedStarts };
  return { world, positions: placeAll(world) };
}

/** The date the plan's finish is read as: that of the task, or the latest of the tasks, that define it. */
function planFinishDate(plan: Plan, tasks: Map<string, TaskEvaluation>, finish: number): string {
  const { finishOf } = plan.commitment;
  if (finishOf !== undefined) return tasks.get(finishOf)?.finishDate ?? plan.start;
  let date = plan.start;
  for (const task of tasks.values()) {
    if (task.needed && task.finish >= finish - TOLERANCE && task.finishDate > date) date = task.finishDate;
  }
  return date;
}

/**
 * Works one iteration of a plan through, slowly and by the letter of plan format 1: where every task stands,
 * what everything costs, what is critical.
 *
 * Throws where the format calls the plan in error (no working day within 366 days, a moment past day 36,525).
 */
export function evaluate(plan: Plan, realisation: Realisation): Evaluation {
  const plannedStarts = new Map<string, number>();
  if (plan.tasks.some((task) => task.holdToPlan)) {
    const written = settlePlan(plan, asWrittenRealisation(plan), new Map());
    for (const [id, position] of written.positions) plannedStarts.set(id, position.start);
  }
  const { world, positions } = settlePlan(plan, realisation, plannedStarts);
  return report(world, positions);
}

/** The plan as written: no draw, nothing occurring but what has, progress included. */
export function evaluateAsWritten(plan: Plan): Evaluation {
  const { world, positions } = settlePlan(plan, asWrittenRealisation(plan), new Map());
  return report(world, positions);
}

function report(world: World, positions: Map<string, Position>): Evaluation {
  const { plan, realisation, jobs } = world;
  const critical = criticalTasks(world, positions);
  const tasks = new Map<string, TaskEvaluation>();
  let taskMoney = 0;
  for (const job of [...jobs.values()].sort((a, b) => (a.task.id < b.task.id ? -1 : 1))) {
    const { id } = job.task;
    const position = positions.get(id);
    if (!position) throw new Error(`${id} is not placed`);
    const cost = taskCost(plan, job, realisation);
    taskMoney += cost;
    tasks.set(id, {
      ...position,
      duration: job.duration,
      cost,
      critical: critical.has(id),
      needed: job.needed,
      ...readDates(plan, job, position),
    });
  }
  const finish = planFinish(world, positions);
  const overheads = overheadMoney(plan, positions, finish, realisation);
  const registerCost = registerMoney(plan, realisation);
  const responsesCost = responseMoney(plan, realisation);
  return {
    tasks,
    finish,
    finishDate: tasks.size === 0 ? dateOfDay(plan.start, 0) : planFinishDate(plan, tasks, finish),
    workingDays: workBetween(calendarDays(plan, plan.calendar), 0, finish),
    cost: taskMoney + registerCost + responsesCost + overheads,
    overheads,
    registerCost,
    responsesCost,
  };
}
