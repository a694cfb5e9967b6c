import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  type Comparison,
  compare,
  forecast,
  type Plan,
  planFromData,
  readPlan,
} from "../../../packages/core/src/index.ts";

/**
 * The averaging against its definition: each change's marginal contribution over all orders (Shapley 1953, "A value
 * for n-person games", Contributions to the Theory of Games II, 307-317; recalled). The values of the sets come from
 * forecasts of plans that are written out here or switched by `with`, not from hybrids.
 */

const iterations = 2000;

function planOf(document: unknown): Plan {
  const { plan, problems } = planFromData(document);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

function compared(older: Plan, newer: Plan): Comparison {
  const { comparison, problems } = compare(older, newer, { iterations });
  if (comparison === undefined) throw new Error(JSON.stringify(problems));
  return comparison;
}

/** Committed working days and money. */
function committedOf(plan: Plan, taken?: string[]): [number, number] {
  const { forecast: result } = forecast(plan, {
    iterations,
    ...(taken === undefined ? {} : { with: taken }),
  });
  if (result === undefined) throw new Error("no forecast");
  return [result.committed.workingDays, result.committed.cost];
}

/** Every order of the items. */
function orders<T>(items: readonly T[]): T[][] {
  if (items.length < 2) return [[...items]];
  return items.flatMap((first, at) =>
    orders(items.filter((_, k) => k !== at)).map((rest) => [first, ...rest]),
  );
}

function averages(players: readonly string[], value: (set: readonly string[]) => [number, number]) {
  const known = new Map<string, [number, number]>();
  const of = (set: readonly string[]) => {
    const key = [...set].sort().join();
    const found = known.get(key) ?? value([...set].sort());
    known.set(key, found);
    return found;
  };
  const sums = new Map(players.map((player): [string, [number, number]] => [player, [0, 0]]));
  const all = orders(players);
  for (const order of all) {
    order.forEach((player, at) => {
      const [days, money] = of(order.slice(0, at + 1));
      const [daysBefore, moneyBefore] = of(order.slice(0, at));
      const sum = sums.get(player);
      if (sum === undefined) return;
      sum[0] += (days - daysBefore) / all.length;
      sum[1] += (money - moneyBefore) / all.length;
    });
  }
  return sums;
}

describe("compare() and the definition of the average over orders", () => {
  it("agrees for three responses adopted on the clinic", () => {
    const text = readFileSync(
      new URL("../../../examples/quillmarsh-clinic.plan.yaml", import.meta.url),
      "utf8",
    );
    const { plan } = readPlan(text);
    if (plan === undefined) throw new Error("the example is not a plan");
    const three = ["pre-application-meeting", "reserve-stock", "second-candidate"];
    const adopt = (risk: Plan["risks"][number]) => ({
      ...risk,
      responses: risk.responses.map((one) => ({ ...one, adopted: three.includes(one.id) })),
    });
    const { moves } = compared(plan, { ...plan, risks: plan.risks.map(adopt) });
    const expected = averages(three, (set) => committedOf(plan, [...set]));
    expect(moves.map(({ ids }) => ids[0]).sort()).toEqual([...three].sort());
    for (const move of moves) {
      const [days = 0, money = 0] = expected.get(move.ids[0] ?? "") ?? [];
      expect(move.workingDays).toBeCloseTo(days, 8);
      expect(move.money).toBeCloseTo(money, 5);
      expect(move.error).toEqual({ workingDays: 0, money: 0 });
    }
  });

  it("agrees for changes of every part of a plan, written out one by one", () => {
    interface Choice {
      estimate?: boolean;
      link?: boolean;
      task?: boolean;
      risk?: boolean;
      rate?: boolean;
      holiday?: boolean;
    }
    const written = (is: Choice) =>
      planOf({
        format: 1,
        title: "By parts",
        start: "2027-02-01",
        calendar: "site",
        calendars: { site: { holidays: is.holiday ? ["2027-02-04", "2027-02-05"] : ["2027-02-04"] } },
        people: [{ id: "ann", name: "Ann", rate: is.rate ? 450 : 400 }],
        tasks: [
          { id: "dig", name: "Dig", duration: is.estimate ? [3, 5, 14] : [3, 5, 9], people: "ann" },
          { id: "pour", name: "Pour", duration: [2, 4, 8], ...(is.link ? { after: "dig" } : {}) },
          { id: "roof", name: "Roof", duration: [1, 2, 4], after: is.task ? ["pour", "cure"] : "pour" },
          ...(is.task ? [{ id: "cure", name: "Cure", duration: [2, 3, 5], after: "pour" }] : []),
        ],
        risks: [
          {
            id: "rain",
            name: "Rain",
            probability: is.risk ? 0.5 : 0.2,
            impacts: { tasks: ["pour"], delay: [1, 2, 6], cost: [100, 200, 400] },
          },
        ],
        overheads: { id: "site-cost", name: "Site", perDay: 50 },
      });
    const keys = ["estimate", "link", "task", "risk", "rate", "holiday"] as const;
    const chosen = (set: readonly string[]): Choice =>
      Object.fromEntries(keys.map((key) => [key, set.includes(key)]));
    // Pour's link and the roof's new links stand in different tasks, so they are groups of their own.
    const { moves, difference } = compared(written({}), written(chosen(keys)));
    const expected = averages(keys, (set) => valueOfIn(written(chosen(set)), written(chosen(keys))));
    const keyOf = new Map([
      ["Dig", "estimate"],
      ["Pour", "link"],
      ["Cure", "task"],
      ["Rain", "risk"],
      ["Ann", "rate"],
      ["Calendar site", "holiday"],
    ]);
    expect(moves).toHaveLength(6);
    for (const { what, workingDays, money } of moves) {
      const key = [...keyOf].find(([name]) => what.startsWith(name))?.[1] ?? what;
      const [days = Number.NaN, sum = Number.NaN] = expected.get(key) ?? [];
      expect(workingDays, what).toBeCloseTo(days, 8);
      expect(money, what).toBeCloseTo(sum, 6);
    }
    expect(Math.abs(difference.workingDays)).toBeGreaterThan(3);
  });
});

/** As `committedOf`, working days on the calendar of another plan with the same start. */
function valueOfIn(plan: Plan, newer: Plan): [number, number] {
  const { forecast: result } = forecast(plan, { iterations });
  if (result === undefined) throw new Error("no forecast");
  const free = new Set(newer.calendars.get(newer.calendar)?.holidays.flatMap(({ from }) => [from]));
  const { day, cost } = result.committed;
  let worked = 0;
  for (let d = 0; d < day; d++) {
    const date = new Date(Date.parse(newer.start) + d * 86_400_000);
    const off = date.getUTCDay() === 0 || date.getUTCDay() === 6 || free.has(date.toISOString().slice(0, 10));
    if (!off) worked += Math.min(1, day - d);
  }
  return [worked, cost];
}
