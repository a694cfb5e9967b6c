// Laws of pooling that hold whatever people say (common practice, no source).
import { type Opinion, poolOpinions } from "@leeway/core";
import fc from "fast-check";
import { expect, it } from "vitest";

const value = fc.integer({ min: 0, max: 400 }).map((n) => n / 4);
const bounds = fc.constantFrom("extremes", "p10-p90", "p5-p95");
const shape = fc.constantFrom("pert", "triangular");
const opinion = (by: string): fc.Arbitrary<Opinion> =>
  fc.tuple(value, value, value, bounds, shape).map(([a, b, c, bounds, shape]): Opinion => {
    const [low = 0, likely = 0, high = 0] = [a, b, c].sort((x, y) => x - y);
    return {
      by,
      of: "duration",
      estimate:
        low === high
          ? { kind: "fixed", value: low, unit: "days" }
          : { kind: "range", low, likely, high, bounds, shape, unit: "days" },
    };
  });
const team = fc
  .integer({ min: 1, max: 5 })
  .chain((n) => fc.tuple(...["a", "b", "c", "d", "e"].slice(0, n).map(opinion)));
const runs = { numRuns: 60 };

it("pooled values lie between the smallest and the largest that were said, and in order", () => {
  fc.assert(
    fc.property(team, (opinions) => {
      const pooled = poolOpinions(opinions);
      if (pooled === undefined) throw new Error("nothing pooled");
      for (const key of ["low", "likely", "high"] as const) {
        const all = pooled.voices.map((voice) => voice[key]);
        expect(pooled[key]).toBeGreaterThanOrEqual(Math.min(...all) - 1e-9);
        expect(pooled[key]).toBeLessThanOrEqual(Math.max(...all) + 1e-9);
      }
      expect(pooled.low).toBeLessThanOrEqual(pooled.likely);
      expect(pooled.likely).toBeLessThanOrEqual(pooled.high);
    }),
    runs,
  );
});

it("the order in which people spoke does not matter, to the bit", () => {
  fc.assert(
    fc.property(team, (opinions) => {
      expect(poolOpinions([...opinions].reverse())).toEqual(poolOpinions(opinions));
    }),
    runs,
  );
});

it("those who say the same are told apart by nobody", () => {
  fc.assert(
    fc.property(opinion("a"), (said) => {
      const pooled = poolOpinions([said, { ...said, by: "b" }, { ...said, by: "c" }]);
      const alone = poolOpinions([said]);
      expect(pooled?.disagreement).toMatchObject({ level: "agree", apart: [], farOut: [], spread: 0 });
      expect(pooled?.low).toBeCloseTo(alone?.low ?? Number.NaN, 9);
      expect(pooled?.high).toBeCloseTo(alone?.high ?? Number.NaN, 9);
      expect(pooled?.curveGap).toBeLessThan(1e-9);
    }),
    runs,
  );
});
