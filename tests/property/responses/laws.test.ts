/** Laws of responses and reach that need no outside figure; random plans from printed seeds. */
import { type Objective, type Plan, planFromData, reach, responses } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mostAtOnce } from "../../../packages/core/src/explain/responses/mostAtOnce.ts";
import { runSets } from "../../../packages/core/src/explain/responses/runSets.ts";
import { scenariosOf } from "../../../packages/core/src/explain/responses/scenarios.ts";
import { responseSwitches } from "../../../packages/core/src/explain/responses/switches.ts";
import { seededRng } from "../../oracle/seededRng.ts";
import { decidedPlan } from "./decidedPlan.ts";

const seeds = Array.from({ length: 40 }, (_, k) => 2000 + k);
const iterations = 400;
const plans = seeds.map((seed) => decidedPlan(seed)).filter((plan) => plan !== undefined);

/** The plan with no response adopted. */
function nothingAdopted(plan: Plan): Plan {
  const change = <T extends Plan["risks"][number] | Plan["assumptions"][number]>(entry: T): T => ({
    ...entry,
    responses: entry.responses.map((response) => ({ ...response, adopted: false })),
  });
  return { ...plan, risks: plan.risks.map(change), assumptions: plan.assumptions.map(change) };
}

describe("adopting a response", () => {
  it("never adds an occurrence: with each risk costing 1, no future gets dearer", () => {
    const rng = seededRng(3);
    for (let round = 0; round < 30; round++) {
      const risks = Array.from({ length: 5 }, (_, k) => {
        const probability = Math.round(100 * rng()) / 100;
        const after = Math.round(100 * probability * rng()) / 100;
        const group = round % 2 === 1 && k < 3 ? { group: "g" } : {};
        const own = round % 2 === 1 && k < 3 ? probability / 3 : probability;
        return {
          id: `r${k}`,
          name: `R${k}`,
          probability: own,
          ...group,
          impacts: { tasks: "a", cost: 1 },
          responses: [{ id: `x${k}`, action: "X", probability: Math.min(own, after) }],
        };
      });
      const document = {
        format: 1,
        title: "T",
        start: "2027-03-01",
        tasks: { id: "a", name: "A", duration: 1 },
        risks,
      };
      const { plan, problems } = planFromData(document);
      if (plan === undefined) throw new Error(JSON.stringify(problems));
      const scenarios = scenariosOf(plan, responseSwitches(plan).list);
      const draw = { seed: `${round}`, design: "latin-hypercube" as const, iterations };
      const sets = Array.from({ length: 32 }, (_, set) => BigInt(set));
      const costs = runSets(scenarios, draw, sets, ({ cost }) => cost.slice());
      for (const small of sets) {
        for (const large of sets) {
          if ((small & large) !== small) continue;
          const [few, many] = [costs[Number(small)] as Float64Array, costs[Number(large)] as Float64Array];
          expect(many.findIndex((cost, k) => cost > (few[k] as number))).toBe(-1);
        }
      }
    }
  });
});

describe("responses(plan)", () => {
  it("says the same alone and given the others when nothing is adopted", () => {
    let compared = 0;
    for (const plan of plans) {
      const answer = responses(nothingAdopted(plan), { iterations }).responses;
      for (const { alone, given, adopted } of answer?.responses ?? []) {
        expect(adopted).toBe(false);
        expect(alone).toEqual(given);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(40);
  });

  it("does not depend on the order of the register", () => {
    for (const plan of plans.slice(0, 12)) {
      const turned = {
        ...plan,
        risks: plan.risks.map((risk) => ({ ...risk, responses: [...risk.responses].reverse() })).reverse(),
        assumptions: [...plan.assumptions].reverse(),
      };
      const text = (of: Plan) => JSON.stringify(responses(of, { iterations, sum: 120 }));
      expect(text(turned)).toBe(text(plan));
    }
  });
});

const figure: Record<Objective, (best: NonNullable<ReturnType<typeof bestOf>>) => number> = {
  date: ({ outlook }) => -outlook.day,
  chance: ({ outlook }) => outlook.chance.finishBy ?? 0,
  worth: ({ effect }) => effect.netWorth,
};

function bestOf(plan: Plan, sum: number, objective: Objective) {
  return responses(plan, { iterations, sum, objective }).responses?.best;
}

/** Two chains of three tasks that end together, a risk and a response on each: sums matter here. */
function riskyPlan(seed: number): Plan {
  const rng = seededRng(seed);
  const whole = (low: number, high: number) => low + Math.floor((high - low + 1) * rng());
  const { plan, problems } = planFromData({
    format: 1,
    title: "Risky",
    start: "2027-03-01",
    commitment: { finishBy: "2027-04-20", budget: 300, confidence: 0.75 },
    lateness: { perWeek: 20 },
    tasks: Array.from({ length: 6 }, (_, k) => ({
      id: `t${k}`,
      name: `T${k}`,
      duration: [4, 6, 12],
      cost: 30,
      ...(k % 3 === 0 ? {} : { after: `t${k - 1}` }),
    })),
    risks: Array.from({ length: 6 }, (_, k) => ({
      id: `r${k}`,
      name: `R${k}`,
      probability: whole(3, 7) / 10,
      impacts: { tasks: `t${k}`, delay: [3, whole(4, 10), 20], cost: whole(0, 60) },
      responses: [{ id: `x${k}`, action: "X", cost: whole(5, 40), probability: whole(0, 2) / 10 }],
    })),
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}
const risky = Array.from({ length: 9 }, (_, k) => riskyPlan(k));

describe("the best set under a sum", () => {
  it.each(["date", "chance", "worth"] as const)(
    "for %s costs no more than the sum and is never worse with more to spend",
    (objective) => {
      let better = 0;
      for (const plan of [...risky, ...plans.slice(0, 10).map(nothingAdopted)]) {
        let before = Number.NEGATIVE_INFINITY;
        for (const sum of [0, 20, 60, 100, 1e6]) {
          const best = bestOf(plan, sum, objective);
          if (best === undefined) continue;
          expect(best.cost).toBeLessThanOrEqual(sum + 1e-6);
          expect(figure[objective](best)).toBeGreaterThanOrEqual(before - 1e-9);
          if (figure[objective](best) > before && before > Number.NEGATIVE_INFINITY) better++;
          before = figure[objective](best);
        }
      }
      expect(better).toBeGreaterThan(8);
    },
  );

  it("is never worse than any single response it can pay for", () => {
    for (const plan of [...risky, ...plans.slice(0, 10).map(nothingAdopted)]) {
      const answer = responses(plan, { iterations, sum: 60 }).responses;
      if (answer?.best === undefined) continue;
      const { best } = answer;
      for (const { cost, given } of answer.responses) {
        if (cost > 60) continue;
        expect(best.effect.workingDays).toBeLessThanOrEqual(given.workingDays + 1e-9);
      }
    }
  });
});

/**
 * A chain of tasks, each with a certain risk of so many days that a response takes away: sets and chances can be
 * reckoned by hand, and there are too many sets to try them all.
 */
function chain(days: readonly number[], costs: readonly number[]): Plan {
  const { plan, problems } = planFromData({
    format: 1,
    title: "Chain",
    start: "2027-03-01",
    calendar: "every-day",
    tasks: days.map((_, k) => ({
      id: `t${k}`,
      name: `T${k}`,
      duration: 10,
      ...(k === 0 ? {} : { after: `t${k - 1}` }),
    })),
    risks: days.map((delay, k) => ({
      id: `r${k}`,
      name: `R${k}`,
      probability: 1,
      impacts: { tasks: `t${k}`, delay },
      responses: [{ id: `x${k}`, action: `X${k}`, cost: costs[k] ?? 1, probability: 0 }],
    })),
  });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

/** Two chains that end together; on each seven certain risks of a day, each with a response of price 1. */
function twoChains(): Plan {
  const side = (name: string) =>
    Array.from({ length: 7 }, (_, k) => ({
      id: `${name}${k}`,
      name: `${name}${k}`,
      probability: 1,
      impacts: { tasks: name, delay: 1 },
      responses: [{ id: `x-${name}${k}`, action: "X", cost: 1, probability: 0 }],
    }));
  const { plan } = planFromData({
    format: 1,
    title: "Two chains",
    start: "2027-03-01",
    calendar: "every-day",
    tasks: [
      { id: "left", name: "L", duration: 10 },
      { id: "right", name: "R", duration: 10 },
    ],
    risks: [...side("left"), ...side("right")],
  });
  if (plan === undefined) throw new Error("no plan");
  return plan;
}

describe("with more responses than can be tried in every combination", () => {
  const days = [3, 9, 1, 7, 5, 2, 8, 4, 6, 3, 2, 1, 5, 7, 4]; // 15 of them: 32,768 sets

  it("the best set for five of equal price is the five of most days", () => {
    const best = bestOf(chain(days, []), 5, "date");
    expect(best?.how.kind).toBe("greedy-exchange");
    expect(best?.ids).toEqual(["x1", "x13", "x3", "x6", "x8"]);
    expect(best?.effect.workingDays).toBe(-(9 + 8 + 7 + 7 + 6));
  });

  it("finds what only helps together: one day on each of two chains that end together, and again", () => {
    const best = bestOf(twoChains(), 6, "date");
    expect(best?.how.kind).toBe("greedy-exchange");
    expect(best?.effect.workingDays).toBe(-3);
    expect(best?.ids.filter((id) => id.startsWith("x-left"))).toHaveLength(3);
  });

  it("is never worse than a single response, whatever the prices", () => {
    const rng = seededRng(11);
    for (let round = 0; round < 5; round++) {
      const costs = days.map(() => 1 + Math.floor(20 * rng()));
      for (const sum of [4, 12, 30]) {
        const best = bestOf(chain(days, costs), sum, "date");
        const single = Math.max(0, ...days.filter((_, k) => (costs[k] as number) <= sum));
        expect(-(best?.effect.workingDays ?? 0)).toBeGreaterThanOrEqual(single);
        expect(best?.cost).toBeLessThanOrEqual(sum);
      }
    }
  });

  it("reach takes the least of equal price that makes the day, and the same every time", () => {
    const plan = chain(days, []);
    // 150 days of work and 67 of risks; 24 of them have to go: 9, 8 and 7.
    const finishBy = new Date(Date.UTC(2027, 2, 1) + (150 + 67 - 24 - 1) * 86_400_000)
      .toISOString()
      .slice(0, 10);
    const found = reach(plan, { iterations, finishBy }).reach;
    expect(found?.how.kind).toBe("greedy-exchange");
    expect(found?.ways[0]?.cost).toBe(3);
    expect(found?.ways[0]?.chance).toBe(1);
    expect(reach(plan, { iterations, finishBy }).reach).toEqual(found);
  });

  it("reach drops scope only where money does not do it, and says when nothing does", () => {
    const plan = chain(days, []);
    const by = (end: number) =>
      new Date(Date.UTC(2027, 2, 1) + (end - 1) * 86_400_000).toISOString().slice(0, 10);
    const optional: Plan = {
      ...plan,
      purpose: { ...plan.purpose, scopeIn: [{ id: "last", name: "Last", optional: true }] },
      tasks: plan.tasks.map((task) => (task.id === "t14" ? { ...task, scope: "last" } : task)),
    };
    const kinds = (finishBy: string) =>
      reach(optional, { iterations, finishBy }).reach?.ways.map(
        ({ steps }) => steps.filter(({ kind }) => kind === "scope").length,
      );
    expect(kinds(by(150))?.[0]).toBe(0);
    expect(kinds(by(140))).toEqual([1]);
    const nothing = reach(optional, { iterations, finishBy: by(139) }).reach;
    expect(nothing?.answer).toBe("nothing");
    expect(nothing?.best?.chance).toBe(0);
  });
});

// Against all subsets of small random orders: the weighted form of Dilworth's theorem (1950), recalled.
describe("mostAtOnce(weights, before)", () => {
  it("is the heaviest set of items no two of which are ordered", () => {
    const rng = seededRng(17);
    for (let round = 0; round < 300; round++) {
      const m = 1 + Math.floor(8 * rng());
      const weights = Array.from({ length: m }, () => Math.round(1 + 9 * rng()) / 10);
      const edges = Array.from({ length: m }, (_, i) =>
        Array.from({ length: m }, (_, j) => i < j && rng() < 0.3),
      );
      for (let k = 0; k < m; k++) {
        for (let i = 0; i < m; i++) {
          for (let j = 0; j < m; j++) {
            if (edges[i]?.[k] && edges[k]?.[j]) (edges[i] as boolean[])[j] = true;
          }
        }
      }
      let most = 0;
      for (let set = 0; set < 1 << m; set++) {
        const members = weights.map((_, i) => i).filter((i) => (set >> i) & 1);
        if (members.some((i) => members.some((j) => edges[i]?.[j]))) continue;
        most = Math.max(
          most,
          members.reduce((sum, i) => sum + (weights[i] as number), 0),
        );
      }
      expect(mostAtOnce(weights, (i, j) => edges[i]?.[j] === true)).toBeCloseTo(most, 9);
    }
  });
});

describe("hostile options", () => {
  const [plan] = plans as [Plan];
  const asking: Plan = { ...plan, commitment: { confidence: 0.8, funds: [] } };

  it.each([
    ["--confidence", { confidence: 1 }],
    ["--confidence", { confidence: Number.NaN }],
    ["--iterations", { iterations: 0 }],
    ["--iterations", { iterations: 1.5 }],
    ["--iterations", { iterations: Number.POSITIVE_INFINITY }],
    ["--sum", { sum: -1 }],
    ["--sum", { sum: Number.NaN }],
    ["--sum", { sum: Number.POSITIVE_INFINITY }],
    ["--aim", { objective: "everything" as Objective }],
  ])("responses refuses %s in %o, naming it", (path, options) => {
    const { responses: answer, problems } = responses(plan, options);
    expect(answer).toBeUndefined();
    expect(problems.map((problem) => [problem.path, problem.severity])).toEqual([[path, "error"]]);
  });

  it("refuses the chance of a date nobody asks for, and lists every problem at once", () => {
    expect(responses(asking, { sum: 1, objective: "chance" }).problems.map(({ path }) => path)).toEqual([
      "--aim",
    ]);
    const many = { confidence: 2, iterations: -3, sum: -1 };
    expect(responses(plan, many).problems.map(({ path }) => path)).toEqual([
      "--confidence",
      "--iterations",
      "--sum",
    ]);
  });

  it.each(["2027-02-30", "2027-13-01", "soon", "", "27-01-01", "1066-10-14"])(
    "reach refuses the date %j",
    (finishBy) => {
      const { reach: answer, problems } = reach(plan, { finishBy });
      expect(answer).toBeUndefined();
      expect(problems.map(({ path }) => path)).toEqual(["--by"]);
    },
  );

  it("reach asks back where neither the plan nor the caller asks for anything", () => {
    expect(reach(asking).problems.map(({ code, path }) => [code, path])).toEqual([
      ["nothing-asked", "commitment"],
    ]);
  });

  it("a date before the plan's start and a sum below nought are answered: nothing does", () => {
    const early = reach(plan, { iterations, finishBy: "1999-12-31" }).reach;
    expect([early?.answer, early?.chance]).toEqual(["nothing", 0]);
    expect(reach(plan, { iterations, sum: -1e15 }).reach?.answer).toBe("nothing");
  });

  it("one iteration, and a plan without anything to decide, have an answer", () => {
    const bare: Plan = {
      ...plan,
      risks: [],
      assumptions: [],
      people: [],
      purpose: { ...plan.purpose, scopeIn: [] },
    };
    const alone: Plan = { ...bare, tasks: bare.tasks.map((task) => ({ ...task, people: [], after: [] })) };
    const only = alone.tasks
      .filter(({ effort, onlyIf }) => effort === undefined && onlyIf === undefined)
      .slice(0, 1);
    const least = { ...alone, tasks: only, overheads: [], intervals: [], correlations: [], benefits: [] };
    expect(responses(least, { iterations: 1, sum: 5 }).responses).toMatchObject({
      responses: [],
      best: { ids: [], cost: 0 },
    });
    expect(reach(least, { iterations: 1, finishBy: "1999-12-31" }).reach).toMatchObject({
      answer: "nothing",
      options: { responses: 0, scope: 0, capacity: 0 },
      best: { steps: [] },
    });
  });
});
