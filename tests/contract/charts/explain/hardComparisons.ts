import type { Comparison } from "@leeway/core";
import { longName, markup, rightToLeft } from "./hardExplanations.ts";
import { sampleComparison, sampleMoves } from "./sampleComparison.ts";

/** Comparisons at the edges of what two plans can give, by name. Invented data. */
export function hardComparisons(): Record<string, Comparison> {
  const [first] = sampleMoves;
  const one = first === undefined ? [] : [first];
  const renamed = (name: string) =>
    sampleComparison(sampleMoves.map((move) => ({ ...move, what: name, changes: [name, name] })));
  return {
    "no change": sampleComparison([]),
    "changes that move nothing": sampleComparison(one.map((move) => ({ ...move, workingDays: 0, money: 0 }))),
    "one change": sampleComparison(one),
    "changes that cancel out": sampleComparison(
      one.flatMap((move) => [
        move,
        {
          ...move,
          what: "Permit asked for a month earlier",
          workingDays: -move.workingDays,
          money: -move.money,
        },
      ]),
    ),
    "all earlier": sampleComparison(
      sampleMoves.map((move) => ({
        ...move,
        workingDays: -Math.abs(move.workingDays),
        money: -Math.abs(move.money),
      })),
    ),
    "forty changes with errors": sampleComparison(
      Array.from({ length: 40 }, (_, k) => ({
        ...(first ?? sampleMoves[0]),
        what: `Section ${k + 1} re-estimated`,
        workingDays: Math.sin(k) * 6,
        money: Math.cos(k) * 900,
        error: { workingDays: 0.4, money: 70 },
      })) as Comparison["moves"], // `first` exists: the sample has moves
    ),
    "very long names": renamed(longName),
    "right to left": renamed(rightToLeft),
    "markup for names": renamed(markup),
  };
}
