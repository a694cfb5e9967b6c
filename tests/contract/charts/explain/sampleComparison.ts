import type { Comparison, Move, MoveKind } from "@leeway/core";
import { samplePlan, sampleStamp } from "./sampleExplanation.ts";

const move = (
  what: string,
  kind: MoveKind,
  days: number,
  money: number,
  changes: string[],
  error = 0,
): Move => ({
  what,
  ids: [],
  kind,
  workingDays: days,
  money,
  error: { workingDays: error, money: error * 1000 },
  changes,
});

/** Invented changes between two states of the sample plan. */
export const sampleMoves: Move[] = [
  move("Permit decided: P90 from 45 to 60 days", "estimates", 8.3, 4200, [
    "Permit decided: P90 from 45 to 60 days",
  ]),
  move("Progress to 30 April 2027", "actuals", 3.1, 900, [
    "Survey of the quay wall: finished on 12 Mar 2027",
    "Design: 9 days remaining",
  ]),
  move("Risk “Quay wall needs pinning” closed", "risks", -6.2, -14_300, ["Its chance from 25 % to 0"]),
  move("New task “Shelves for the map room”", "scope", 2.4, 7600, [
    "Shelves for the map room added, 8 to 15 days",
  ]),
  move("Rate of the electrician", "money", 0, 3100, ["From 420 to 460 a day"]),
  move("The builder at half capacity in May", "people", 1.2, 0, ["Absence from 3 to 28 May 2027"]),
];

/** A comparison whose difference is the sum of the moves given. */
export function sampleComparison(moves: Move[] = sampleMoves): Comparison {
  const days = moves.reduce((sum, each) => sum + each.workingDays, 0);
  const money = moves.reduce((sum, each) => sum + each.money, 0);
  const at = (worked: number, cost: number): Comparison["from"] => {
    const on = (shift: number) =>
      new Date(Date.UTC(2027, 10, 2 + Math.round((worked - 196) * 1.4) + shift)).toISOString().slice(0, 10);
    return {
      date: on(0),
      lowDate: on(-2),
      highDate: on(1),
      day: 274.6 + (worked - 196) * 1.4,
      workingDays: worked,
      cost,
      costLow: cost - 900,
      costHigh: cost + 900,
      money: cost,
    };
  };
  return {
    stamp: sampleStamp,
    plan: samplePlan,
    old: { title: samplePlan.title, start: samplePlan.start, sha256: "1".repeat(64) },
    confidence: 0.8,
    from: at(196, 655_400),
    to: at(196 + days, 655_400 + money),
    difference: { workingDays: days, money },
    moves,
    orders: { groups: moves.length, taken: 720, all: true },
    asked: { finishBy: { date: "2027-10-01", from: 0.37, to: 0.24 } },
    alsoChanged: ["Permit decided: the note"],
    warnings: [],
  };
}
