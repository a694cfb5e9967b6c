import { type Plan, readPlan } from "@leeway/core";

function planOf(text: string): Plan {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems, undefined, 2));
  return plan;
}

/** Everything that leaves rows or sums behind: people, correlations, months, intervals, benefits, lateness. */
export const fullText = `format: 1
title: Boathouse
currency: EUR
start: 2027-03-01
seed: boat
commitment:
  confidence: 0.8
  finishBy: 2027-06-15
  budget: 90000
  funds:
    - { from: 2027-03-01, amount: 30000 }
    - { from: 2027-05-01, amount: 60000 }
lateness: { after: 2027-05-14, perWeek: [500, 800, 2000], once: 1000 }
appraisal: { years: 5, discountRate: 0.04 }
people:
  - { id: ada, name: Ada, rate: 400, capacity: 1 }
  - { id: ben, name: Ben, rate: 300, capacity: 0.5 }
tasks:
  - { id: piles, name: Drive the piles, duration: [8, 10, 18], cost: [9000, 12000, 20000], people: [ada] }
  - { id: frame, name: Raise the frame, after: [piles], duration: [10, 12, 25], people: [ada, { id: ben, share: 0.5 }] }
  - { id: slip, name: Build the slipway, after: [piles], duration: [5, 9, 20], people: [ada], costPerDay: 150 }
  - { id: roof, name: Lay the roof, after: [frame], duration: [4, 6, 12], people: [{ id: ben, share: 0.5 }], chance: 0.9 }
  - { id: open, name: Opening, milestone: true, after: [roof, slip] }
intervals:
  - { id: bare, name: Frame without a roof, from: frame, to: open, atMost: 20 }
correlations:
  - { between: [piles, frame], coefficient: 0.6 }
overheads:
  - { id: hut, name: Site hut, perDay: [40, 60, 90] }
benefits:
  - { id: hire, name: Boat hire, starts: open, amount: [1000, 1800, 2500], per: month }
risks:
  - id: flood
    name: Spring flood
    probability: 0.3
    impacts: [{ tasks: [piles, slip], delay: [2, 5, 15], cost: [500, 2000, 9000] }]
    responses: [{ id: dam, action: Build a dam, cost: 1500, probability: 0.05 }]
`;

export const fullPlan: Plan = planOf(fullText);

/** The same with tasks enough to be worth sharing out. */
export const largeText = fullText.replace(
  "intervals:\n",
  `${Array.from({ length: 60 }, (_, i) => `  - { id: t${i}, name: T ${i}, duration: [2, 3, ${5 + (i % 9)}] }\n`).join("")}intervals:\n`,
);

/** Some iterations, in later blocks only, run past what calendars cover; the plan as written does not. */
export const beyondPlan: Plan = planOf(`format: 1
title: Too long
start: 2027-03-01
seed: late
tasks:
  - { id: first, name: First, duration: 10 }
  - { id: last, name: Last, after: [first], duration: 10 }
risks:
  - { id: never, name: It never ends, probability: 0.0002, impacts: [{ tasks: [first], delay: 40000 }] }
  - { id: either, name: Nor does this, probability: 0.0002, impacts: [{ tasks: [last], delay: 40000 }] }
`);

/** A seeded network of layered tasks with ranges of days and money. */
export function chainedPlan(m: number): Plan {
  let state = 20270301;
  const upTo = (n: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0; // Numerical Recipes, "quick and dirty" generator
    return (state >>> 8) % n;
  };
  const tasks = Array.from({ length: m }, (_, i) => {
    const likely = 2 + upTo(20);
    const after = [...new Set([1, 2].map(() => Math.max(0, i - 1 - upTo(20))))].map((j) => `t${j}`);
    return {
      id: `t${i}`,
      name: `Task ${i}`,
      duration: [likely / 2, likely, likely * 2 + upTo(5)],
      cost: [500, 1000 + 100 * upTo(10), 4000],
      ...(i === 0 ? {} : { after }),
    };
  });
  return planOf(
    JSON.stringify({ format: 1, title: `${m} tasks`, start: "2027-03-01", currency: "EUR", tasks }),
  );
}
