import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bytesOfPieces, bytesOfTable } from "../../../packages/core/src/kernel/index.ts";
import { standardTable } from "../../../packages/core/src/sampling/table/standardTable.ts";
import { both, differing } from "./kernels.ts";

// Both kernels' quantile tables against those of sampling/, whose own reference tests are in
// tests/reference/sampling/tables.test.ts: the same bits.

const edges = [0, 1, 0.5, 0.125, 0.25, 0.375, 0.625, 0.75, 0.875, 2 ** -30, 1 - 2 ** -30, 0.375 - 2 ** -54];
const modes = fc.oneof(
  fc.constantFrom(...edges),
  fc.double({ min: 0, max: 1, noNaN: true }).map((x) => (x === 0 ? 0 : x)),
);
const laws = fc.oneof(
  modes.map((x) => ["pert", x] as const),
  modes.map((x) => ["triangular", x] as const),
  fc.constant(["uniform", 0] as const),
  fc.constant(["normal", 0] as const),
  fc.double({ min: 0.01, max: 3, noNaN: true }).map((sigma) => ["lognormal", sigma] as const),
);

describe("the kernels' quantile tables", () => {
  it("are those of standardTable to the last bit, the same law once", () => {
    fc.assert(
      fc.property(fc.array(laws, { minLength: 1, maxLength: 6 }), (list) => {
        for (const kernel of both(bytesOfPieces + list.length * bytesOfTable)) {
          for (const [shape, parameter] of list) {
            const table = kernel.table(shape, parameter);
            expect(differing(table, standardTable(shape, parameter))).toEqual([]);
            expect(kernel.table(shape, parameter)).toBe(table);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it("hold at every edge of the four pieces", () => {
    for (const kernel of both(bytesOfPieces + edges.length * bytesOfTable)) {
      for (const x of edges)
        expect(differing(kernel.table("pert", x), standardTable("pert", x)), `mode at ${x}`).toEqual([]);
    }
  });
});
