// A replayed future is one of the run's own, to the bit: the other side of each check is `simulate` with the same draws,
// or the words of the plan format about sums. No source outside.
import { compile, future, planFromData, simulate } from "@leeway/core";
import { expect, it } from "vitest";
import { richDocument } from "../laws/richDocument.ts";

const families = [
  ["everything at once", {}],
  ["limited people", { progress: false, capacity: true }],
] as const;

it.each(families)("equals the run's iteration to the bit: %s", (_, options) => {
  const wrong: unknown[] = [];
  let compared = 0;
  for (let seed = 1; seed <= 16; seed++) {
    const { plan } = planFromData(richDocument(seed, options));
    if (plan === undefined) throw new Error(`seed ${seed} is no plan`);
    const model = compile(plan);
    // Two blocks, the second one short.
    const iterations = 1024 + 100;
    const { trials } = simulate(model, { iterations });
    if (trials === undefined) continue;
    for (const iteration of [1, 1024, 1025]) {
      const told = future(plan, { iteration }, { iterations }).future;
      if (told === undefined) throw new Error(`seed ${seed}: no future ${iteration}`);
      const k = iteration - 1;
      compared++;
      const check = (what: string, ours: unknown, theirs: unknown) => {
        if (!Object.is(ours, theirs)) wrong.push([seed, iteration, what, ours, theirs]);
      };
      check("finish", told.finish.day, trials.finish[k]);
      check("cost", told.cost.total, trials.cost[k]);
      // The lines add up to the total in their order, to the bit.
      let sum = 0;
      for (const { money } of told.cost.lines) sum += money;
      check("lines", sum, told.cost.total);
      check("lateness", told.lateness, trials.lateness?.[k]);
      model.tasks.forEach((task, j) => {
        const row = told.tasks.find(({ id }) => id === task.id);
        check(`${task.id} start`, row?.start, trials.starts[j]?.[k]);
        check(`${task.id} finish`, row?.finish, trials.finishes[j]?.[k]);
      });
      const notLater = trials.finish.filter((day) => day <= (trials.finish[k] as number)).length;
      check("level", told.finish.level, notLater / iterations);
    }
  }
  expect(wrong.slice(0, 5)).toEqual([]);
  expect(compared).toBeGreaterThan(28);
});

it("finds, for a level, the first future that ends where that share of them has", () => {
  for (let seed = 1; seed <= 10; seed++) {
    const { plan } = planFromData(richDocument(seed));
    if (plan === undefined) throw new Error(`seed ${seed} is no plan`);
    const { trials } = simulate(compile(plan), { iterations: 1000 });
    if (trials === undefined) continue;
    for (const at of [0.1, 0.5, 0.8]) {
      const told = future(plan, { at }, { iterations: 1000 }).future;
      const value = [...trials.finish].sort((a, b) => a - b)[Math.ceil(at * 1000 - 1e-9) - 1] as number;
      expect(told?.finish.day).toBe(value);
      expect(told?.iteration).toBe(trials.finish.indexOf(value) + 1);
      expect(told?.finish.level).toBeGreaterThanOrEqual(at);
    }
  }
});

it("gives each draw the level it has among the run's draws of that estimate", () => {
  // The share of a run's draws at or below a value estimates its level: Kolmogorov's distance of 2,000 plain draws
  // exceeds 2.2/sqrt(2000) = 0.049 once in 8,000 samples (Smirnov 1948; recalled).
  const document = {
    format: 1,
    title: "Levels",
    start: "2027-02-01",
    tasks: [
      { id: "a", name: "A", duration: [3, 5, 11] },
      { id: "b", name: "B", duration: { low: 2, high: 9, shape: "lognormal", bounds: "p10-p90" } },
      {
        id: "c",
        name: "C",
        duration: {
          outcomes: [
            { value: 1, chance: 0.25 },
            { value: 4, chance: 0.75 },
          ],
        },
      },
    ],
  };
  const { plan } = planFromData(document);
  if (plan === undefined) throw new Error("no plan");
  const n = 2000;
  const { trials } = simulate(compile(plan), { iterations: n, design: "plain" });
  const lengths = ["a", "b", "c"].map((_, j) =>
    [...(trials?.finishes[j] ?? [])].map((_, k) => {
      // Starts on day 0: what the task takes is its finish in working days, 5 a week.
      const day = trials?.finishes[j]?.[k] as number;
      return day - 2 * Math.floor((day - 1e-9) / 7);
    }),
  );
  for (const iteration of [1, 7, 300, 1500]) {
    const told = future(plan, { iteration }, { iterations: n, design: "plain" }).future;
    told?.draws.forEach(({ value, level }, j) => {
      const below = (lengths[j] ?? []).filter((each) => each <= value + 1e-6).length / n;
      expect(Math.abs(below - level)).toBeLessThan(0.049);
    });
    expect(told?.draws).toHaveLength(3);
  }
});

it("refuses a future that is none, and a level that is none", () => {
  const { plan } = planFromData(richDocument(1));
  if (plan === undefined) throw new Error("no plan");
  for (const iteration of [0, -1, 1.5, 1001, Number.NaN]) {
    const { future: none, problems } = future(plan, { iteration }, { iterations: 1000 });
    expect(none).toBe(undefined);
    expect(problems[0]?.rule).toContain("1000 futures");
  }
  for (const at of [0, 1, 2, Number.NaN]) {
    expect(future(plan, { at }, { iterations: 1000 }).problems[0]?.path).toBe("at");
  }
});
