import { describe, expect, it } from "vitest";
import { complaints, moments, occurred, simulated, written } from "./page.ts";

// Every title is a sentence of plan format 1, "The register"; expected values by hand. Latin hypercube: 1,024
// iterations hold one draw in each of 1,024 equal strata, so a probability p comes out in 1024 p of them, give or
// take one for each end of its slot. That holds for every seed: no false alarm.

const n = 1024;
const tasks = { a: { duration: 2 } };
/** A risk that costs `money` when it occurs, so that totals tell which ones did. */
const risk = (id: string, money: number, keys: object = {}) => ({
  id,
  name: id,
  probability: 0.5,
  impacts: { tasks: "a", cost: money },
  ...keys,
});
/** Iterations in which a risk of `money` occurred; several risks cost 1, 10, 100, ... */
const hits = (keys: object, money = 1): boolean[] =>
  simulated(tasks, keys, n).cost.map((cost) => Math.floor(cost / money + 1e-9) % 10 === 1);
const count = (list: boolean[]) => list.filter(Boolean).length;
const response = (id: string, keys: object = {}) => ({ id, action: id, adopted: true, ...keys });

describe("status", () => {
  const chance = (keys: object, more: object = {}) =>
    count(hits({ risks: [risk("r", 1, keys)], ...more })) / n;
  const adopted = {
    assumptions: {
      id: "s",
      statement: "S",
      chanceWrong: 0,
      impacts: { tasks: "a", cost: 0 },
      responses: [response("yes"), response("no", { adopted: false })],
    },
  };
  const mate = (keys: object) => ({
    risks: [risk("r", 1, { group: "g", ...keys }), risk("q", 0, { group: "g", status: "occurred" })],
  });

  it.each([
    ["open: its probability", {}, {}, 0.5],
    ["`occurred` = 1", { status: "occurred" }, {}, 1],
    ["`closed` = 0", { status: "closed" }, {}, 0],
    ["`expires` before `statusDate` = 0", { expires: "2027-02-02" }, { statusDate: "2027-02-03" }, 0],
    [
      "`expires` on `statusDate` is not before it",
      { expires: "2027-02-03" },
      { statusDate: "2027-02-03" },
      0.5,
    ],
    ["`expires` without a `statusDate` does nothing", { expires: "2027-02-02" }, {}, 0.5],
    ["`onlyIf` of a response not adopted = 0", { onlyIf: "no" }, adopted, 0],
    ["`onlyIf` of an adopted response", { onlyIf: "yes" }, adopted, 0.5],
    [
      "`occurred` comes before `expires`",
      { status: "occurred", expires: "2027-02-02" },
      { statusDate: "2027-02-03" },
      1,
    ],
    ["`occurred` comes before `onlyIf`", { status: "occurred", onlyIf: "no" }, adopted, 1],
    ["`closed` comes before everything after it", { status: "closed", onlyIf: "yes" }, adopted, 0],
    [
      "`occurred` comes before the responses",
      { status: "occurred", responses: response("x", { probability: 0 }) },
      {},
      1,
    ],
    [
      "`expires` comes before the responses",
      { expires: "2027-02-02", responses: response("x", { probability: 0.4 }) },
      { statusDate: "2027-02-03" },
      0,
    ],
    ["then the probability after responses", { responses: response("x", { probability: 0.125 }) }, {}, 0.125],
  ])("%s", (_, keys, more, expected) => {
    expect(Math.abs(chance(keys, more) - expected)).toBeLessThanOrEqual(
      expected > 0 && expected < 1 ? 1 / n : 0,
    );
  });

  it("where one of a group has occurred, the others = 0, whatever their own responses say", () => {
    expect(count(hits(mate({})))).toBe(0);
    expect(count(hits(mate({ probability: 0.3, responses: response("x", { probability: 0.2 }) })))).toBe(0);
  });

  it("of an assumption: `occurred`, it proved wrong", () => {
    const assumption = { id: "s", statement: "S", chanceWrong: 0.25, impacts: { tasks: "a", delay: 3 } };
    expect(written(tasks, { assumptions: assumption }).day).toBe(2);
    expect(written(tasks, { assumptions: { ...assumption, status: "occurred" } }).day).toBe(5);
    const { finish } = simulated(tasks, { assumptions: assumption }, n);
    expect(Math.abs(count(finish.map((day) => day === 5)) - n / 4)).toBeLessThanOrEqual(1);
  });
});

describe("responses", () => {
  const r = (responses: object[], keys: object = {}) => ({
    risks: [risk("r", 100, { probability: 0.5, responses, ...keys })],
  });
  const costOf = (keys: object) => simulated(tasks, keys, n).cost;

  it("adopted together: probability = the risk's own times each response's (probability / the risk's own)", () => {
    const both = [response("x", { probability: 0.25 }), response("y", { probability: 0.4 })];
    // 0.5 * (0.25 / 0.5) * (0.4 / 0.5) = 0.2.
    const found = count(costOf(r(both)).map((cost) => cost > 50));
    expect(Math.abs(found - 0.2 * n)).toBeLessThanOrEqual(1);
  });

  it("at most 1", () => {
    const raised = [response("x", { probability: 0.9 }), response("y", { probability: 0.9 })];
    expect(count(costOf(r(raised)).map((cost) => cost > 50))).toBe(n);
  });

  it("scales multiply; costs add; what is not adopted does nothing", () => {
    const three = [
      response("x", { scale: 0.5, cost: 3 }),
      response("y", { scale: 0.4, cost: 4 }),
      response("z", { scale: 0, cost: 1000, probability: 0, adopted: false }),
    ];
    expect(new Set(costOf(r(three)).map((cost) => Math.round(cost * 1e6) / 1e6))).toEqual(new Set([7, 27]));
  });

  it("its `cost` is spent whatever the status", () => {
    const one = [response("x", { cost: 7 })];
    for (const keys of [
      { status: "closed" },
      { status: "open", probability: 0 },
      { status: "closed", expires: "2026-01-01" },
    ]) {
      expect(new Set(costOf(r(one, keys)))).toEqual(new Set([7]));
    }
  });

  it("`scale` multiplies delay, wait, (factor - 1) and cost: 0.6 means 60 % of the impact remains", () => {
    const keys = occurred(
      [
        { tasks: "a", factor: 1.5, delay: 5 },
        { tasks: "a", wait: 5, cost: 100 },
      ],
      { responses: response("x", { scale: 0.6 }) },
    );
    // 10 * 1.3 + 3 = 16 working days after a wait of 3: Thursday, day 3, to day 25 (three weekends).
    const [start = 0, finish = 0] = moments({ a: { duration: 10 } }, keys).a ?? [];
    expect([start, finish]).toEqual([expect.closeTo(3, 9), expect.closeTo(25, 9)]);
    expect(written({ a: { duration: 10 } }, keys).cost).toBeCloseTo(60, 9);
  });

  it("a risk occurs when its own uniform draw is below its probability, so a response only removes occurrences", () => {
    const before = hits({ risks: [risk("r", 1)] });
    const after = hits({ risks: [risk("r", 1, { responses: response("x", { probability: 0.2 }) })] });
    after.forEach((hit, k) => {
      if (hit) expect(before[k]).toBe(true);
    });
    expect([count(before) > 510, count(after) < 207]).toEqual([true, true]);
  });
});

describe("a group", () => {
  const group = (responses: object = {}) => ({
    risks: [
      risk("c", 100, { probability: 0.25, group: "g" }),
      risk("a-risk", 1, { probability: 0.3, group: "g", ...responses }),
      risk("b", 10, { probability: 0.4, group: "g" }),
    ],
  });

  it("excludes each other: at most one occurs, each with its own probability", () => {
    const { cost } = simulated(tasks, group(), n);
    expect(new Set(cost)).toEqual(new Set([0, 1, 10, 100]));
    for (const [money, p] of [
      [1, 0.3],
      [10, 0.4],
      [100, 0.25],
      [0, 0.05],
    ] as const) {
      expect(Math.abs(count(cost.map((c) => c === money)) - p * n)).toBeLessThanOrEqual(1);
    }
  });

  it("each slot begins at the sum of the own probabilities ahead of it: a response moves no other slot", () => {
    const before = group();
    const after = group({ responses: response("x", { probability: 0.1 }) });
    for (const money of [10, 100]) expect(hits(after, money)).toEqual(hits(before, money));
    const [was, is] = [hits(before), hits(after)];
    expect(is.every((hit, k) => !hit || was[k] === true)).toBe(true);
    expect(Math.abs(count(is) - 0.1 * n)).toBeLessThanOrEqual(1);
  });

  it("slots stand in id order: the order of the file does not matter", () => {
    const { risks } = group();
    const flipped = { risks: [...risks].reverse() };
    expect(simulated(tasks, flipped, n).cost).toEqual(simulated(tasks, group(), n).cost);
  });

  it("a closed member keeps its slot, so the others keep theirs", () => {
    const closed = group({ status: "closed" });
    for (const money of [10, 100]) expect(hits(closed, money)).toEqual(hits(group(), money));
    expect(count(hits(closed))).toBe(0);
  });

  it("own probabilities sum to at most 1, and responses may not raise one", () => {
    const over = {
      risks: [risk("p", 1, { probability: 0.6, group: "g" }), risk("q", 1, { probability: 0.5, group: "g" })],
    };
    expect(complaints(tasks, over).join()).toMatch(/sum/);
    expect(complaints(tasks, group({ responses: response("x", { probability: 0.31 }) }))).toHaveLength(1);
    const tenths = Array.from({ length: 10 }, (_, k) => risk(`t-${k}`, 1, { probability: 0.1, group: "g" }));
    expect(complaints(tasks, { risks: tenths })).toEqual([]);
  });
});
