import { isoDate } from "../../calendar/dates.ts";
import { workAt } from "../../calendar/workCalendar.ts";
import { rankOf } from "../../forecast/ranks.ts";
import type { Problem } from "../../plan/problem.ts";
import type { Plan } from "../../plan/types.ts";
import type { AsWritten } from "../../simulate/asWritten.ts";
import { markMoving } from "../../simulate/critical.ts";
import type { Model } from "../../simulate/model.ts";
import { stampOf } from "../confidence/stampOf.ts";
import { type ExplainingOptions, explaining } from "../subject.ts";
import type { DrivingPath, Paths, TaskIndices } from "../types.ts";
import type { Draw } from "../variants.ts";
import { daysAtStake } from "./daysAtStake.ts";
import { eachBlock } from "./eachBlock.ts";
import { addToIndexSums, type IndexSums, newIndexSums, type TaskSums } from "./indexSums.ts";
import { indicesOf } from "./indicesOf.ts";
import { fillLateRows } from "./lateRows.ts";
import { type CountedPath, countPaths, mostFrequent, type PathCounts } from "./pathCounts.ts";
import { placedOf } from "./placed.ts";
import { wayJson } from "./wayJson.ts";

/** Paths listed. */
const shownPaths = 5;
/** Tasks whose days at stake are computed at most, those with the greatest schedule sensitivity. */
const stakeTasks = 12;
/** How often they must be critical. */
const stakeShare = 0.01;

/** Which run the chains are read from, and how many of them are told. */
export interface DrivingPathsOptions extends ExplainingOptions {
  /** Default: the plan's own. */
  confidence?: number;
}

/** The chains that set the finish, or why they cannot be told. */
export interface DrivingPathsResult {
  paths?: Paths;
  problems: Problem[];
}

/**
 * Which chains of tasks set the finish, how often, and how much each task has to do with it: the five most frequent
 * paths, the trade's indices of every unfinished task, and the days at stake on the twelve of the greatest schedule
 * sensitivity (critical in at least one future of a hundred). The draws are the forecast's, and so is the criticality.
 *
 * Problems are values. Cost: about twice the time of `simulate`, plus a re-run of what can move with each of the twelve;
 * memory 8 bytes * n for each of them and a text for each different path.
 */
export function drivingPaths(plan: Plan, options: DrivingPathsOptions = {}): DrivingPathsResult {
  return explaining(plan, options, ({ model, asWritten, draw }) => ({
    paths: pathsOf(model, asWritten, draw, options),
    problems: [],
  }));
}

function pathsOf(model: Model, asWritten: AsWritten, draw: Draw, options: DrivingPathsOptions): Paths {
  const n = draw.iterations;
  let done = 0;
  const progress = (iterations: number) => {
    done += iterations;
    options.onProgress?.(done, 2 * n);
  };
  const confidence = options.confidence ?? model.confidence;
  const counts: PathCounts = new Map();
  const sums = newIndexSums(model.tasks.length);
  const finish = new Float64Array(n);
  const finishDay = new Int32Array(n);
  let late: Float64Array[] | undefined;
  eachBlock(model, draw, asWritten.starts, (block, first) => {
    markMoving(model, block, model.limitedPeople);
    const placed = placedOf(model, block, asWritten.starts);
    late ??= model.tasks.map(() => new Float64Array(block.n));
    fillLateRows(placed, late);
    countPaths(placed, counts);
    addToIndexSums(sums, placed, late);
    finish.set(block.planFinish.subarray(0, block.n), first);
    finishDay.set(block.planFinishDay.subarray(0, block.n), first);
    progress(block.n);
  });
  const tasks = indexed(model, sums);
  const at = new Map(model.tasks.map((task, j) => [task.id, j]));
  const near = tasks
    .filter((task) => task.criticality >= stakeShare && task.scheduleSensitivity > 0)
    .sort((a, b) => b.scheduleSensitivity - a.scheduleSensitivity || (a.id < b.id ? -1 : 1))
    .slice(0, stakeTasks);
  const stakes = daysAtStake(
    model,
    draw,
    asWritten.starts,
    near.map(({ id }) => at.get(id) as number),
    asWritten.block.duration.map((row) => row[0] as number),
    confidence,
    progress,
  );
  near.forEach((task, i) => {
    task.daysAtStake = stakes[i] as number;
  });
  const rank = rankOf(confidence, n) - 1;
  const day = finish.sort()[rank] as number;
  return {
    stamp: stampOf(model, draw),
    plan: { title: model.plan.title, currency: model.plan.currency, start: model.plan.start },
    confidence,
    committed: {
      date: isoDate(model.startDay + (finishDay.sort()[rank] as number)),
      day,
      workingDays: workAt(model.planCalendar, day),
    },
    paths: mostFrequent(counts, shownPaths).map((path) => named(model, path, n)),
    different: counts.size,
    tasks,
  };
}

/** Unfinished tasks with their indices, most often critical first, then by id. */
function indexed(model: Model, sums: IndexSums): TaskIndices[] {
  return model.tasks
    .flatMap((task, j): TaskIndices[] => {
      if (task.progress?.finished === true) return [];
      const { slack, ...indices } = indicesOf(sums, sums.tasks[j] as TaskSums);
      return [{ id: task.id, name: task.name, ...indices, ...(slack === undefined ? {} : { slack }) }];
    })
    .sort((a, b) => b.criticality - a.criticality || (a.id < b.id ? -1 : 1));
}

function named(model: Model, { tasks, ways, count }: CountedPath, n: number): DrivingPath {
  return {
    tasks: tasks.map((j) => model.tasks[j]?.id ?? ""),
    names: tasks.map((j) => model.tasks[j]?.name ?? ""),
    ways: ways.map((way) => wayJson(model, way)),
    share: count / n,
  };
}
