import { finishDate } from "@leeway/charts";
import type { Confidence, ConfidenceStep } from "@leeway/core";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";
import { sampleJoint } from "./sampleJoint.ts";

/** What a confidence is made from. Invented data. */
export interface ConfidenceSample {
  levels?: number[];
  dayAt?: (p: number) => number;
  costAt?: (p: number) => number;
  /** Lateness left beyond the date of a level; undefined: not priced. */
  leftAt?: ((p: number) => number) | undefined;
  clear?: boolean;
  confidence?: number;
}

const usual = [0.5, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95];

/** Levels side by side, from quantile functions. */
export function sampleConfidence(sample: ConfidenceSample = {}): Confidence {
  const levels = sample.levels ?? usual;
  const bent = (p: number) => Math.log(p / (1 - p));
  const dayAt = sample.dayAt ?? ((p) => 262 + 16.5 * bent(p) + 1.2 * bent(p) ** 2);
  const costAt = sample.costAt ?? ((p) => 628_400 + 17_200 * bent(p));
  const leftAt = "leftAt" in sample ? sample.leftAt : (p: number) => 104_000 * (1 - p) ** 0.8;
  const confidence = sample.confidence ?? 0.8;
  const steps: ConfidenceStep[] = levels.map((p, k) => {
    const before = levels[k - 1];
    const limit = Math.sqrt((p * (1 - p)) / 10_000) * 1.96;
    const [low, high] = [Math.max(0.01, p - limit), Math.min(0.99, p + limit)];
    const bought =
      before === undefined
        ? undefined
        : { workingDays: ((dayAt(p) - dayAt(before)) * 5) / 7, money: costAt(p) - costAt(before) };
    const left = leftAt?.(p);
    const avoided = before === undefined || leftAt === undefined ? undefined : leftAt(before) - leftAt(p);
    return {
      p,
      date: finishDate(samplePlan.start, dayAt(p)),
      day: dayAt(p),
      workingDays: (dayAt(p) * 5) / 7,
      cost: costAt(p),
      lowDate: finishDate(samplePlan.start, dayAt(low)),
      highDate: finishDate(samplePlan.start, dayAt(high)),
      costLow: costAt(low),
      costHigh: costAt(high),
      late: { chance: 1 - p, days: 12 },
      over: { chance: 1 - p, money: 14_000 },
      ...(bought === undefined ? {} : { bought }),
      ...(left === undefined ? {} : { latenessLeft: left }),
      ...(avoided === undefined || bought === undefined
        ? {}
        : { avoided, netError: 90, worthIt: avoided >= bought.money }),
    };
  });
  const best = steps.reduce<ConfidenceStep | undefined>(
    (least, step) =>
      least === undefined || step.cost + (step.latenessLeft ?? 0) < least.cost + (least.latenessLeft ?? 0)
        ? step
        : least,
    undefined,
  );
  const next = best === undefined ? undefined : steps[steps.indexOf(best) + 1];
  const asWritten = { date: "2027-08-13", day: 193.5, workingDays: 140, cost: 598_200, money: 598_200 };
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    confidence,
    asWritten,
    committed: {
      date: finishDate(samplePlan.start, dayAt(confidence)),
      day: dayAt(confidence),
      workingDays: (dayAt(confidence) * 5) / 7,
      cost: costAt(confidence),
      money: costAt(confidence),
    },
    steps,
    ...(leftAt === undefined || best === undefined
      ? { missing: "The plan does not say what finishing late costs." }
      : {
          lateness: { perWeek: 4500, once: 18_000 },
          stop: {
            p: best.p,
            clear: sample.clear ?? true,
            ...(next?.bought === undefined || next.avoided === undefined
              ? {}
              : { next: { p: next.p, costs: next.bought.money, avoids: next.avoided } }),
          },
        }),
    joint: sampleJoint(),
  };
}
