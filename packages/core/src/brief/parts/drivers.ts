import type { Effect, Explanation, Share } from "../../explain/types.ts";
import type { BriefDrivers } from "../types.ts";

const shown = 5;

/**
 * The five largest named shares of the contingency, by the larger of their parts of the days and of the money, and
 * everything else as one row, so that the rows add up to the whole.
 */
export function briefDrivers({ shares, contingency }: Explanation, spends: boolean): BriefDrivers {
  const part = (amount: number, whole: number) => (Math.abs(whole) < 1e-9 ? 0 : Math.abs(amount / whole));
  const size = (share: Share) =>
    Math.max(
      part(share.workingDays, contingency.workingDays),
      spends ? part(share.money, contingency.money) : 0,
    );
  const named = shares
    .filter((share) => share.gathers === undefined && size(share) > 1e-9)
    .sort((a, b) => size(b) - size(a) || (a.id < b.id ? -1 : 1))
    .slice(0, shown)
    .sort((a, b) => b.workingDays - a.workingDays || b.money - a.money || (a.id < b.id ? -1 : 1));
  const rest = shares.filter((share) => !named.includes(share));
  const causes = rest.reduce((sum, share) => sum + (share.gathers?.length ?? 1), 0);
  const most = (of: (error: Effect) => number) => Math.max(0, ...shares.map(({ error }) => of(error)));
  return {
    rows: named.map(({ id, name, kind, workingDays, money }) => ({ id, name, kind, workingDays, money })),
    ...(rest.length === 0 ? {} : { rest: { causes, ...sum(rest) } }),
    whole: contingency,
    error: { workingDays: most((error) => error.workingDays), money: most((error) => error.money) },
  };
}

function sum(effects: readonly Effect[]): Effect {
  return effects.reduce(
    (so, { workingDays, money }) => ({ workingDays: so.workingDays + workingDays, money: so.money + money }),
    { workingDays: 0, money: 0 },
  );
}
