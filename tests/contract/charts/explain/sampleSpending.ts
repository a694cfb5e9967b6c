import type { Forecast } from "@leeway/core";
import { sampleForecast } from "../sampleForecast.ts";

/** What spending is made from: mean of each month, and money released by its end. Invented data. */
export interface SpendingSample {
  first?: string;
  means?: number[];
  released?: number[];
  covered?: number[];
}

const means = [33_000, 46_000, 21_000, 59_000, 198_000, 161_000, 66_000, 27_000, 13_000, 5000, 1300, 200, 20];
const released = [240_000, 400_000, 400_000, 400_000, 640_000];
const covered = [1, 1, 1, 0.98, 1, 0.99, 0.92, 0.81, 0.68, 0.62];

/** The sample forecast with its money by month. */
export function sampleSpending(sample: SpendingSample = {}): Forecast {
  const own = sample.means ?? means;
  const funds = "released" in sample ? sample.released : released;
  const chances = sample.covered ?? covered;
  const [year = 2027, month = 2] = (sample.first ?? "2027-02").split("-").map(Number);
  let spent = 0;
  const months = own.map((mean, k) => {
    spent += mean;
    const at = year * 12 + month - 1 + k;
    const last = <T>(list: T[]) => list[Math.min(k, list.length - 1)];
    const [money, chance] = [funds === undefined ? undefined : last(funds), last(chances)];
    return {
      month: `${String(Math.floor(at / 12)).padStart(4, "0")}-${String((at % 12) + 1).padStart(2, "0")}`,
      mean,
      cumulative: { p50: spent * 0.99, p80: spent + Math.abs(spent) * 0.05 + Math.abs(mean) * 0.3 },
      ...(money === undefined ? {} : { released: money, chanceCovered: chance ?? 1 }),
    };
  });
  const short = months.find((each) => (each.chanceCovered ?? 1) < 0.8);
  return {
    ...sampleForecast(),
    months,
    ...(short === undefined
      ? {}
      : { firstShortfall: { month: short.month, chanceCovered: short.chanceCovered ?? 0 } }),
  };
}

/** Spending at the edges of what a plan can give, by name. */
export function hardSpendings(): Record<string, Forecast> {
  const long = Array.from({ length: 60 }, (_, k) => 9000 + 4000 * Math.sin(k / 3));
  return {
    "no months": sampleForecast(),
    "no funds named": sampleSpending({ released: undefined as never }), // the key is there: no funds
    "always covered": sampleSpending({ covered: [1] }),
    "short from the first month": sampleSpending({ released: [10_000], covered: [0.02] }),
    "one month": sampleSpending({ means: [40_000], released: [30_000], covered: [0.1] }),
    "far more money than is spent": sampleSpending({ released: [90_000_000], covered: [1] }),
    "five years": sampleSpending({ means: long, released: [200_000, 400_000, 700_000], covered: [1] }),
    "money comes back": sampleSpending({ means: [80_000, -30_000, 20_000, -90_000], covered: [1] }),
    millions: sampleSpending({
      means: means.map((each) => each * 400),
      released: released.map((each) => each * 400),
    }),
    "nothing is spent": sampleSpending({ means: [0, 0, 0], covered: [1] }),
  };
}
