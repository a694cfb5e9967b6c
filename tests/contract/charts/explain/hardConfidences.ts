import type { Confidence } from "@leeway/core";
import { type ConfidenceSample, sampleConfidence } from "./sampleConfidence.ts";
import { type JointSample, sampleFutures, sampleJoint } from "./sampleJoint.ts";

let known: Record<string, Confidence> | undefined;

/** Answers to "why this confidence" at the edges of what a plan can give, by name. Invented data. */
export function hardConfidences(): Record<string, Confidence> {
  known ??= made();
  return known;
}

function made(): Record<string, Confidence> {
  const steps = (sample: ConfidenceSample) => sampleConfidence(sample);
  const joint = (sample: JointSample): Confidence => ({
    ...sampleConfidence(),
    joint: sampleJoint(sample),
  });
  return {
    "lateness not priced": steps({ leftAt: undefined }),
    "no lateness left": steps({ leftAt: () => 0 }),
    "not to be told apart": steps({ clear: false }),
    "stop before the committed level": steps({ leftAt: (p) => 20_000 * (1 - p) }),
    "stop after the committed level": steps({ leftAt: (p) => 180_000 * (1 - p) ** 0.8 }),
    "the last step is worth it too": steps({ leftAt: (p) => 9_000_000 * (1 - p) }),
    "one level": steps({ levels: [0.8] }),
    "the committed level is the last": steps({ confidence: 0.95, leftAt: undefined }),
    "every level on one day, for one sum": steps({
      dayAt: () => 193.5,
      costAt: () => 598_200,
      leftAt: undefined,
    }),
    "earlier and cheaper than written": steps({
      dayAt: (p) => 120 + 60 * p,
      costAt: (p) => -40_000 + 9000 * p,
    }),
    "ten years and a billion": steps({
      dayAt: (p) => 3100 + 400 * p,
      costAt: (p) => 1.84e9 + 4e8 * p,
      leftAt: (p) => 3e8 * (1 - p),
    }),
    "nothing asked": joint({ asked: undefined }),
    "asked for what nobody keeps, far away": joint({ asked: [2, 9_000_000] }),
    "date certain": joint({ futures: sampleFutures().map(([, cost]) => [240, cost]), asked: undefined }),
    "sum certain": joint({ futures: sampleFutures().map(([day]) => [day, 598_200]), asked: undefined }),
    "date and sum certain": joint({
      futures: Array.from({ length: 50 }, () => [240, 598_200]),
      cell: [1, 1],
      asked: [240, 598_200],
    }),
    "date and sum rise as one": joint({
      futures: Array.from({ length: 1000 }, (_, k) => [200 + Math.floor(k / 20), 500_000 + 100 * k]),
    }),
    "date and sum against one another": joint({
      futures: Array.from({ length: 1000 }, (_, k) => [200 + Math.floor(k / 10), 600_000 - 100 * k]),
    }),
    "one future far out": joint({ futures: [...sampleFutures(), [3000, 5_000_000]], cell: [100, 200_000] }),
  };
}
