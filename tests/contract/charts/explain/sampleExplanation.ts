import { finishDate } from "@leeway/charts";
import type { CauseKind, Explanation, Share, WalkKind } from "@leeway/core";

// Invented data: no such project exists. Parts are made to add up; whether the engine's do is tested elsewhere.

/** The run stamp of every sample. */
export const sampleStamp = {
  seed: "sample",
  iterations: 10_000,
  version: "0.1.0",
  design: "latin-hypercube" as const,
  sha256: "0".repeat(64),
};

export const samplePlan = { title: "Saltmere Harbour Reading Room", currency: "EUR", start: "2027-02-01" };

const share = (
  id: string,
  name: string,
  kind: CauseKind,
  days: number,
  money: number,
  gathers?: string[],
): Share => ({
  id,
  name,
  kind,
  workingDays: days,
  money,
  error: { workingDays: 0.18, money: 240 },
  ifRemoved: { workingDays: -days * 0.7, money: -money * 0.8 },
  ...(gathers === undefined ? {} : { gathers }),
});

export const sampleShares: Share[] = [
  share("permit", "Permit decided", "spread", 14.2, 6100),
  share("wall", "Quay wall needs pinning", "risk", 11.3, 18_400),
  share("queue", "Regulator's queue", "cause", 8.4, 3300),
  share("builder", "The builder serves two sites", "people", 7.6, 5200),
  share("grid", "The grid connection stays as it is", "assumption", 6.1, 9700),
  share("other-spread", "Other estimates", "spread", 9.9, 8600, ["roof", "heat", "books", "train", "fit"]),
  share("other-risks", "Other risks", "risk", 3.2, 4400, ["storm", "strike"]),
  share("hands", "More volunteers than expected", "risk", -4.7, -6900),
];

/** An explanation whose contingency is the sum of the shares given. */
export function sampleExplanation(
  shares: Share[] = sampleShares,
  change: Partial<Explanation> = {},
): Explanation {
  const contingency = {
    workingDays: shares.reduce((sum, each) => sum + each.workingDays, 0),
    money: shares.reduce((sum, each) => sum + each.money, 0),
  };
  const asWritten = { date: "2027-08-13", day: 193.5, workingDays: 140, cost: 598_200, money: 598_200 };
  const committed = {
    date: finishDate(samplePlan.start, 193.5 + Math.round(contingency.workingDays * 1.45)),
    day: 193.5 + contingency.workingDays * 1.45,
    workingDays: asWritten.workingDays + contingency.workingDays,
    cost: asWritten.cost + contingency.money,
    money: asWritten.cost + contingency.money,
  };
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    confidence: 0.8,
    asWritten,
    committed,
    contingency,
    shares,
    orders: { causes: shares.length, taken: 400, all: false },
    walk: sampleWalk(contingency.workingDays, contingency.money),
    ...change,
  };
}

/** Six steps that add up to the whole. */
export function sampleWalk(days: number, money: number): Explanation["walk"] {
  const step = (kind: WalkKind, name: string, text: string, part: number, sums: number) => ({
    kind,
    step: name,
    text,
    workingDays: days * part,
    money: money * sums,
  });
  return [
    step(
      "spread",
      "Spread along the driving path",
      "Estimates along the driving path take longer than their likely value.",
      0.3,
      0.24,
    ),
    step("merging", "Merging of paths", "Paths that meet must all be done.", 0.16, 0.08),
    step("people", "Limited people", "People are busy on other tasks.", 0.13, 0.1),
    step("register", "Risks and assumptions", "Risks and assumptions.", 0.31, 0.42),
    step("percentile", "From the mean to 80 %", "From the mean to 8 times in 10.", 0.1, 0.16),
  ];
}

/** One share of each name, all alike or of the sizes given. */
export function namedShares(names: string[], size: (k: number) => number = () => 4): Share[] {
  return names.map((name, k) =>
    share(`s${String(k).padStart(2, "0")}`, name, "spread", size(k), size(k) * 900),
  );
}
