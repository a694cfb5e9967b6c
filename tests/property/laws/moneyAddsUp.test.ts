import { describe, expect, it } from "vitest";
import { randomPlanDocument } from "../../oracle/randomPlan.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { forecastOf, runOf } from "./runPlan.ts";

/**
 * "Total = tasks ... + risk costs + adopted responses' costs + overheads" (plan format 1, "Money"): money moves
 * nothing, so the total of a plan is, in every iteration, the sum of the totals of the plans that have only one
 * kind of money. Random plans from printed seeds, equal up to rounding; no false alarm.
 */
const kinds = ["tasks", "register", "responses", "overheads"] as const;
type Kind = (typeof kinds)[number];

/** The document with every sum of money but those of one kind set to zero. */
function only(kind: Kind, document: object): unknown {
  const money: Record<Kind, string[]> = {
    tasks: ["cost", "costPerDay", "spent", "rate"],
    register: ["cost"],
    responses: ["cost"],
    overheads: ["perDay"],
  };
  const change = (value: unknown, where: Kind | undefined): unknown => {
    if (Array.isArray(value)) return value.map((item) => change(item, where));
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => {
        if (where !== undefined && where !== kind && money[where].includes(key)) return [key, 0];
        if (key === "tasks" && typeof item === "object") return [key, change(item, where ?? "tasks")];
        if (key === "people" && where === undefined) return [key, change(item, "tasks")];
        if (key === "impacts") return [key, change(item, "register")];
        if (key === "responses") return [key, change(item, "responses")];
        if (key === "overheads") return [key, change(item, "overheads")];
        return [key, change(item, where)];
      }),
    );
  };
  return change(document, undefined);
}

describe("money", () => {
  it("adds up in every iteration: tasks, register, responses and overheads apart make the total", () => {
    const seen = new Set<Kind>();
    const apart: string[] = [];
    let compared = 0;
    for (let seed = 800; seed < 850; seed++) {
      const document = randomPlanDocument(seededRng(seed), { tasks: [3, 9] });
      const options = { iterations: 200 };
      const whole = runOf(document, options);
      if (whole === undefined) continue;
      const parts = kinds.map((kind) => {
        const cost = runOf(only(kind, document), options)?.trials.cost;
        if (cost?.some((sum) => sum !== 0)) seen.add(kind);
        return cost;
      });
      compared++;
      whole.trials.cost.forEach((total, k) => {
        const sum = parts.reduce((all, part) => all + (part?.[k] ?? Number.NaN), 0);
        if (!(Math.abs(sum - total) <= 1e-9 * Math.max(1, Math.abs(total)))) {
          apart.push(`seed ${seed} #${k}: ${total}, parts ${sum}`);
        }
      });
    }
    expect(apart.slice(0, 6)).toEqual([]);
    expect(compared).toBeGreaterThan(40);
    expect([...seen].sort()).toEqual([...kinds].sort());
  });

  it("of all drivers adds up to the mean total less the plan as written", () => {
    const apart: string[] = [];
    let compared = 0;
    for (let seed = 850; seed < 910; seed++) {
      const document = randomPlanDocument(seededRng(seed), { tasks: [3, 9] });
      if (runOf(document, { iterations: 1 }) === undefined) continue;
      const { drivers, cost, asWritten } = forecastOf(document, { iterations: 500 });
      compared++;
      const sum = drivers.reduce((all, driver) => all + driver.money, 0);
      const expected = cost.mean - asWritten.cost;
      // Drivers below 1e-6 are left out, and there are fewer than twenty of them.
      if (!(Math.abs(sum - expected) <= 2e-5 + 1e-9 * Math.abs(cost.mean))) {
        apart.push(`seed ${seed}: ${sum}, mean less as written ${expected}`);
      }
    }
    expect(apart).toEqual([]);
    expect(compared).toBeGreaterThan(50);
  });

  it("of the tasks of the forecast adds up to the mean total where only tasks cost money", () => {
    const forecast = forecastOf(
      {
        format: 1,
        title: "Sum",
        start: "2027-02-01",
        tasks: [
          { id: "a", name: "A", duration: [2, 3, 9], cost: [10, 30, 90] },
          { id: "b", name: "B", duration: 4, after: "a", costPerDay: [1, 4, 8] },
        ],
      },
      { iterations: 500 },
    );
    const tasks = forecast.tasks.reduce((sum, task) => sum + task.cost.mean, 0);
    expect(Math.abs(tasks - forecast.cost.mean)).toBeLessThan(1e-9 * forecast.cost.mean);
  });
});
