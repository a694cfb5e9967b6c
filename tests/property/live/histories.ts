import { type HistoryEntry, type HistoryFacts, linked } from "@leeway/core";
import fc from "fast-check";

const day = fc
  .integer({ min: 0, max: 400 })
  .map((n) => new Date(Date.UTC(2027, 0, 4 + n)).toISOString().slice(0, 10));
const money = fc.integer({ min: -1_000_000, max: 1_000_000 });
const finish = fc.record({ date: day, workingDays: fc.double({ min: 0, max: 300, noNaN: true }) });
const chance = fc.double({ min: 0, max: 1, noNaN: true });

/** What a history may keep: any text in it, line breaks and signs of every kind included. */
export const facts: fc.Arbitrary<HistoryFacts> = fc
  .record({
    history: fc.constant(1 as const),
    date: day,
    start: day,
    sha256: fc.stringMatching(/^[0-9a-f]{64}$/),
    approvalSha256: fc.stringMatching(/^[0-9a-f]{64}$/),
    seed: fc.string({ unit: "grapheme" }),
    iterations: fc.integer({ min: 1, max: 1e7 }),
    design: fc.constantFrom("latin-hypercube" as const, "plain" as const),
    version: fc.constant("0.1.0"),
    confidence: fc.constantFrom(0.5, 0.8),
    currency: fc.constantFrom("EUR", "CHF"),
    asWritten: fc.record({ date: day, workingDays: fc.nat(), cost: money }),
    finish: fc.record({
      p10: finish,
      p50: finish,
      p80: finish,
      p90: finish,
      committed: fc.record({ date: day, workingDays: fc.nat(), lowDate: day, highDate: day }),
    }),
    cost: fc.record({
      p10: money,
      p50: money,
      p80: money,
      p90: money,
      committed: money,
      low: money,
      high: money,
    }),
    asked: fc.record({ finishBy: day, budget: money }, { requiredKeys: [] }),
    chance: fc.record({ finishBy: chance, budget: chance, both: chance }, { requiredKeys: [] }),
    approvals: fc.array(
      fc.record({ who: fc.constantFrom("chair", "board"), decision: fc.constant("approve") }),
      {
        maxLength: 2,
      },
    ),
    change: fc.record(
      {
        what: fc.string({ unit: "grapheme" }),
        who: fc.constant("ines"),
        why: fc.string({ unit: "grapheme" }),
      },
      { requiredKeys: ["what"] },
    ),
  })
  .chain((rest) =>
    fc.option(day, { nil: undefined }).map((statusDate) => (statusDate ? { ...rest, statusDate } : rest)),
  );

/** Linked, in order. */
export function chained(list: readonly HistoryFacts[]): HistoryEntry[] {
  const entries: HistoryEntry[] = [];
  for (const each of list) entries.push(linked(each, entries.at(-1)));
  return entries;
}
