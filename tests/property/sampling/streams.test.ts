import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blockSize, fillUniforms, seedBlock } from "../../../packages/core/src/sampling/index.ts";

// The address of a draw decides it, and nothing else does (law of this project; common practice, no source).
const address = fc.tuple(fc.string(), fc.string(), fc.string(), fc.nat({ max: 1_000_000 }));

describe("seedBlock(...address)", () => {
  it("repeats for the same address and differs for another one", () => {
    fc.assert(
      fc.property(address, address, (a, b) => {
        const same = JSON.stringify(a) === JSON.stringify(b);
        expect(seedBlock(...a).join() === seedBlock(...b).join()).toBe(same);
        expect(seedBlock(...a)).toEqual(seedBlock(...a));
      }),
      { numRuns: 1000 },
    );
  });

  it("differs when characters move from one part to the next", () => {
    fc.assert(
      fc.property(
        fc.string({ minLength: 1 }),
        fc.string(),
        fc.string(),
        fc.nat({ max: 999 }),
        (a, b, c, block) => {
          const moved = seedBlock(a.slice(0, -1), a.slice(-1) + b, c, block);
          expect(moved.join()).not.toBe(seedBlock(a, b, c, block).join());
        },
      ),
      { numRuns: 1000 },
    );
  });
});

describe("fillUniforms(design, ...address)", () => {
  it("stays strictly inside (0, 1), in either design, for any address", () => {
    const out = new Float64Array(blockSize);
    fc.assert(
      fc.property(fc.constantFrom("plain" as const, "latin-hypercube" as const), address, (design, a) => {
        fillUniforms(design, ...a, out);
        expect(out.every((u) => u > 0 && u < 1)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
