import { isoDate } from "../calendar/dates.ts";
import { tolerance } from "../calendar/tolerance.ts";
import type { Model } from "../simulate/model.ts";
import { releasedBy } from "../simulate/months.ts";
import { kernelOf, type Trials } from "../simulate/trials.ts";
import { meanAndSd, meanOf } from "./moments.ts";
import { type RankSelector, rankSelector } from "./rankSelector.ts";
import { rankOf } from "./ranks.ts";
import type { Forecast } from "./types.ts";

type WorthPart = Pick<Forecast, "together" | "lateness" | "appraisal" | "months" | "firstShortfall">;

/** What lateness costs, what the benefits are worth, when the money is needed: read off the same iterations. */
export function summariseWorth(model: Model, trials: Trials, confidence: number): WorthPart {
  const { lateness: late, worth, months: phased, starts, iterations } = trials;
  const reads = late !== undefined || worth !== undefined || phased !== undefined;
  if (!reads) return together(model, trials);
  const select = kernelOf(starts[0])?.selectRanks ?? rankSelector(iterations);
  return {
    ...together(model, trials),
    ...lateness(model, trials, select),
    ...appraisal(model, trials, select),
    ...months(model, trials, confidence, select),
  };
}

function together(model: Model, trials: Trials): WorthPart {
  if (model.pairs.length === 0) return {};
  const n = trials.iterations;
  return {
    together: model.pairs.map(([a, b], p) => {
      const [x, y, xx, yy, xy] = trials.sums.pairs.subarray(5 * p, 5 * p + 5) as unknown as number[];
      const cov = (xy as number) - ((x as number) * (y as number)) / n;
      const vx = (xx as number) - ((x as number) * (x as number)) / n;
      const vy = (yy as number) - ((y as number) * (y as number)) / n;
      const spread = Math.sqrt(Math.max(0, vx) * Math.max(0, vy));
      const names: [string, string] = [model.tasks[a]?.id ?? "", model.tasks[b]?.id ?? ""];
      return { tasks: names, correlation: spread > 1e-9 * n ? cov / spread : 0 };
    }),
  };
}

function lateness(model: Model, trials: Trials, select: RankSelector): WorthPart {
  const rows = trials.lateness;
  if (rows === undefined || model.lateness === undefined) return {};
  const n = trials.iterations;
  const end = model.lateness.afterDay + 1;
  let late = 0;
  let sum = 0;
  for (let k = 0; k < n; k++) {
    sum += rows[k] as number;
    if ((trials.finish[k] as number) - end > tolerance) late++;
  }
  return {
    lateness: {
      after: isoDate(model.startDay + model.lateness.afterDay),
      chance: late / n,
      mean: sum / n,
      meanWhenLate: late === 0 ? 0 : sum / late,
      p80: select(rows, [rankOf(0.8, n)])[0] as number,
    },
  };
}

function appraisal(model: Model, trials: Trials, select: RankSelector): WorthPart {
  const { worth } = trials;
  const asked = model.plan.appraisal;
  if (worth === undefined || asked === undefined) return {};
  const n = trials.iterations;
  let positive = 0;
  let paid = 0;
  for (let k = 0; k < n; k++) {
    if ((worth.net[k] as number) > 0) positive++;
    if ((worth.payback[k] as number) < Number.POSITIVE_INFINITY) paid++;
  }
  const paybacks = worth.payback.slice().sort();
  const paybackAt = (p: number) => {
    const t = paybacks[rankOf(p, n) - 1] as number;
    return t === Number.POSITIVE_INFINITY
      ? undefined
      : isoDate(model.startDay + Math.ceil(t - tolerance) - 1);
  };
  const [p10, p50, p90] = select(
    worth.net,
    [0.1, 0.5, 0.9].map((p) => rankOf(p, n)),
  ) as [number, number, number];
  const half = paybackAt(0.5);
  const most = paybackAt(0.8);
  return {
    appraisal: {
      years: asked.years,
      discountRate: asked.discountRate,
      net: { ...meanAndSd(worth.net), p10, p50, p90 },
      chancePositive: positive / n,
      payback: {
        chance: paid / n,
        ...(half === undefined ? {} : { p50: half }),
        ...(most === undefined ? {} : { p80: most }),
      },
      benefits: model.benefits.map((benefit, i) => ({
        id: benefit.id,
        name: benefit.name,
        mean: (trials.sums.benefits[i] as number) / n,
        valued: benefit.worth !== 0,
      })),
    },
  };
}

function months(model: Model, trials: Trials, confidence: number, select: RankSelector): WorthPart {
  if (trials.months === undefined) return {};
  const n = trials.iterations;
  const { months: list, rows } = trials.months;
  const hasFunds = model.plan.commitment.funds.length > 0;
  const released = releasedBy(model, list);
  // Months after the money is spent in every iteration say nothing new: stop at the first complete one.
  const last = rows.findIndex((row) =>
    row.every(
      (value, k) => Math.abs(value - (trials.cost[k] as number)) <= 1e-6 * Math.max(1, Math.abs(value)),
    ),
  );
  const shown = last < 0 ? rows.length : last + 1;
  const means = rows.slice(0, shown).map(meanOf);
  const out = rows.slice(0, shown).map((row, m) => {
    const [p50, p80] = select(row, [rankOf(0.5, n), rankOf(0.8, n)]) as [number, number];
    const before = m === 0 ? 0 : (means[m - 1] as number);
    const limit = (released[m] as number) + tolerance * Math.max(1, Math.abs(released[m] as number));
    let covered = 0;
    if (hasFunds) for (let k = 0; k < n; k++) if ((row[k] as number) <= limit) covered++;
    return {
      month: list.names[m] as string,
      mean: (means[m] as number) - before,
      cumulative: { p50, p80 },
      ...(hasFunds ? { released: released[m] as number, chanceCovered: covered / n } : {}),
    };
  });
  const short = out.find((entry) => (entry.chanceCovered ?? 1) < confidence);
  return {
    months: out,
    ...(short === undefined
      ? {}
      : { firstShortfall: { month: short.month, chanceCovered: short.chanceCovered ?? 0 } }),
  };
}
