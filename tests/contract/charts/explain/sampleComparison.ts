import type { Comparison, Move, MoveKind } from "@leeway/core";
import { sampleStamp } from "./sampleExplanation.ts";

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
  const from = { date: "2027-11-02", day: 274.6, workingDays: 196, cost: 655_400, money: 655_400 };
  const days = moves.reduce((sum, each) => sum + each.workingDays, 0);
  const money = moves.reduce((sum, each) => sum + each.money, 0);
  const later = new Date(Date.UTC(2027, 10, 2 + Math.round(days * 1.4))).toISOString().slice(0, 10);
  return {
    stamp: sampleStamp,
    confidence: 0.8,
    from,
    to: {
      date: later,
      day: from.day + days * 1.4,
      workingDays: from.workingDays + days,
      cost: from.cost + money,
      money: from.cost + money,
    },
    moves,
  };
}
