import { finishDate } from "@leeway/charts";
import type { JointConfidence, JointPair } from "@leeway/core";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

/** What a joint confidence is made from: futures as pairs of a whole day and a sum. Invented data. */
export interface JointSample {
  futures?: [number, number][];
  asked?: [number, number] | undefined;
  joint?: number;
  /** Width and height of a cell. */
  cell?: [number, number];
}

/** 2,000 futures whose day and sum move together: sums of three phases of a golden-ratio sequence, skewed. */
export function sampleFutures(): [number, number][] {
  return Array.from({ length: 2000 }, (_, k) => {
    const u = (a: number) => ((k + 0.5) * a) % 1;
    const shared = u(0.618_033_988_75) + u(0.754_877_666_25);
    const day = 215 + 42 * shared + 26 * u(0.569_840_290_998) ** 2 + 9 / (1.05 - u(0.819_172_513_4));
    const cost = 585_000 + 30_000 * shared + 30_000 * u(0.671_043_606_7) ** 1.5;
    return [Math.floor(day), cost];
  });
}

let usual: JointConfidence | undefined;

/** Counted from the futures, as the engine does; the usual sample once, as counting takes its time. */
export function sampleJoint(sample?: JointSample): JointConfidence {
  if (sample !== undefined) return counted(sample);
  usual ??= counted({});
  return usual;
}

function counted(sample: JointSample): JointConfidence {
  const futures = sample.futures ?? sampleFutures();
  const joint = sample.joint ?? 0.8;
  const n = futures.length;
  const sorted = (at: 0 | 1) => futures.map((each) => each[at]).sort((a, b) => a - b);
  const [days, costs] = [sorted(0), sorted(1)];
  const share = (test: (future: [number, number]) => boolean) => futures.filter(test).length / n;
  const pair = (day: number, cost: number): JointPair => ({
    date: finishDate(samplePlan.start, day + 1),
    day: day + 1,
    cost,
    finishLevel: share((each) => each[0] <= day),
    costLevel: share((each) => each[1] <= cost),
    both: share((each) => each[0] <= day && each[1] <= cost),
  });
  const at = (list: number[], p: number) => list[Math.min(n - 1, Math.max(0, Math.ceil(p * n) - 1))] ?? 0;
  const committed = pair(at(days, 0.8), at(costs, 0.8));
  let level = joint;
  while (level < 1 && pair(at(days, level), at(costs, level)).both < joint) level += 0.005;
  const equal = pair(at(days, level), at(costs, level));
  const pairs = [...new Set(days)].flatMap((day) => {
    const within = futures.filter((each) => each[0] <= day).map((each) => each[1]);
    const needed = Math.ceil(joint * n);
    if (within.length < needed) return [];
    within.sort((a, b) => a - b);
    return [pair(day, within[needed - 1] ?? 0)];
  });
  const edges = (list: number[], step: number) => {
    const from = Math.floor((list[0] ?? 0) / step);
    const to = Math.floor((list[n - 1] ?? 0) / step) + 1;
    return Array.from({ length: to - from + 1 }, (_, k) => (from + k) * step);
  };
  const [wide, high] = sample.cell ?? [7, 5000];
  const [dayEdges, costEdges] = [edges(days, wide), edges(costs, high)];
  const counts = costEdges.slice(1).map(() => new Array<number>(dayEdges.length - 1).fill(0));
  for (const [day, cost] of futures) {
    const row = counts[Math.floor((cost - (costEdges[0] ?? 0)) / high)];
    const column = Math.floor((day - (dayEdges[0] ?? 0)) / wide);
    if (row !== undefined) row[column] = (row[column] ?? 0) + 1;
  }
  const asked = "asked" in sample ? sample.asked : ([242, 640_000] as [number, number]);
  return {
    stamp: sampleStamp,
    atCommitted: committed.both,
    committed,
    ...(asked === undefined ? {} : { asked: pair(asked[0], asked[1]) }),
    equal: {
      joint,
      level: Math.min(1, level),
      date: equal.date,
      day: equal.day,
      cost: equal.cost,
      both: equal.both,
    },
    frontier: { joint, pairs },
    density: { days: dayEdges, costs: costEdges, counts },
    correlation: 0.6,
  };
}
