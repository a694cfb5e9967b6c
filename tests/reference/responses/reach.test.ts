/** What it would take, against plans small enough to write every combination down. */
import { describe, expect, it } from "vitest";
import { mergingRisks, type Reach, type ReachOptions, reach } from "../../../packages/core/src/index.ts";
import { dateAfter, planFrom, seed } from "../integrated/runPlan.ts";
import { expectShare } from "../integrated/tolerances.ts";
import { chanceBy, type MergingRisk } from "./merging.ts";

function reachOf(document: unknown, options: ReachOptions = {}): Reach {
  const result = reach(planFrom(document), { seed, ...options });
  if (result.reach === undefined) throw new Error(JSON.stringify(result.problems));
  return result.reach;
}

// Own data: two chains that end together, three risks; chances of the eight sets by hand rules (`merging.ts`).
describe("reach(merging chains)", () => {
  const { document } = mergingRisks();
  const costs: Record<MergingRisk, number> = { "on-left": 3, "on-right": 4, "on-both": 2 };
  const names = Object.keys(costs) as MergingRisk[];
  const risks = (document.risks as { id: MergingRisk }[]).map((risk) => ({
    ...risk,
    responses: [{ id: `end-${risk.id}`, action: `End ${risk.id}`, cost: costs[risk.id], probability: 0 }],
  }));
  const subsets = Array.from({ length: 8 }, (_, set) => names.filter((_, i) => (set >> i) & 1));
  const costOf = (set: readonly MergingRisk[]) => set.reduce((sum, name) => sum + costs[name], 0);
  const left = (set: readonly MergingRisk[]) => names.filter((name) => !set.includes(name));

  // No chance of a subset lies within four standard errors (0.02) of a confidence asked for: checked below.
  it.each([
    [20, 0.35],
    [20, 0.7],
    [23, 0.45],
    [24, 0.56],
    [24, 0.85],
    [25, 0.95],
    [29, 0.88],
  ])("day %i at %f: the cheapest of the eight sets that does it", (days, confidence) => {
    const chances = subsets.map((set) => chanceBy(left(set), days));
    for (const chance of chances) expect(Math.abs(chance - confidence)).toBeGreaterThan(0.02);
    const able = subsets.filter((_, k) => (chances[k] as number) >= confidence);
    const least = Math.min(...able.map(costOf));
    const found = reachOf({ ...document, risks }, { finishBy: dateAfter(days), confidence });
    expectShare(found.chance, chanceBy(names, days));
    if (chanceBy(names, days) >= confidence) {
      expect([found.answer, found.ways]).toEqual(["already", []]);
      return;
    }
    expect(found.answer).toBe("ways");
    const [way] = found.ways;
    const taken = (way?.steps ?? []).map(({ entry }) => entry?.id as MergingRisk);
    expect(way?.cost).toBe(least);
    expect(costOf(taken)).toBe(least);
    expectShare(way?.chance ?? 0, chanceBy(left(taken), days));
    expect(found.ways).toHaveLength(1);
    expect(found.how).toMatchObject({ kind: "every-set", tried: 8 });
  });

  it("tells each step's chance with those before it, and what each adds adds up", () => {
    const found = reachOf({ ...document, risks }, { finishBy: dateAfter(20), confidence: 0.9 });
    const [way] = found.ways;
    let taken: MergingRisk[] = [];
    for (const step of way?.steps ?? []) {
      taken = [...taken, step.entry?.id as MergingRisk];
      expectShare(step.chance, chanceBy(left(taken), 20));
    }
    expect(taken).toHaveLength(3);
    const added = (way?.steps ?? []).reduce((sum, { bought }) => sum + bought, found.chance);
    expect(added).toBeCloseTo(way?.chance ?? 0, 12);
    expect(way?.chance).toBe(1);
  });

  it("says that nothing does, and how close the best set comes", () => {
    const found = reachOf({ ...document, risks }, { finishBy: dateAfter(19), confidence: 0.5 });
    expect([found.answer, found.ways]).toEqual(["nothing", []]);
    expect(found.best?.chance).toBe(0);
    expect(found.best?.steps).toEqual([]);
    const bare = document.risks as { id: MergingRisk }[];
    const fewer = risks.map((risk, k) => (risk.id === "on-both" ? (bare[k] as typeof risk) : risk));
    const some = reachOf({ ...document, risks: fewer }, { finishBy: dateAfter(20), confidence: 0.9 });
    expect(some.answer).toBe("nothing");
    expect(some.best?.steps.map(({ id }) => id).sort()).toEqual(["end-on-left", "end-on-right"]);
    expectShare(some.best?.chance ?? 0, chanceBy(["on-both"], 20));
  });
});

// By hand, nothing uncertain: a crew works on two halls of five days, one after the other; a second crew costs 700;
// the second hall is optional.
describe("reach(two halls, one crew)", () => {
  const document = {
    format: 1,
    title: "Two halls",
    start: "2027-03-01",
    calendar: "every-day",
    purpose: {
      scope: { in: [{ id: "annex", name: "The annex", optional: true, lost: "Room for forty." }] },
    },
    people: [{ id: "crew", name: "Crew", rate: 100, couldAdd: { capacity: 1, cost: 700 } }],
    tasks: [
      { id: "a", name: "Main hall", duration: 5, people: "crew" },
      { id: "b", name: "Annex", duration: 5, people: "crew", scope: "annex" },
    ],
  };
  const by = (days: number, more: ReachOptions = {}) =>
    reachOf(document, { finishBy: dateAfter(days), ...more });

  it("adds the crew rather than drop scope, and shows the dearer loss beside it", () => {
    const found = by(5);
    expect(found.ways.map(({ cost, steps }) => [cost, steps.map(({ kind, id }) => `${kind} ${id}`)])).toEqual(
      [
        [700, ["capacity crew"]],
        [0, ["scope annex"]],
      ],
    );
    const [more, less] = found.ways;
    expect(more?.steps[0]).toMatchObject({
      capacity: 1,
      chance: 1,
      bought: 1,
      effect: { workingDays: -5, money: 700 },
    });
    expect(less?.steps[0]).toMatchObject({
      lost: "Room for forty.",
      effect: { workingDays: -5, money: -500 },
    });
    expect(more?.outlook).toMatchObject({ workingDays: 5, cost: 1700 });
    expect(less?.outlook).toMatchObject({ workingDays: 5, cost: 500 });
  });

  it("drops scope where money alone does not do it", () => {
    const found = by(5, { sum: 900 });
    expect(found.ways.map(({ steps }) => steps.map(({ id }) => id))).toEqual([["annex"]]);
    expect(found.ways[0]?.chance).toBe(1);
  });

  it("needs nothing for day 10, and for day 4 nothing does", () => {
    expect(by(10)).toMatchObject({ answer: "already", chance: 1, ways: [] });
    expect(by(4)).toMatchObject({ answer: "nothing", chance: 0, best: { steps: [], chance: 0 } });
  });

  it("takes what the plan asks for when nothing else is asked", () => {
    const asking = { ...document, commitment: { finishBy: dateAfter(5), budget: 1700, confidence: 0.6 } };
    expect(reachOf(asking).asked).toEqual({ finishBy: dateAfter(5), sum: 1700, confidence: 0.6 });
    expect(reachOf(asking).ways[0]?.steps.map(({ id }) => id)).toEqual(["crew"]);
    expect(reachOf(asking, { sum: 600 }).asked).toEqual({ sum: 600, confidence: 0.6 });
  });

  it("leaves alone what has begun, what is promised, and people nobody limits", () => {
    const promised = { ...document, commitment: { finishOf: "b" } };
    expect(reachOf(promised, { finishBy: dateAfter(5) }).notes.join()).toContain("annex");
    const free = { ...document, respectCapacity: false };
    expect(reachOf(free, { finishBy: dateAfter(4) })).toMatchObject({
      options: { responses: 0, scope: 1, capacity: 0 },
    });
    const begun = {
      ...document,
      statusDate: "2027-03-01",
      tasks: document.tasks.map((task) => (task.id === "b" ? { ...task, started: "2027-03-01" } : task)),
    };
    expect(reachOf(begun, { finishBy: dateAfter(4) }).options.scope).toBe(0);
  });
});
