import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRng } from "../../oracle/seededRng.ts";
import { differences } from "./differences.ts";
import { richDocument } from "./richDocument.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * "The order of lists never changes a number" (plan format 1, "Conventions"): every list of a plan is put into
 * another order, lists within lists included, and the forecast has to be the same text, to the bit.
 *
 * Plans are random but exact: from the seeds fast-check prints. Nothing is estimated, so there is no false alarm.
 */
const runs = { seed: 20270201, numRuns: 80, interruptAfterTimeLimit: 20_000 };

/** The same document with every list in another order, save [low, likely, high]. */
function shuffled(value: unknown, rng: () => number): unknown {
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item === "number")) return value;
    return value
      .map((item) => ({ item: shuffled(item, rng), at: rng() }))
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item);
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, shuffled(item, rng)]));
}

/**
 * The forecast; the hash is left out, because it is of the document. A warning points at an impact by its place in
 * the file, as it should, so that place is left out too.
 */
function numbersOf(document: unknown) {
  const { plan, ...rest } = forecastOf(document, { iterations: 40, tornado: true });
  const warnings = rest.warnings.map((text) => text.replace(/:\d+:/, ":n:")).sort();
  return { ...rest, plan: { ...plan, sha256: "" }, warnings };
}

describe("the order of lists in a plan", () => {
  it("never changes a number of the forecast, to the bit", () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.nat(), (planSeed, orderSeed) => {
        const document = richDocument(planSeed);
        if (runOf(document, { iterations: 40 }) === undefined) return;
        compared++;
        expect(differences(numbersOf(shuffled(document, seededRng(orderSeed))), numbersOf(document))).toEqual(
          [],
        );
      }),
      runs,
    );
    expect(compared).toBeGreaterThan(10);
  });

  // Sums of three numbers that binary cannot hold come out differently in different orders: (0.1 + 0.2) + 0.3
  // is not 0.1 + (0.2 + 0.3). So each list whose members are added or multiplied gets a case that shows it.
  const base = { format: 1, title: "Order", start: "2027-02-01" };
  const shares = [0.1, 0.2, 0.3].map((share, k) => ({ id: `p-${k}`, share }));
  const people = shares.map(({ id }) => ({ id, name: id, rate: 333.3 }));
  const lists: [string, (order: (items: object[]) => object[]) => object][] = [
    [
      "people of a task with effort",
      (order) => ({ people, tasks: { id: "a", name: "A", effort: [1, 2, 7], people: order(shares) } }),
    ],
    [
      "scales and probabilities of adopted responses",
      (order) => ({
        tasks: { id: "a", name: "A", duration: 5 },
        risks: {
          id: "r",
          name: "R",
          probability: 0.9,
          impacts: { tasks: "a", delay: [1, 2, 5], cost: [10, 20, 70] },
          responses: order([
            { id: "x", action: "X", adopted: true, scale: 0.1, probability: 0.7, cost: 0.1 },
            { id: "y", action: "Y", adopted: true, scale: 0.2, probability: 0.8, cost: 0.2 },
            { id: "z", action: "Z", adopted: true, scale: 0.3, probability: 0.85, cost: 0.3 },
          ]),
        },
      }),
    ],
    [
      "impacts of a risk on one task",
      (order) => ({
        tasks: { id: "a", name: "A", duration: [3, 4, 9], costPerDay: 0.7 },
        risks: {
          id: "r",
          name: "R",
          probability: 0.9,
          impacts: order([
            { tasks: "a", delay: 0.1, factor: 1.1, cost: 0.1 },
            { tasks: "a", delay: 0.2, factor: 0.7, cost: 0.2 },
            { tasks: "a", delay: [0.1, 0.3, 0.4], factor: 1.3, cost: 0.3 },
          ]),
        },
      }),
    ],
    [
      "overlapping absences of a person",
      (order) => ({
        people: {
          id: "p",
          name: "P",
          away: order([0.1, 0.2, 0.3].map((share) => ({ from: "2027-02-02", to: "2027-02-04", share }))),
        },
        tasks: { id: "a", name: "A", duration: [3, 4, 9], people: { id: "p", share: 0.4 } },
      }),
    ],
    [
      "probabilities of a group",
      (order) => ({
        tasks: { id: "a", name: "A", duration: 5 },
        risks: order(
          [0.1, 0.2, 0.3].map((probability, k) => ({
            id: `r-${k}`,
            name: "R",
            group: "g",
            probability,
            impacts: { tasks: "a", cost: [1, 2, 9] },
          })),
        ),
      }),
    ],
    [
      "costs of tasks and overheads",
      (order) => ({
        tasks: order(
          [0.1, 0.2, 0.3].map((cost, k) => ({ id: `t-${k}`, name: "T", duration: [1, 2, 4], cost })),
        ),
        overheads: order([0.1, 0.2, 0.3].map((perDay, k) => ({ id: `o-${k}`, name: "O", perDay }))),
      }),
    ],
  ];
  it.each(lists)("does not matter to the last bit: %s", (_, documentIn) => {
    const orders = [
      (items: object[]) => items,
      (items: object[]) => [...items].reverse(),
      (items: object[]) => [...items.slice(1), ...items.slice(0, 1)],
      (items: object[]) => [...items.slice(2), ...items.slice(0, 2)],
    ];
    const [written, ...others] = orders.map((order) => numbersOf({ ...base, ...documentIn(order) }));
    for (const other of others) expect(differences(other, written)).toEqual([]);
  });

  it("lists tasks in id order whatever the order of the file", () => {
    const tasks = ["m", "b", "z", "a1", "a-b"].map((id) => ({ id, name: id, duration: 1 }));
    expect(forecastOf({ ...base, tasks }, { iterations: 1 }).tasks.map((task) => task.id)).toEqual([
      "a-b",
      "a1",
      "b",
      "m",
      "z",
    ]);
  });

  it("leaves the hash alone where the members of the list have ids, at every depth", () => {
    const of = (order: <T>(items: T[]) => T[]) =>
      forecastOf(
        {
          ...base,
          people: order(people),
          tasks: order([
            { id: "a", name: "A", effort: 3, people: order(shares) },
            { id: "b", name: "B", duration: 3, after: "a" },
          ]),
        },
        { iterations: 1 },
      ).plan.sha256;
    expect(of((items) => [...items].reverse())).toBe(of((items) => items));
    expect(of((items) => items)).toMatch(/^[0-9a-f]{64}$/);
  });
});
