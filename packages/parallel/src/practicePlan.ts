import type { Estimate, Plan, Task } from "@leeway/core";

const days = (low: number, likely: number, high: number): Estimate => ({
  kind: "range",
  shape: "pert",
  bounds: "extremes",
  unit: "days",
  low,
  likely,
  high,
});

const nobody = { responsible: [], accountable: [], consulted: [], informed: [] };

function task(i: number): Task {
  return {
    id: `t${i}`,
    name: `Task ${i}`,
    duration: days(2, 4 + (i % 5), 12),
    milestone: false,
    after: [i - 1, i - 7]
      .filter((j) => j >= 0)
      .map((j) => ({
        task: `t${j}`,
        link: "finish-to-start",
        lag: { kind: "fixed", value: 0, unit: "days" },
      })),
    holdToPlan: false,
    calendar: "weekdays",
    people: [],
    cost: days(100, 200, 900),
    due: "evenly",
    costPerDay: { kind: "fixed", value: 10, unit: "days" },
    priority: 0,
    chance: 1,
    ...nobody,
    estimatedBy: [],
  };
}

/** A plan that nobody made, for threads to practise on while theirs is read. */
export const practicePlan: Plan = {
  format: 1,
  title: "Practice",
  currency: "EUR",
  start: "2027-03-01",
  seed: "practice",
  iterations: 4096,
  commitment: { confidence: 0.8, funds: [] },
  calendars: new Map([
    ["weekdays", { name: "weekdays", workdays: ["mon", "tue", "wed", "thu", "fri"], holidays: [] }],
  ]),
  calendar: "weekdays",
  people: [],
  respectCapacity: false,
  purpose: { goals: [], scopeIn: [], scopeOut: [], constraints: [] },
  stakeholders: [],
  phases: [],
  tasks: Array.from({ length: 60 }, (_, i) => task(i)),
  intervals: [],
  assumptions: [],
  risks: [
    {
      kind: "risk",
      id: "r",
      name: "Risk",
      probability: 0.3,
      impacts: [{ tasks: ["t3", "t20", "t41"], delay: days(1, 2, 6), cost: days(1, 2, 3) }],
      responses: [],
      status: "open",
    },
  ],
  correlations: [],
  overheads: [],
  benefits: [],
  approvals: [],
  objections: [],
  changes: [],
  sha256: "",
  approvalSha256: "",
};
