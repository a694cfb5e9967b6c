import type { Budget, ContingencyLeft, Cover } from "@leeway/core";

/** Answers about money, made up, to draw: a plain one of each kind and hard ones. Invented data. */

const stamp = {
  seed: "leeway",
  iterations: 10000,
  version: "0.1.0",
  design: "latin-hypercube",
  sha256: "0".repeat(64),
} as const;

function cover(agreed: number, asWritten: number, exposure: number, chance: number): Cover {
  const left = agreed - asWritten;
  const committed = asWritten + exposure;
  const spread = Math.abs(exposure) * 0.02 + 1;
  return {
    agreed,
    agreedFrom: "plan",
    asWritten,
    left,
    committed,
    low: committed - spread,
    high: committed + spread,
    exposure,
    spare: left - exposure,
    ...(exposure > 0 ? { ratio: left / exposure } : {}),
    chance,
  };
}

export interface LeftSample {
  scale?: number;
  /** Money agreed as a part of the exposure; undefined: nothing was agreed. */
  part?: number | undefined;
  points?: number;
  currency?: string;
}

/** An exposure that runs off over months, faster towards the end. */
export function sampleLeft({
  scale = 87000,
  points = 8,
  currency = "EUR",
  ...asked
}: LeftSample = {}): ContingencyLeft {
  const part = "part" in asked ? asked.part : 0.74;
  const at = (k: number) => (points === 1 ? 0 : Math.max(0, 1 - (k / (points - 1)) ** 2));
  const ahead = Array.from({ length: points }, (_, k) => {
    const month = 1 + k;
    const year = 2027 + Math.floor(month / 12);
    const end = new Date(Date.UTC(year, (month % 12) + 1, 0)).toISOString().slice(0, 10);
    return {
      date: k === 0 ? "2027-01-31" : end,
      exposure: { workingDays: 68 * at(k), money: scale * at(k) },
      settles: {
        work: k === 0 ? [] : ["permit-decided", "drawings"],
        register: k % 3 === 1 ? ["hidden-drains"] : [],
      },
    };
  });
  const asWritten = scale * 6.6;
  return {
    stamp,
    plan: { title: "Sample", currency, start: "2027-02-01" },
    confidence: 0.8,
    ...(part === undefined
      ? {}
      : {
          money: cover(asWritten + part * scale, asWritten, scale * at(0), 0.61),
          days: {
            ...cover(136 + 68 * part, 136, 68 * at(0), 0.22),
            agreedDate: "2027-10-01",
            asWrittenDate: "2027-08-13",
            committedDate: "2027-11-19",
          },
        }),
    missing: [],
    settled: [],
    held: { workingDays: 0, money: 0 },
    heldIn: "without-progress",
    release: { workingDays: 0, money: 0 },
    ahead,
  };
}

export const hardLefts: Record<string, ContingencyLeft> = {
  "nothing agreed": sampleLeft({ part: undefined }),
  "more than all of it gone": sampleLeft({ part: -0.4 }),
  "enough and to spare": sampleLeft({ part: 1.6 }),
  "far more than is needed": sampleLeft({ part: 30 }),
  "thousands of millions": sampleLeft({ scale: 8.7e9 }),
  "a few cents": sampleLeft({ scale: 0.3 }),
  "twenty-five points": sampleLeft({ points: 25 }),
  "two points": sampleLeft({ points: 2 }),
  "nothing uncertain": sampleLeft({ points: 1 }),
};

export interface BudgetSample {
  /** Means of the months. */
  means?: number[];
  /** Released by the end of each, the last for the rest; undefined: no funds. */
  released?: number[] | undefined;
  earlier?: boolean;
}

/** A budget with its money by month. */
export function sampleBudget({ means = usual, earlier = false, ...asked }: BudgetSample = {}): Budget {
  const released = "released" in asked ? asked.released : [240000, 400000, 400000, 400000, 640000];
  let spent = 0;
  const months = means.map((mean, k) => {
    spent += mean;
    const at = 2027 * 12 + 1 + k;
    const money = released?.[Math.min(k, released.length - 1)];
    const committed = spent + Math.abs(spent) * 0.05;
    const short = money === undefined ? 0 : Math.max(0, committed - money);
    return {
      month: `${Math.floor(at / 12)}-${String((at % 12) + 1).padStart(2, "0")}`,
      spent: { mean, p50: mean * 0.98, p80: mean * 1.2, split: mean * 1.05 },
      byEnd: { p50: spent * 0.99, p80: committed, committed },
      components: [],
      ...(money === undefined ? {} : { released: money, chanceCovered: short > 0 ? 0.63 : 0.97, short }),
    };
  });
  const committed = months.at(-1)?.byEnd.committed ?? 0;
  const first = months.find(({ short = 0 }) => short > 0);
  const all = released?.at(-1) ?? 0;
  return {
    stamp,
    plan: { title: "Sample", currency: "EUR", start: "2027-02-01" },
    confidence: 0.8,
    total: {
      mean: spent,
      p50: spent * 0.99,
      p80: committed,
      sd: spent * 0.06,
      asWritten: spent * 0.9,
      committed,
      low: committed * 0.998,
      high: committed * 1.002,
    },
    components: [],
    addedUp: { p50: spent, p80: committed },
    phases: [],
    months,
    ...(released === undefined
      ? {}
      : {
          funds: {
            covered: first === undefined,
            ...(first === undefined
              ? {}
              : {
                  firstShort: { month: first.month, chanceCovered: 0.63, short: first.short ?? 0 },
                  more: {
                    amount: months.reduce((most, { short = 0 }) => Math.max(most, short), 0),
                    by: `${first.month}-28`,
                  },
                }),
            earlier: earlier
              ? [{ from: "2027-12-01", amount: 240000, neededBy: "2027-10-31", days: 31 }]
              : [],
            lacking: earlier ? 0 : Math.max(0, committed - all),
          },
        }),
    contingency: { money: committed - spent * 0.9 },
    delay: { overheadsPerWeek: 0 },
  };
}
const usual = [33000, 46000, 21000, 59000, 198000, 161000, 66000, 27000, 13000, 5000, 1300, 200, 20];

export const hardBudgets: Record<string, Budget> = {
  "no funds": sampleBudget({ released: undefined }),
  "every month covered": sampleBudget({ released: [5e6] }),
  "earlier would do": sampleBudget({ earlier: true }),
  "short from the first month": sampleBudget({ released: [100] }),
  "one month": sampleBudget({ means: [5000] }),
  "thousands of millions": sampleBudget({ means: usual.map((mean) => mean * 1e5), released: [6e10] }),
  "five years": sampleBudget({ means: Array.from({ length: 60 }, (_, k) => 1000 + 400 * (k % 7)) }),
  "money comes back": sampleBudget({ means: [50000, -20000, 30000, -45000] }),
  "no money at all": sampleBudget({ means: [] }),
};
