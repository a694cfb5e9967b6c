// The plan with an assumption false, against the same question put another way: the forecast of a document in which it
// has occurred (false) or is closed (holds for certain). Draws are addressed by item, so all three share them; the
// first case is worked out by hand.
import { forecast, type Plan, readPlan, testAssumptions } from "@leeway/core";
import { describe, expect, it } from "vitest";

const plan = (more: { floor?: string; wall?: string; rain?: string } = {}): Plan => {
  const { plan: read, problems } = readPlan(`format: 1
title: Cellar
start: 2027-02-01
iterations: 700
commitment: { confidence: 0.7, finishBy: 2027-02-19, budget: 1500 }
tasks:
  - { id: dig, name: Dig, duration: [4, 6, 10], cost: [400, 600, 900] }
  - { id: line, name: Line, after: dig, duration: [2, 3, 6], cost: 500 }
assumptions:
  - { id: floor, statement: The floor is dry, chanceWrong: 0.2, impacts: { tasks: line, delay: [2, 4, 7], cost: [100, 200, 500] }${more.floor ?? ""} }
  - { id: wall, statement: The wall stands, chanceWrong: 0.1, group: water, impacts: { tasks: dig, factor: [1.1, 1.3, 1.6] }${more.wall ?? ""} }
risks:
  - { id: rain, name: Rain, probability: 0.4, group: water, impacts: { tasks: dig, delay: [1, 2, 3] }${more.rain ?? ""} }
`);
  if (read === undefined) throw new Error(JSON.stringify(problems));
  return read;
};
const standing = (of: Plan) => {
  const { forecast: found } = forecast(of);
  if (found === undefined) throw new Error("no forecast");
  const { committed, chance } = found;
  return { days: committed.workingDays, cost: committed.cost, date: committed.date, chance };
};
const tested = (id: string) => {
  const { tested: found, problems } = testAssumptions(plan(), { only: [id] });
  const one = found?.assumptions[0];
  if (found === undefined || one?.ifFalse === undefined) throw new Error(JSON.stringify(problems));
  return { base: found.base, ...one.ifFalse };
};

describe("testAssumptions(plan)", () => {
  it("of a plan with nothing else uncertain moves by what is written: 3 days and 250", () => {
    const { plan: certain } = readPlan(`format: 1
title: T
start: 2027-02-01
tasks: [{ id: a, name: A, duration: 5, cost: 100 }]
assumptions: [{ id: s, statement: S, chanceWrong: 0.1, impacts: { tasks: a, delay: 3, cost: 250 } }]
`);
    if (certain === undefined) throw new Error("unread");
    // At 80 % an event of one in ten is not in the commitment: 5 days, Friday 5 February, 100.
    const { tested: found } = testAssumptions(certain, { iterations: 1000 });
    expect(found?.base).toMatchObject({ workingDays: 5, cost: 100, date: "2027-02-05" });
    expect(found?.assumptions[0]?.ifFalse).toMatchObject({
      standing: { workingDays: 8, cost: 350, date: "2027-02-10" },
      moved: { workingDays: 3, money: 250 },
      againstHolding: { workingDays: 3, money: 250 },
    });
  });

  it("is the forecast of the plan in which it occurred, less that of the plan as it stands or in which it holds", () => {
    const { base, standing: fails, moved, againstHolding, chance } = tested("floor");
    const now = standing(plan());
    const wrong = standing(plan({ floor: ", status: occurred" }));
    const right = standing(plan({ floor: ", status: closed" }));
    expect([base.workingDays, base.cost, base.date]).toEqual([now.days, now.cost, now.date]);
    expect([fails.workingDays, fails.cost, fails.date]).toEqual([wrong.days, wrong.cost, wrong.date]);
    expect(moved.workingDays).toBeCloseTo(wrong.days - now.days, 12);
    expect(againstHolding.money).toBeCloseTo(wrong.cost - right.cost, 9);
    expect(chance).toEqual(wrong.chance);
    expect(moved.workingDays).toBeGreaterThan(0);
  });

  it("lets nothing else of its group occur", () => {
    const { standing: fails } = tested("wall");
    const wrong = standing(plan({ wall: ", status: occurred", rain: ", status: open" }));
    expect([fails.workingDays, fails.cost]).toEqual([wrong.days, wrong.cost]);
  });

  it("puts the one that moves most first, leaves closed ones out and supposes nothing of those that occurred", () => {
    const all = testAssumptions(plan()).tested?.assumptions ?? [];
    expect(all.map(({ id }) => id)).toEqual(["floor", "wall"]);
    const done = testAssumptions(plan({ floor: ", status: occurred", wall: ", status: closed" })).tested;
    expect(done?.assumptions).toMatchObject([{ id: "floor", occurred: true }]);
    expect(done?.assumptions[0]?.ifFalse).toBeUndefined();
  });

  it.each([
    ["flor", "Did you mean floor?"],
    ["rain", "Open are: floor, wall."],
    ["dig", "Open are: floor, wall."],
  ])("refuses %s", (id, remedy) => {
    expect(testAssumptions(plan(), { only: [id] }).problems).toMatchObject([{ path: "--if-false", remedy }]);
  });
});
