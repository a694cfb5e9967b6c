import { formatDate, leftDays, leftFinding, leftMoney } from "@leeway/charts";
import type { ContingencyLeft, Effect, SettledEntry } from "@leeway/core";
import { type Column, table, wrap } from "./page.ts";

const right = (heading: string): Column => ({ heading, align: "right" });
const sources = {
  given: "as given in the call",
  signed: "as the signed version commits to",
  plan: "as the plan asks for",
} as const;
const ways: Record<SettledEntry["how"], string> = {
  expired: "window passed",
  closed: "closed",
  occurred: "happened",
  several: "several",
};

/**
 * Contingency left against what may still be needed; what settled entries held; how it runs off.
 *
 * @param spends  Whether the plan has money; else all is told in days.
 */
export function leftLines(left: ContingencyLeft, spends: boolean, width: number): string[][] {
  const money = leftMoney(left);
  const days = leftDays(left);
  const { plan, settled, release, missing } = left;
  const parts = [
    ...(left.money === undefined
      ? []
      : [
          `${leftFinding(left, money)}. Agreed: ${money.say(left.money.agreed)}, ${sources[left.money.agreedFrom]}.`,
        ]),
    ...(left.days === undefined
      ? []
      : [
          `${leftFinding(left, days)}. Agreed: ${formatDate(left.days.agreedDate)}, ${sources[left.days.agreedFrom]}.`,
        ]),
  ];
  const both = (effect: Effect) => [
    days.column(effect.workingDays),
    ...(spends ? [money.column(effect.money)] : []),
  ];
  const none = (effect: Effect) => effect.workingDays === 0 && effect.money === 0;
  const head = [
    { heading: "", align: "left" } as Column,
    { heading: "", align: "left" } as Column,
    right("held: days"),
    ...(spends ? [right(plan.currency)] : []),
    right("may go: days"),
    ...(spends ? [right(plan.currency)] : []),
  ];
  const rows = settled.map(({ name, how, held, mayRelease }) => [
    name,
    ways[how],
    ...both(held),
    ...(how === "occurred" || how === "several" ? both(mayRelease).map(() => "") : both(mayRelease)),
  ]);
  const told = none(release)
    ? "Nothing of it may go: what is left is needed for what remains."
    : `A proposal, for whoever holds the contingency: ${days.say(release.workingDays)}${spends ? ` and ${money.say(release.money)}` : ""} may go. It is no more than was held for what can no longer happen, and no more than is left beyond what may still be needed.`;
  return [
    ["Contingency left", ...parts.flatMap((part) => wrap(part, width - 2).map((line) => `  ${line}`))],
    ...(rows.length === 0
      ? []
      : [
          [
            "No longer open: what was held for it",
            ...table(head, rows, width),
            ...happened(left, spends, width),
            ...wrap(told, width),
          ],
        ]),
    aheadLines(left, width),
    ...(missing.length === 0 ? [] : [missing.flatMap((one) => wrap(`- ${one}`, width, "  "))]),
  ];
}

/** What happened is in the plan as written now: what it adds there, against what was held for it. */
function happened(left: ContingencyLeft, spends: boolean, width: number): string[] {
  const occurred = left.settled.filter(({ took }) => took !== undefined);
  if (occurred.length === 0) return [];
  const sum = (of: (one: SettledEntry) => Effect | undefined) => {
    const parts = occurred.map(of);
    const all = (part: keyof Effect) => parts.reduce((total, one) => total + (one?.[part] ?? 0), 0);
    const days = leftDays(left).say(all("workingDays"));
    return spends ? `${days} and ${leftMoney(left).say(all("money"))}` : days;
  };
  const took = sum((one) => one.took);
  const held = sum((one) => one.held);
  return wrap(`What happened adds ${took} to the plan as written; ${held} were held for it.`, width);
}

/** At most so many lines; the chart and the JSON have every month. */
const MOST = 8;

function aheadLines(left: ContingencyLeft, width: number): string[] {
  const { ahead, plan } = left;
  if (ahead.length < 2) return [];
  const every = Math.max(1, Math.ceil((ahead.length - 1) / MOST));
  const shown = ahead.filter((_, i) => i % every === 0 || i === ahead.length - 1);
  const costs = left.money !== undefined || ahead.some(({ exposure }) => exposure.money !== 0);
  const head = [
    { heading: "after", align: "left" } as Column,
    right("days"),
    ...(costs ? [right(plan.currency)] : []),
  ];
  const rows = shown.map(({ date, exposure }) => [
    formatDate(date),
    leftDays(left).column(exposure.workingDays),
    ...(costs ? [leftMoney(left).column(exposure.money)] : []),
  ]);
  return [
    ...wrap("What may still be needed as time passes, if until then all goes as written", width),
    ...table(head, rows, width),
  ];
}
