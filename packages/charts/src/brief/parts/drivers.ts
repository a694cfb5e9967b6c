import type { Brief } from "@leeway/core";
import { groupDigits } from "../../words/groupDigits.ts";
import { roundTogether } from "../../words/roundTogether.ts";
import { limitStep } from "../../words/roundToLimits.ts";
import { named, text } from "../sheet/build.ts";
import type { Block, Room, Section } from "../sheet/types.ts";

/** What the contingency is held for: five causes, the rest as one, and the whole they add up to. */
export function driversSection(brief: Brief, room: Room): Section {
  const { rows, whole } = brief.drivers;
  const none = rows.length === 0 && Math.abs(whole.workingDays) < 1e-9 && Math.abs(whole.money) < 1e-9;
  return {
    key: "drivers",
    title: brief.spends
      ? `What drives it, in working days and ${brief.plan.currency}`
      : "What drives it, in working days",
    blocks: none
      ? [text("Nothing in the plan is uncertain, so nothing drives it.")]
      : [driversTable(brief, room)],
  };
}

/** Rounded together, so that the column adds up as it is read. */
export function driversTable(brief: Brief, room: Pick<Room, "name">): Block {
  const { rows, rest } = brief.drivers;
  const all = [...rows, ...(rest === undefined ? [] : [rest])];
  const days = dayColumn(all.map(({ workingDays }) => workingDays));
  const sums = moneyColumn(
    brief,
    all.map(({ money }) => money),
  );
  const cells = (at: number) => [days[at] ?? "", ...(brief.spends ? [sums[at] ?? ""] : [])];
  const end = (name: string) => ({ text: name, align: "end" as const });
  return {
    kind: "table",
    caption: "Contingency by cause; the rows add up to the whole",
    head: [
      { text: "Cause", align: "start" },
      end("days"),
      ...(brief.spends ? [end(brief.plan.currency)] : []),
    ],
    rows: [
      ...rows.map(({ name, kind }, at) => ({
        // An assumption's name says that it holds; what costs time is that it does not.
        cells: [`${kind === "assumption" ? "Wrong: " : ""}${named(name, room.name)}`, ...cells(at)],
      })),
      ...(rest === undefined
        ? []
        : [
            {
              cells: [
                `${rest.causes} other ${rest.causes === 1 ? "cause" : "causes"}`,
                ...cells(rows.length),
              ],
            },
          ]),
      { cells: ["The whole contingency", ...cells(all.length)], whole: true },
    ],
  };
}

/** Whole days from twenty on, tenths below; the sum last. */
export function dayColumn(values: readonly number[]): string[] {
  const whole = values.reduce((sum, value) => sum + value, 0);
  const decimals = Math.abs(whole) >= 20 ? 0 : 1;
  return withSum(values, 10 ** -decimals).map((value) => (value === 0 ? "0" : groupDigits(value, decimals)));
}

/** To the step that the committed sum's limits support; the sum last. */
export function moneyColumn({ commitment }: Brief, values: readonly number[]): string[] {
  const { cost, costLow, costHigh } = commitment.committed;
  return withSum(values, Math.max(1, limitStep(cost, costLow, costHigh))).map((value) => groupDigits(value));
}

function withSum(values: readonly number[], step: number): number[] {
  const rounded = roundTogether(values, step);
  return [...rounded, rounded.reduce((sum, value) => sum + value, 0)];
}
