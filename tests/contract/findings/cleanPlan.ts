import { type Finding, forecast, type Plan, planFindings, planFromData } from "@leeway/core";

export const TODAY = "2027-01-15";

const work = (id: string, after: string | string[], more: Edits = {}) => ({
  id,
  name: `${id[0]?.toUpperCase()}${id.slice(1)} the shed`,
  scope: "shed",
  duration: [3, 4, 8],
  after,
  people: "lena",
  accountable: "omar",
  estimatedBy: "lena",
  basis: "Three sheds built last year.",
  ...more,
});

/** A plan of which nothing is to be said: what each case changes. All of it invented. */
export function cleanPlan() {
  return {
    format: 1,
    title: "A shed",
    start: "2027-02-01",
    commitment: {
      finishOf: "handed-over",
      confidence: 0.8,
      finishBy: "2027-06-30",
      budget: 60000,
      reserve: 5000,
      holder: "omar",
      funds: [{ from: "2027-02-01", amount: 60000 }],
    },
    purpose: {
      problem: "Tools rust in the rain.",
      goals: [
        {
          id: "dry-tools",
          statement: "No tool rusts",
          measure: "tools replaced a year",
          target: "none",
          by: "2028-06-30",
          owner: "omar",
        },
      ],
      scope: { in: [{ id: "shed", name: "The shed" }], out: ["The path to it"] },
      constraints: ["No work on Sundays."],
    },
    benefits: [
      {
        id: "tools-saved",
        name: "Tools last",
        goal: "dry-tools",
        owner: "omar",
        baseline: "Twelve tools replaced in 2026",
        amount: [900, 1200, 1300],
        per: "year",
        starts: "handed-over",
      },
    ],
    appraisal: { years: 10, discountRate: 0.03 },
    approvals: [{ who: "chair", decision: "pending" }],
    stakeholders: [{ id: "chair", name: "The chair", approvesUpTo: 70000 }],
    people: [
      { id: "lena", name: "Lena", rate: 300 },
      { id: "omar", name: "Omar", rate: 320 },
    ],
    assumptions: [
      {
        id: "dry-ground",
        statement: "The ground bears the slab",
        owner: "lena",
        reviewBy: "2027-02-10",
        signpost: "Water stands in the test pit.",
        chanceWrong: 0.1,
        impacts: { tasks: "pour", delay: [2, 3, 6] },
      },
    ],
    risks: [
      {
        id: "frost",
        name: "A week of frost",
        cause: "A cold spring",
        owner: "omar",
        probability: 0.2,
        expires: "2027-04-30",
        impacts: { tasks: "pour", delay: [4, 5, 7] },
        responses: [
          {
            id: "blankets",
            action: "Buy blankets",
            owner: "omar",
            due: "2027-02-05",
            cost: 200,
            adopted: true,
            scale: 0.3,
          },
        ],
      },
    ],
    tasks: [
      { id: "approved", name: "Approved", milestone: true },
      work("draw", "approved"),
      work("order", "draw", { people: "omar", estimatedBy: "omar" }),
      work("dig", "draw"),
      work("pour", "dig"),
      work("frame", ["pour", "order"]),
      work("roof", "frame", { people: "omar", estimatedBy: "omar" }),
      work("wire", "frame"),
      work("paint", ["roof", "wire"]),
      { id: "handed-over", name: "Handed over", milestone: true, after: "paint" },
    ],
  };
}

/** `tasks.dig.basis` to a value; `undefined` takes it out; `tasks.+` adds an item. */
export type Edits = { [path: string]: unknown };

/** The clean plan with these edits, list items named by `id`, or counted. */
export function edited(edits: Edits): unknown {
  const plan: unknown = structuredClone(cleanPlan());
  for (const [path, value] of Object.entries(edits)) {
    const keys = path.split(".");
    const last = keys.pop() ?? "";
    let at: unknown = plan;
    for (const key of keys) at = child(at, key, path);
    if (Array.isArray(at)) {
      const index = last === "+" ? at.length : indexOf(at, last, path);
      if (value === undefined) at.splice(index, 1);
      else at[index] = value;
    } else if (typeof at === "object" && at !== null) {
      if (value === undefined) Reflect.deleteProperty(at, last);
      else Reflect.set(at, last, value);
    } else throw new Error(`nothing at ${path}`);
  }
  return plan;
}

function child(at: unknown, key: string, path: string): unknown {
  if (Array.isArray(at)) return at[indexOf(at, key, path)];
  const value: unknown = typeof at === "object" && at !== null ? Reflect.get(at, key) : undefined;
  if (value === undefined) throw new Error(`nothing at ${path}`);
  return value;
}

function indexOf(list: readonly unknown[], key: string, path: string): number {
  const index = /^\d+$/.test(key)
    ? Number(key)
    : list.findIndex((item) => typeof item === "object" && item !== null && Reflect.get(item, "id") === key);
  if (index < 0) throw new Error(`nothing at ${path}`);
  return index;
}

export function planOf(data: unknown): Plan {
  const { plan, problems } = planFromData(data);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

/**
 * What is found.
 *
 * @param futures  With a forecast of so many; 400 are enough for chances far from a half. Without: none.
 */
export function findingsOf(data: unknown, today = TODAY, futures = 0): Finding[] {
  const plan = planOf(data);
  const ran = futures === 0 ? undefined : forecast(plan, { iterations: futures, seed: "findings" }).forecast;
  return planFindings(plan, { today, ...(ran === undefined ? {} : { forecast: ran }) });
}
