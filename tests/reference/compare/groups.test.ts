import { describe, expect, it } from "vitest";
import { type Comparison, compare, planFromData } from "../../../packages/core/src/index.ts";

/**
 * What is taken together: changes that would contradict each other, and minor ones of which there are many. Expected
 * groups follow from the plan format's rules, named at each case.
 */

function compared(older: object, newer: object, iterations = 50): Comparison {
  const plan = (keys: object) => {
    const read = planFromData({ format: 1, title: "Groups", start: "2027-02-01", ...keys });
    if (read.plan === undefined) throw new Error(JSON.stringify(read.problems));
    return read.plan;
  };
  const { comparison, problems } = compare(plan(older), plan(newer), { iterations });
  if (comparison === undefined) throw new Error(JSON.stringify(problems));
  const sum = comparison.moves.reduce((total, move) => total + move.workingDays, 0);
  expect(Math.abs(sum - comparison.difference.workingDays)).toBeLessThan(1e-9);
  return comparison;
}

describe("compare() takes together", () => {
  it('links that would form a loop half old, half new ("a loop is an error")', () => {
    const tasks = (order: string[]) =>
      ["a", "b", "c"].map((id) => {
        const before = order[order.indexOf(id) - 1];
        return {
          id,
          name: id.toUpperCase(),
          duration: [1, 2, 4],
          ...(before === undefined ? {} : { after: before }),
        };
      });
    const { moves } = compared({ tasks: tasks(["a", "b", "c"]) }, { tasks: tasks(["c", "b", "a"]) });
    expect(moves).toHaveLength(1);
    expect(moves[0]?.kind).toBe("logic");
    expect(moves[0]?.changes).toEqual([
      "A now also waits for B",
      "B now also waits for C",
      "B no longer waits for A",
      "C no longer waits for B",
    ]);
  });

  it("a new task and what waits for it, but not what happens elsewhere", () => {
    const plan = (more: boolean) => ({
      tasks: [
        { id: "dig", name: "Dig", duration: more ? [3, 4, 6] : [2, 3, 5] },
        ...(more ? [{ id: "test", name: "Test", duration: [1, 2, 3], after: "dig" }] : []),
        { id: "pour", name: "Pour", duration: [2, 4, 7], after: more ? ["dig", "test"] : ["dig"] },
      ],
    });
    const { moves } = compared(plan(false), plan(true));
    expect(moves.map(({ kind, ids }) => [kind, [...ids].sort()]).sort()).toEqual([
      ["estimates", ["dig"]],
      ["scope", ["pour", "test"]],
    ]);
  });

  it('a share and the capacity it needs ("a share above capacity is an error")', () => {
    const plan = (share: number) => ({
      people: { id: "ann", name: "Ann", capacity: share },
      tasks: { id: "dig", name: "Dig", effort: [2, 4, 8], people: { id: "ann", share } },
    });
    const { moves } = compared(plan(1), plan(2));
    expect(moves).toHaveLength(1);
    expect(moves[0]?.kind).toBe("people");
    expect(moves[0]?.workingDays).toBeLessThan(-1);
  });

  it("chances of what excludes each other, where they would sum to more than 1", () => {
    const plan = (a: number) => ({
      tasks: { id: "dig", name: "Dig", duration: [2, 4, 8] },
      risks: [
        { id: "rain", name: "Rain", probability: a, group: "weather", impacts: { tasks: "dig", delay: 4 } },
        {
          id: "snow",
          name: "Snow",
          probability: 1 - a,
          group: "weather",
          impacts: { tasks: "dig", delay: 9 },
        },
      ],
    });
    expect(compared(plan(0.2), plan(0.9)).moves).toHaveLength(1);
    // Where any mixture is possible the two stand apart.
    const loose = (a: number, b: number) => {
      const { tasks, risks } = plan(0.5);
      return { tasks, risks: risks.map((risk, k) => ({ ...risk, probability: k === 0 ? a : b })) };
    };
    expect(compared(loose(0.1, 0.2), loose(0.3, 0.4)).moves).toHaveLength(2);
  });

  it('progress and its status date ("nothing unstarted starts before the day after `statusDate`")', () => {
    const tasks = ["a", "b"].map((id) => ({ id, name: id.toUpperCase(), duration: [4, 5, 9] }));
    const done = tasks.map((task) => ({ ...task, started: "2027-02-01", finished: "2027-02-05" }));
    const open = { id: "c", name: "C", duration: [4, 5, 9], after: ["a", "b"] };
    const { moves } = compared(
      { tasks: [...tasks, open] },
      { statusDate: "2027-02-12", tasks: [...done, open] },
    );
    expect(moves).toHaveLength(1);
    expect(moves[0]?.kind).toBe("actuals");
  });

  it('calendars without a common working day when only one has changed ("no common working day is an error")', () => {
    const plan = (workdays: string[]) => ({
      calendars: { site: { workdays }, hers: { workdays } },
      people: { id: "ann", name: "Ann", calendar: "hers" },
      tasks: { id: "dig", name: "Dig", duration: [2, 4, 8], calendar: "site", people: "ann" },
    });
    const twoNames = (workdays: string[], name: string) => {
      const { calendars, people, tasks } = plan(workdays);
      return {
        calendars: { [`site-${name}`]: calendars.site, [`hers-${name}`]: calendars.hers },
        people: { ...people, calendar: `hers-${name}` },
        tasks: { ...tasks, calendar: `site-${name}` },
      };
    };
    const { moves } = compared(
      { ...twoNames(["mon", "tue"], "before"), calendar: "weekdays" },
      { ...twoNames(["thu", "fri"], "after"), calendar: "weekdays" },
    );
    expect(moves).toHaveLength(1);
    expect(moves[0]?.changes).toHaveLength(2);
  });

  it("minor changes by kind when there are many, the largest by themselves", () => {
    const plan = (by: number) => ({
      tasks: Array.from({ length: 20 }, (_, k) => ({
        id: `t-${k}`,
        name: `Task ${k}`,
        duration: [2, 4, 8 + (k === 7 ? 20 * by : by)],
        cost: 100 + by * k,
        ...(k === 0 ? {} : { after: `t-${k - 1}` }),
      })),
      overheads: { id: "rent", name: "Rent", perDay: 10 + 40 * by },
    });
    const { moves, orders } = compared(plan(0), plan(1), 300);
    expect(moves.length).toBeLessThanOrEqual(8);
    expect(orders).toMatchObject({ groups: moves.length, all: true });
    expect(moves[0]?.what).toBe("Task 7: highest from 8 to 28 working days");
    expect(moves.some(({ what }) => what === "Rent: from EUR 10 to EUR 50 a day")).toBe(true);
    // 20 estimates, 19 costs and the rent, each told once.
    expect(moves.flatMap(({ changes }) => changes)).toHaveLength(40);
    expect(moves.some(({ what }) => /^1\d smaller changes of estimates$/.test(what))).toBe(true);
  });
});
