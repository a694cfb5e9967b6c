// Histories of forecasts: what links show, and that no complete line is ever lost.
// Hashes are checked against Node's own SHA-256 (FIPS 180-4) of JSON canonicalised here by the rules of RFC 8785: keys
// sorted by UTF-16 code units, numbers and texts as ECMAScript's JSON.stringify writes them (sections 3.2.2 and 3.2.3).
import { createHash } from "node:crypto";
import { driftOf, lineOf, linked, readHistory } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chained, facts } from "./histories.ts";

const SEED = 20270104;
const RUNS = { seed: SEED, numRuns: 60 };
const list = (minLength: number) => fc.array(facts, { minLength, maxLength: 5 });

function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join()}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const keys = Object.keys(value).sort();
  return `{${keys.map((key) => `${JSON.stringify(key)}:${canonical(Reflect.get(value, key))}`).join()}}`;
}
const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");
const textOf = (entries: Parameters<typeof lineOf>[0][]) => entries.map(lineOf).join("");

describe("linked(facts, last)", () => {
  it("holds the hash of the line before, and its own", () => {
    fc.assert(
      fc.property(list(1), (given) => {
        let before: string | null = null;
        for (const { hash, ...rest } of chained(given)) {
          expect(rest.previous).toBe(before);
          expect(hash).toBe(sha256(canonical(rest)));
          before = hash;
        }
      }),
      RUNS,
    );
  });
  it("is one line, whatever the texts hold", () => {
    fc.assert(
      fc.property(facts, (one) => {
        const line = lineOf(linked(one));
        expect(line.indexOf("\n")).toBe(line.length - 1);
        expect(readHistory(line).entries).toEqual([linked(one)]);
      }),
      RUNS,
    );
  });
});

describe("readHistory(text)", () => {
  it("holds together as it was written", () => {
    fc.assert(
      fc.property(list(0), (given) => {
        const entries = chained(given);
        const read = readHistory(textOf(entries));
        expect(read).toEqual({ entries, lines: entries.map((_, i) => i + 1), breaks: [], open: false });
      }),
      RUNS,
    );
  });

  it("reads every complete line of a file cut at any byte, and tells of the piece behind them", () => {
    fc.assert(
      fc.property(list(1), fc.double({ min: 0, max: 1, noNaN: true }), (given, part) => {
        const entries = chained(given);
        const bytes = Buffer.from(textOf(entries), "utf8");
        const cut = Math.floor(part * bytes.length);
        const read = readHistory(new TextDecoder().decode(bytes.subarray(0, cut)));
        const ends = entries.map((_, i) => Buffer.byteLength(textOf(entries.slice(0, i + 1))));
        // A line is complete with its last brace; the line break behind it only ends it.
        const complete = ends.filter((end) => end - 1 <= cut).length;
        expect(read.entries).toEqual(entries.slice(0, complete));
        expect(read.breaks).toEqual([]);
        const whole = cut === 0 || ends.includes(cut) || ends.includes(cut + 1);
        expect(read.torn === undefined).toBe(whole);
        expect(read.open).toBe(ends.includes(cut + 1));
        if (!whole) expect(read.torn?.line).toBe(complete + 1);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it("tells of a line whose content was changed, and of that one only", () => {
    fc.assert(
      fc.property(list(2), fc.nat(), (given, pick) => {
        const entries = chained(given);
        const at = pick % entries.length;
        const forged = entries.map((entry, i) =>
          i === at ? { ...entry, cost: { ...entry.cost, committed: entry.cost.committed + 1 } } : entry,
        );
        expect(readHistory(textOf(forged)).breaks).toEqual([{ line: at + 1, what: "changed" }]);
      }),
      RUNS,
    );
  });
  it("tells where a line was changed and given a hash anew: the next does not follow", () => {
    fc.assert(
      fc.property(list(2), fc.nat(), (given, pick) => {
        const entries = chained(given);
        const at = pick % (entries.length - 1);
        const before = entries[at - 1];
        const forged = entries.map((entry, i) => {
          const { hash: _, previous: __, ...rest } = entry;
          return i === at ? linked({ ...rest, seed: `${rest.seed}!` }, before) : entry;
        });
        expect(readHistory(textOf(forged)).breaks).toEqual([{ line: at + 2, what: "not-linked" }]);
      }),
      RUNS,
    );
  });
  it("tells of a line that was taken out, put in twice, or moved", () => {
    fc.assert(
      fc.property(list(3), fc.nat(), (given, pick) => {
        const entries = chained(given);
        const at = pick % (entries.length - 1);
        const out = entries.filter((_, i) => i !== at);
        expect(readHistory(textOf(out)).breaks[0]).toEqual({ line: at + 1, what: "not-linked" });
        const twice = entries.flatMap((entry, i) => (i === at ? [entry, entry] : [entry]));
        expect(readHistory(textOf(twice)).breaks[0]).toEqual({ line: at + 2, what: "not-linked" });
        const moved = [...out, ...entries.slice(at, at + 1)];
        expect(readHistory(textOf(moved)).breaks.length).toBeGreaterThan(0);
      }),
      RUNS,
    );
  });

  it("never throws, and keeps what reads, whatever else is in the file", () => {
    fc.assert(
      fc.property(list(1), fc.string(), fc.nat(), (given, noise, pick) => {
        fc.pre(noise.trim() !== "" && !noise.includes("\n") && !noise.includes("\r"));
        const lines = chained(given).map(lineOf);
        const at = pick % lines.length;
        lines.splice(at, 0, `${noise}\n`);
        const read = readHistory(lines.join(""));
        expect(read.entries).toEqual(chained(given));
        expect(read.breaks).toEqual([{ line: at + 1, what: "unreadable" }]);
      }),
      RUNS,
    );
  });
  it("lets line ends of another system pass", () => {
    fc.assert(
      fc.property(list(1), (given) => {
        const text = textOf(chained(given)).replaceAll("\n", "\r\n");
        expect(readHistory(text)).toMatchObject({ entries: chained(given), breaks: [] });
      }),
      RUNS,
    );
  });
});

describe("driftOf(entries)", () => {
  it("adds up: the moves from line to line are the move from first to last", () => {
    fc.assert(
      fc.property(list(1), (given) => {
        const entries = chained(given.map((each) => ({ ...each, currency: "EUR" })));
        const drift = driftOf(entries);
        const sum = (of: (moved: { days: number; money?: number }) => number) =>
          drift?.points.reduce((all, { moved }) => all + (moved === undefined ? 0 : of(moved)), 0);
        expect(sum(({ days }) => days)).toBe(drift?.moved.days);
        expect(sum(({ money = Number.NaN }) => money)).toBeCloseTo(drift?.moved.money ?? Number.NaN, 6);
      }),
      RUNS,
    );
  });
  it("speaks from days that never go back", () => {
    fc.assert(
      fc.property(list(2), (given) => {
        const days = driftOf(chained(given))?.points.map(({ asOf }) => asOf) ?? [];
        expect([...days].sort()).toEqual(days);
      }),
      RUNS,
    );
  });
});
