import type { Explanation } from "@leeway/core";
import { namedShares, sampleExplanation, sampleShares, sampleWalk } from "./sampleExplanation.ts";

export const longName =
  "Agreement in principle with every neighbour on both banks about working hours, deliveries and noise, signed";
export const rightToLeft = "בדיקת קיר הרציף";
export const markup = `</text><script>alert(1)</script>&amp;"'\u0000\u0008\ud800 ]]>`;

/** Explanations at the edges of what a plan can give, by name. Invented data. */
export function hardExplanations(): Record<string, Explanation> {
  const exact = { orders: { causes: 1, taken: 1, all: true } };
  const [a, b] = namedShares(["Tide too low", "Tide high enough"], (k) => (k === 0 ? 5 : -5));
  const opposed = a === undefined || b === undefined ? [] : [a, b];
  return {
    "no cause at all": sampleExplanation([], { ...exact, walk: [] }),
    "causes that come to nothing": sampleExplanation(namedShares(["Paint dries"], () => 0)),
    "zero contingency": sampleExplanation(opposed),
    "one cause": sampleExplanation(
      namedShares(["Permit decided"]).map((share) => ({ ...share, error: { workingDays: 0, money: 0 } })),
      exact,
    ),
    "negative shares": sampleExplanation(
      sampleShares.map((share) => ({ ...share, workingDays: -share.workingDays, money: -share.money })),
    ),
    "all equal": sampleExplanation(namedShares(["Roof", "Wall", "Floor", "Stairs", "Doors"])),
    "forty causes": sampleExplanation(
      namedShares(
        Array.from({ length: 40 }, (_, k) => `Cause number ${k + 1}`),
        (k) => ((k % 7 === 3 ? -1 : 1) * 8) / (k + 1),
      ),
    ),
    "two hundred days and a billion": sampleExplanation(
      sampleShares.map((share) => ({
        ...share,
        workingDays: share.workingDays * 21,
        money: share.money * 123_456,
      })),
    ),
    cents: sampleExplanation(sampleShares.map((share) => ({ ...share, money: share.money / 100_000 }))),
    "errors larger than the shares": sampleExplanation(
      sampleShares.map((share) => ({ ...share, error: { workingDays: 15, money: 30_000 } })),
    ),
    "very long names": sampleExplanation(
      sampleShares.map((share) => ({ ...share, name: `${longName} ${share.id}` })),
      {
        walk: sampleWalk(56, 48_800).map((step) => ({ ...step, step: longName, text: `${longName}.` })),
      },
    ),
    "right to left": sampleExplanation(
      sampleShares.map((share) => ({ ...share, name: `${rightToLeft} ${share.id}` })),
    ),
    "markup for names": sampleExplanation(sampleShares.map((share) => ({ ...share, name: markup }))),
    "a walk that turns back": sampleExplanation(undefined, {
      walk: sampleWalk(56, 48_800).map((step, k) => ({
        ...step,
        workingDays: [25, -30, 25, 20, 16][k] ?? 0,
        money: [20_000, -25_000, 19_000, 18_000, 16_800][k] ?? 0,
      })),
    }),
  };
}
