import { finishDate, startDate } from "@leeway/charts";
import type { Future, FutureEvent, FutureTask } from "@leeway/core";
import { longName, markup, rightToLeft } from "./hardExplanations.ts";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

const task = (
  id: string,
  name: string,
  start: number,
  finish: number,
  written: number,
  change: Partial<FutureTask> = {},
): FutureTask => ({
  id,
  name,
  milestone: start === finish,
  needed: true,
  start,
  finish,
  startDate: startDate(samplePlan.start, start),
  finishDate: finishDate(samplePlan.start, finish),
  duration: ((finish - start) * 5) / 7,
  asWritten: {
    duration: ((finish - start) * 4) / 7,
    finish: written,
    finishDate: finishDate(samplePlan.start, written),
  },
  critical: false,
  cost: 1000,
  heldBy: [],
  ...change,
});

const waiting = (name: string): FutureTask["heldBy"] => [
  {
    kind: "person",
    person: { id: "p", name },
    day: 60,
    start: 55,
    startDate: startDate(samplePlan.start, 55),
    slack: 0,
    binds: true,
  },
];

/** Invented tasks of one future. */
export const sampleFutureTasks: FutureTask[] = [
  task("go", "Funding agreed", 0, 0, 0),
  task("survey", "Survey of the quay wall", 0, 22, 18),
  task("brief", "Readers' brief settled", 0, 31, 25, { slack: 9 }),
  task("design", "Design", 22, 67, 60),
  task("tender", "Builder chosen", 67, 92, 88, { slack: 31, heldBy: waiting("Ilse Marr") }),
  task("permit", "Permit decided", 67, 124, 95),
  task("heat", "Heat pump delivered and set working", 124, 171, 150, { slack: 20 }),
  task("roof", "Roof and windows", 124, 188, 137),
  task("paint", "Second coat of paint", 0, 0, 160, { needed: false, milestone: false }),
  task("fit", "Shelving and desks", 188, 219, 165),
  task("train", "Volunteers trained", 188, 204, 170, { slack: 16 }),
  task("books", "Books moved back", 219, 241, 182),
  task("open", "Doors open", 241, 255, 193.5),
];

const event = (
  id: string,
  name: string,
  occurred: boolean,
  kind: FutureEvent["kind"] = "risk",
): FutureEvent => ({
  id,
  name,
  kind,
  chance: 0.25,
  occurred,
  days: occurred ? 11 : 0,
  waited: 0,
  money: 4000,
});

/** One future, whose finish is that of its last task. */
export function sampleFuture(tasks = sampleFutureTasks, change: Partial<Future> = {}): Future {
  const finish = tasks.reduce((latest, each) => Math.max(latest, each.finish), 0);
  const chain = ["survey", "design", "permit", "roof", "fit", "books", "open"];
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    iteration: 4711,
    asWritten: { date: "2027-08-13", day: 193.5, workingDays: 140, cost: 598_200, money: 598_200 },
    finish: {
      date: finishDate(samplePlan.start, finish),
      day: finish,
      workingDays: (finish * 5) / 7,
      level: 0.44,
    },
    cost: { total: 634_120, level: 0.61, lines: [] },
    events: [
      event("wall", "Quay wall needs pinning", true),
      event("storm", "Storm", false),
      event("grant", "Grant comes late", true),
      event("grid", "The grid connection stays as it is", false, "assumption"),
    ],
    draws: [
      {
        of: { id: "wall", name: "Quay wall needs pinning" },
        what: "delay",
        on: [{ id: "roof", name: "Roof and windows" }],
        value: 11,
        unit: "days",
        asWritten: 0,
        level: 0.7,
        counts: true,
      },
      {
        of: { id: "storm", name: "Storm" },
        what: "delay",
        on: [{ id: "fit", name: "Shelving and desks" }],
        value: 3,
        unit: "days",
        asWritten: 0,
        level: 0.2,
        counts: false,
      },
    ],
    tasks,
    path: tasks
      .filter((each) => chain.includes(each.id))
      .map((each, k) => ({
        task: { id: each.id, name: each.name },
        way: { kind: k === 0 ? ("plan-start" as const) : ("link" as const) },
      })),
    ...change,
  };
}

/** Futures at the edges of what a plan can give, by name. */
export function hardFutures(): Record<string, Future> {
  const renamed = (name: string) => {
    const future = sampleFuture(sampleFutureTasks.map((each) => ({ ...each, name, heldBy: waiting(name) })));
    return { ...future, events: future.events.map((each) => ({ ...each, name })) };
  };
  const written = sampleFutureTasks.map((each) => ({
    ...each,
    finish: each.asWritten.finish,
    start: Math.min(each.start, each.asWritten.finish),
  }));
  return {
    "no tasks": sampleFuture([]),
    "nothing occurs": sampleFuture(undefined, { events: [], draws: [] }),
    "as written to the day": sampleFuture(written, {
      finish: { date: "2027-08-13", day: 193.5, workingDays: 140, level: 0.01 },
    }),
    "earlier than written": sampleFuture(sampleFutureTasks.slice(0, 5)),
    "one task": sampleFuture(sampleFutureTasks.slice(1, 2)),
    "eighty tasks": sampleFuture(
      Array.from({ length: 80 }, (_, k) =>
        task(`t${k}`, `Section ${k + 1} laid`, k * 2, k * 2 + 16, k * 2 + 12),
      ),
    ),
    "ten years": sampleFuture([
      task("survey", "Route settled", 0, 900, 700),
      task("open", "Tunnel", 900, 3400, 2300),
    ]),
    "very long names": renamed(longName),
    "right to left": renamed(rightToLeft),
    "markup for names": renamed(markup),
  };
}
