import { finishDate, startDate } from "@leeway/charts";
import type { Driver, Forecast, TaskForecast, TornadoBar } from "@leeway/core";

/** What a sample is made from; everything else follows. Invented data: no such project exists. */
export interface Sample {
  title?: string;
  currency?: string;
  start?: string;
  confidence?: number;
  iterations?: number;
  /** Quantile functions: days since the start, and money. Non-descending. */
  finishAt?: (p: number) => number;
  costAt?: (p: number) => number;
  asWritten?: { day: number; cost: number };
  asked?: { finishBy?: string; budget?: number };
  tasks?: TaskForecast[];
  drivers?: Driver[];
  tornado?: TornadoBar[];
}

/** Skewed to the right: a logistic bent by an exponential; smooth, median at `middle`. */
export function skewed(middle: number, scale: number, bend: number): (p: number) => number {
  return (p) => middle + (scale * (Math.exp(bend * Math.log(p / (1 - p))) - 1)) / bend;
}

const levels = [0.05, 0.1, 0.2, 0.5, 0.8, 0.9, 0.95];

/** A forecast as the engine would give it, consistent in itself, from a few quantile functions. */
export function sampleForecast(sample: Sample = {}): Forecast {
  const start = sample.start ?? "2027-02-01";
  const confidence = sample.confidence ?? 0.8;
  const n = sample.iterations ?? 10_000;
  const finishAt = sample.finishAt ?? skewed(262, 16.5, 0.16);
  const costAt = sample.costAt ?? skewed(628_400, 17_200, 0.1);
  const written = sample.asWritten ?? { day: 193.5, cost: 598_200 };
  const asked = sample.asked ?? { finishBy: "2027-10-01", budget: 640_000 };
  const ps = Array.from({ length: 200 }, (_, k) => (k + 0.5) / 200);
  const working = (day: number) => Math.round((day * 5) / 7);
  const near = (p: number, side: number) =>
    Math.max(0.001, Math.min(0.999, p + side * 1.96 * Math.sqrt((p * (1 - p)) / n)));
  const shareBy = (quantile: (p: number) => number, value: number) =>
    ps.filter((p) => quantile(p) <= value).length / ps.length;
  const all = [...new Set([...levels, confidence])].sort((a, b) => a - b);

  const finish = all.map((p) => {
    const [day, low, high] = [finishAt(p), finishAt(near(p, -1)), finishAt(near(p, 1))];
    return {
      p,
      day,
      date: finishDate(start, day),
      workingDays: working(day),
      low,
      high,
      lowDate: finishDate(start, low),
      highDate: finishDate(start, high),
    };
  });
  const cost = all.map((p) => ({ p, value: costAt(p), low: costAt(near(p, -1)), high: costAt(near(p, 1)) }));
  const committed = finish[all.indexOf(confidence)];
  const committedCost = cost[all.indexOf(confidence)];
  if (committed === undefined || committedCost === undefined) throw new Error("the level is in the list");
  const askedDay =
    asked.finishBy === undefined
      ? undefined
      : (Date.parse(asked.finishBy) - Date.parse(start)) / 86_400_000 + 1;
  const finishChance = askedDay === undefined ? undefined : shareBy(finishAt, askedDay);
  const budgetChance = asked.budget === undefined ? undefined : shareBy(costAt, asked.budget);
  return {
    plan: {
      title: sample.title ?? "Saltmere Harbour Reading Room",
      sha256: "0".repeat(64),
      currency: sample.currency ?? "EUR",
      start,
    },
    seed: "sample",
    iterations: n,
    version: "0.1.0",
    design: "latin-hypercube",
    asWritten: {
      finish: finishDate(start, written.day),
      day: written.day,
      workingDays: working(written.day),
      cost: written.cost,
    },
    committed: {
      confidence,
      date: committed.date,
      lowDate: committed.lowDate,
      highDate: committed.highDate,
      day: committed.day,
      workingDays: committed.workingDays,
      cost: committedCost.value,
      costLow: committedCost.low,
      costHigh: committedCost.high,
      both: confidence * 0.88,
    },
    contingency: {
      workingDays: working(committed.day - written.day),
      calendarDays: committed.day - written.day,
      money: committedCost.value - written.cost,
    },
    finish: {
      mean: finishAt(0.55),
      sd: finishAt(0.84) - finishAt(0.5),
      percentiles: finish,
      curve: { p: ps, at: ps.map(finishAt) },
      asWrittenChance: shareBy(finishAt, written.day),
    },
    cost: {
      mean: costAt(0.55),
      sd: costAt(0.84) - costAt(0.5),
      percentiles: cost,
      curve: { p: ps, at: ps.map(costAt) },
      asWrittenChance: shareBy(costAt, written.cost),
    },
    chance: {
      ...(finishChance === undefined ? {} : { finishBy: finishChance }),
      ...(budgetChance === undefined ? {} : { budget: budgetChance }),
    },
    asked: {
      ...asked,
      ...(askedDay === undefined ? {} : { finishByDay: askedDay }),
    },
    tasks: sample.tasks ?? sampleTasks(start, finishAt, confidence),
    intervals: [],
    drivers: sample.drivers ?? sampleDrivers,
    tornado: sample.tornado ?? sampleTornado,
    warnings: [],
  };
}

/** One task, from as-written start and finish and by how much its finish may move. */
export function sampleTask(
  start: string,
  id: string,
  name: string,
  phase: string | undefined,
  from: number,
  to: number,
  late: number,
): TaskForecast {
  const s = { p10: from + late * 0.1, p50: from + late * 0.4, p90: from + late * 0.8 };
  const f = { p10: to + late * 0.15, p50: to + late * 0.6, p90: to + late * 1.5 };
  return {
    id,
    name,
    ...(phase === undefined ? {} : { phase }),
    milestone: from === to,
    critical: Math.min(1, late / 50),
    needed: 1,
    asWritten: {
      start: from,
      finish: to,
      startDate: startDate(start, from),
      finishDate: finishDate(start, to),
      needed: true,
      duration: Math.round(((to - from) * 5) / 7),
      cost: 1000 * (to - from),
    },
    start: s,
    finish: f,
    startDates: { p10: startDate(start, s.p10), p50: startDate(start, s.p50), p90: startDate(start, s.p90) },
    finishDates: {
      p10: finishDate(start, f.p10),
      p50: finishDate(start, f.p50),
      p90: finishDate(start, f.p90),
      committed: finishDate(start, f.p90 * 0.7 + f.p50 * 0.3),
    },
    duration: { mean: ((to - from) * 5) / 7 },
    cost: { mean: 1100 * (to - from) },
  };
}

function sampleTasks(start: string, finishAt: (p: number) => number, confidence: number): TaskForecast[] {
  const task = (...rest: [string, string, string | undefined, number, number, number]) =>
    sampleTask(start, ...rest);
  // The last task ends where the forecast does.
  const last = task("open", "Doors open", "Open", 182, 193.5, 70);
  const at = { p10: finishAt(0.1), p50: finishAt(0.5), p90: finishAt(0.9) };
  last.finish = at;
  last.finishDates = {
    p10: finishDate(start, at.p10),
    p50: finishDate(start, at.p50),
    p90: finishDate(start, at.p90),
    committed: finishDate(start, finishAt(confidence)),
  };
  return [
    task("go", "Funding agreed", "Prepare", 0, 0, 0),
    task("survey", "Survey of the quay wall", "Prepare", 0, 18, 9),
    task("brief", "Readers' brief settled", "Prepare", 0, 25, 7),
    task("design", "Design", "Prepare", 25, 60, 16),
    task("permit", "Permit decided", "Prepare", 60, 95, 38),
    task("tender", "Builder chosen", "Prepare", 60, 88, 12),
    task("roof", "Roof and windows", "Build", 95, 137, 52),
    task("fit", "Shelving and desks", "Build", 137, 165, 60),
    task("heat", "Heat pump delivered and set working", "Build", 95, 150, 44),
    task("books", "Books moved back", "Open", 165, 182, 66),
    task("train", "Volunteers trained", "Open", 150, 170, 30),
    last,
  ];
}

const sampleDrivers: Driver[] = [
  { id: "permit", name: "Permit decided", kind: "task", days: 9.13, money: 5020 },
  { id: "wall", name: "Quay wall needs pinning", kind: "risk", days: 7.64, money: 14_260 },
  { id: "roof", name: "Roof and windows", kind: "task", days: 5.21, money: 8930 },
  { id: "heat", name: "Heat pump delivered and set working", kind: "task", days: 3.07, money: 2140 },
  { id: "grid", name: "The grid connection stays as it is", kind: "assumption", days: 2.35, money: 6480 },
  { id: "hands", name: "More volunteers than expected", kind: "risk", days: -1.4, money: -3100 },
  { id: "guard", name: "Site guard", kind: "overhead", days: 0, money: 3890 },
];

const bar = (
  id: string,
  name: string,
  kind: TornadoBar["kind"],
  low: [number, number, string],
  high: [number, number, string],
): TornadoBar => ({
  id,
  name,
  kind,
  sides: kind === "risk" || kind === "assumption" ? "absent-occurs" : "p10-p90",
  low: { workingDays: low[0], money: low[1] },
  high: { workingDays: high[0], money: high[1] },
  lowText: low[2],
  highText: high[2],
});

const sampleTornado: TornadoBar[] = [
  bar("design", "Design", "task", [-2.1, -900, "20 days"], [3.4, 2100, "33 days"]),
  bar("permit", "Permit decided", "task", [-8.2, -4100, "20 days"], [12.4, 7300, "45 days"]),
  bar("wall", "Quay wall needs pinning", "risk", [-5.1, -9800, "absent"], [11.2, 21_400, "occurs"]),
  bar("roof", "Roof and windows", "task", [-4.4, -6100, "24 days"], [7.1, 11_300, "48 days"]),
  bar("glass", "Price of the glass", "task-cost", [0, -8200, "EUR 61,000"], [0, 12_900, "EUR 88,000"]),
  bar("heat", "Heat pump delivered and set working", "task", [-1.6, -800, "35 days"], [4.9, 1900, "70 days"]),
  bar(
    "grid",
    "The grid connection stays as it is",
    "assumption",
    [-1.9, -4900, "holds"],
    [6.6, 9700, "is wrong"],
  ),
  bar("hands", "More volunteers than expected", "risk", [1.1, 2800, "absent"], [-2.7, -5600, "occurs"]),
  bar("survey", "Survey of the quay wall", "task", [-0.8, -300, "10 days"], [1.4, 500, "18 days"]),
  bar("tender", "Builder chosen", "task", [-0.3, 0, "15 days"], [0.9, 0, "25 days"]),
  bar("books", "Books moved back", "task", [-1.2, -400, "9 days"], [2.2, 900, "17 days"]),
  bar("train", "Volunteers trained", "task", [0, 0, "8 days"], [0.2, 100, "14 days"]),
  bar("guard", "Site guard", "overhead", [0, -1100, "EUR 70 a day"], [0, 1600, "EUR 115 a day"]),
  bar("cure", "Drying of the floor", "lag", [-0.6, -100, "10 days"], [1.9, 400, "21 days"]),
  bar("brief", "Readers' brief settled", "task", [-0.1, 0, "12 days"], [0.4, 0, "22 days"]),
];
