/**
 * What responses buy, against plans small enough to write every future down. Differences of two enumerated plans
 * are expected within four standard errors of plain sampling; draws are shared, so they err far less.
 */
import { describe, expect, it } from "vitest";
import {
  mergingRisks,
  planWithRegister,
  type Responses,
  type ResponsesOptions,
  registerOfFour,
  responses,
} from "../../../packages/core/src/index.ts";
import { planFrom, seed } from "../integrated/runPlan.ts";
import { expectMean, expectShare, expectWithin } from "../integrated/tolerances.ts";
import { finishAt } from "./merging.ts";

function responsesOf(document: unknown, options: ResponsesOptions = {}): Responses {
  const result = responses(planFrom(document), { seed, ...options });
  if (result.responses === undefined) throw new Error(JSON.stringify(result.problems));
  return result.responses;
}

// Own data, all 128 combinations enumerated by another program before and after the response.
describe("responses(five tasks and a register)", () => {
  const { document, known } = planWithRegister();
  const { before, after } = known;
  const answer = responsesOf(document);
  const [worth] = answer.responses;

  it("changes finish, chances and mean cost by the difference of the two enumerated plans", () => {
    expect(answer.responses.map(({ id, adopted, cost }) => [id, adopted, cost])).toEqual([
      ["second-source", false, 0],
    ]);
    const { given } = worth ?? {};
    expect(given?.workingDays).toBe(11 - 12);
    expectWithin(given?.finishBy ?? 0, after.finishBy - before.finishBy, 0.01);
    expectWithin(given?.budget ?? 0, after.budget - before.budget, 0.01);
    expectWithin(given?.both ?? 0, after.both - before.both, 0.01);
    // 318.15 to 311.85; the deviation of the change in one future is below 12.
    expectMean(given?.netWorth ?? 0, before.cost.mean - after.cost.mean, 12);
  });

  it("alone is the same, as nothing else is adopted, and no lateness is avoided where it has no price", () => {
    expect(worth?.alone).toEqual(worth?.given);
    expect(Object.keys(worth?.given ?? {}).sort()).toEqual(
      ["both", "budget", "finishBy", "money", "netWorth", "netWorthError", "workingDays"].sort(),
    );
  });

  it("shows the plan as it stands and with nothing adopted as the forecast does", () => {
    expectMean(answer.stands.mean.cost, before.cost.mean, before.cost.sd);
    expectShare(answer.stands.chance.both ?? 0, before.both);
    expect(answer.none).toEqual(answer.stands);
    expect(answer.stands.workingDays).toBe(12);
  });
});

// Own data, 16 states enumerated by another program; remove one risk and run again: GAO-16-89G, best practice 8
// (digest read). Each response here takes its risk away and costs 1.
describe("responses(four fixed-size risks, each with a response that ends it)", () => {
  const { document, known } = registerOfFour();
  const risks = (document.risks as { id: string }[]).map((risk) => ({
    ...risk,
    responses: [{ id: `end-${risk.id}`, action: `End ${risk.id}`, cost: 1, probability: 0 }],
  }));
  const answer = responsesOf({ ...document, risks });

  it("lowers P80 by what removing each risk takes away, less the cost of the response", () => {
    for (const [id, money] of Object.entries(known.p80Without)) {
      const worth = answer.responses.find((one) => one.entry.id === id);
      expect([id, worth?.given.money]).toEqual([id, money + 1 - 21]);
    }
  });

  it("is worth the expected money of its risk less its cost, most worth first", () => {
    for (const [id, money] of Object.entries(known.expected)) {
      const worth = answer.responses.find((one) => one.entry.id === id);
      // The largest single deviation is 12, of the third risk.
      expectMean(worth?.given.netWorth ?? Number.NaN, money - 1, 12);
    }
    const order = answer.responses.map(({ entry }) => entry.id);
    expect(order.slice(0, 2)).toEqual(["r3", "r4"]);
    expect(order.slice(2).sort()).toEqual(["r1", "r2"]);
  });

  it("tells how far its worth may be off: the deviation of one future over the root of their number", () => {
    const plain = responsesOf({ ...document, risks }, { design: "plain" });
    for (const risk of document.risks as { id: string; probability: number; impacts: { cost: number } }[]) {
      const worth = plain.responses.find((one) => one.entry.id === risk.id);
      const { probability: p, impacts } = risk;
      const cost = (Array.isArray(impacts) ? impacts[0] : impacts).cost as number;
      const exact = cost * Math.sqrt((p * (1 - p)) / 10_000);
      // Twenty batches: chi-squared with 19 degrees of freedom, 99.9 % of them between 0.55 and 1.52 of the exact root.
      expect((worth?.given.netWorthError ?? 0) / exact).toBeGreaterThan(0.55);
      expect((worth?.given.netWorthError ?? 0) / exact).toBeLessThan(1.52);
    }
  });

  it("with two thirds of the sum for three of them, the best two by worth are the two worth most", () => {
    const { best } = responsesOf({ ...document, risks }, { sum: 2, objective: "worth" });
    expect(best?.ids).toEqual(["end-r3", "end-r4"]);
    expect(best?.cost).toBe(2);
    expectMean(best?.effect.netWorth ?? Number.NaN, 4 + 3.75 - 2, 13);
    expect(best?.how).toMatchObject({ kind: "every-set", tried: 1 + 4 + 6 });
  });
});

// Own data: two chains that end together, three risks (`merging.ts` writes the eight futures down); remove-one and
// add-one as in GAO-16-89G (digest read). Read at 79 %: at 80 % a step of the distribution lies on the level.
describe("responses(merging chains)", () => {
  const { document } = mergingRisks();
  const costs = { "on-left": 3, "on-right": 4, "on-both": 2 };
  const risks = (document.risks as { id: keyof typeof costs }[]).map((risk) => ({
    ...risk,
    responses: [{ id: `end-${risk.id}`, action: `End ${risk.id}`, cost: costs[risk.id], probability: 0 }],
  }));
  const names = Object.keys(costs) as (keyof typeof costs)[];
  const subsets = Array.from({ length: 8 }, (_, set) => names.filter((_, i) => (set >> i) & 1));

  it.each(names)("ends %s: alone as enumerated at P79", (name) => {
    const answer = responsesOf({ ...document, risks }, { confidence: 0.79 });
    const worth = answer.responses.find((one) => one.entry.id === name);
    const left = names.filter((other) => other !== name);
    expect(worth?.alone.workingDays).toBe(finishAt(left, 0.79) - finishAt(names, 0.79));
  });

  it.each([0, 2, 3, 5, 6, 7, 9])(
    "finds the earliest date that %i in money buys, however they combine",
    (sum) => {
      const affordable = subsets.filter((set) => set.reduce((all, name) => all + costs[name], 0) <= sum);
      const finishes = affordable.map((set) =>
        finishAt(
          names.filter((name) => !set.includes(name)),
          0.79,
        ),
      );
      const { best } = responsesOf({ ...document, risks }, { confidence: 0.79, sum });
      expect(best?.outlook.workingDays).toBe(Math.min(...finishes));
      expect(best?.cost).toBeLessThanOrEqual(sum);
      expect(best?.how.tried).toBe(affordable.length);
    },
  );

  it("sees that the two chains have to be helped together: neither alone moves the date, both do", () => {
    const answer = responsesOf({ ...document, risks }, { confidence: 0.79, sum: 7 });
    const of = (id: string) => answer.responses.find((one) => one.id === id)?.given.workingDays;
    expect([of("end-on-left"), of("end-on-right")]).toEqual([0, 0]);
    expect(answer.best?.ids).toEqual(["end-on-left", "end-on-right"]);
    expect(answer.best?.effect.workingDays).toBe(20 - 25);
  });
});

// HM Treasury Green Book (2018, 2020, 2022), Annex A5, A5.14, Box 22, read: a facility of 50 million, 10 % for 45 and
// 30 % for 55, so 1 million above it on average. As two risks that exclude each other; a response that ends the
// second is worth the 1.5 it costs on average, less its own cost.
describe("responses(Green Book facility)", () => {
  it("is worth what the dearer outcome costs on average", () => {
    const answer = responsesOf({
      format: 1,
      title: "Facility",
      start: "2027-03-01",
      calendar: "every-day",
      tasks: [{ id: "build", name: "Build", duration: 5, cost: 50 }],
      risks: [
        {
          id: "cheap",
          name: "45",
          probability: 0.1,
          group: "cost",
          impacts: [{ tasks: ["build"], cost: -5 }],
        },
        {
          id: "dear",
          name: "55",
          probability: 0.3,
          group: "cost",
          impacts: [{ tasks: ["build"], cost: 5 }],
          responses: [{ id: "fix", action: "Fix the price", cost: 0.4, probability: 0 }],
        },
      ],
    });
    expectMean(answer.stands.mean.cost, 51, 3);
    expectMean(answer.responses[0]?.given.netWorth ?? 0, 0.3 * 5 - 0.4, 2.5);
  });
});

// Our own figures, by hand: one task of 10 days, certain; a risk of 7 days that a response halves in chance; lateness
// costs 700 a week and 50 at once from day 10 on.
describe("responses(lateness priced)", () => {
  const document = {
    format: 1,
    title: "Late",
    start: "2027-03-01",
    calendar: "every-day",
    lateness: { after: "2027-03-10", perWeek: 700, once: 50 },
    tasks: [{ id: "a", name: "A", duration: 10 }],
    risks: [
      {
        id: "rain",
        name: "Rain",
        probability: 0.4,
        impacts: [{ tasks: ["a"], delay: 7 }],
        responses: [{ id: "roof", action: "A roof", cost: 100, probability: 0.2, adopted: true }],
      },
    ],
  };

  it("avoids 0.2 of 750 for 100, whether it is adopted or not", () => {
    for (const adopted of [true, false]) {
      const risks = document.risks.map((risk) => ({
        ...risk,
        responses: risk.responses.map((response) => ({ ...response, adopted })),
      }));
      const [worth] = responsesOf({ ...document, risks }).responses;
      expect(worth?.adopted).toBe(adopted);
      expectMean(worth?.given.latenessAvoided ?? 0, 150, 300);
      expectMean(worth?.given.netWorth ?? 0, 50, 300);
      expect(worth?.given.money).toBe(100);
      expect(worth?.alone).toEqual(worth?.given);
    }
  });

  it("weighs nothing that the call leaves out, nor answers to a risk that it leaves out", () => {
    for (const without of [["roof"], ["rain"]]) {
      const answer = responsesOf(document, { iterations: 64, without });
      expect([without, answer.responses]).toEqual([without, []]);
    }
  });
});
