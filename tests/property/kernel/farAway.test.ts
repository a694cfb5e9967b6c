import { describe, expect, it } from "vitest";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { loadKernel } from "../../../packages/core/src/kernel/kernel.ts";
import { bytesOfRanks, rankKeeper, ranksFrom } from "../../../packages/core/src/simulate/ranks/index.ts";
import { seededRng } from "../../oracle/seededRng.ts";

// Rows past two gigabytes of a kernel's memory, where an address does not fit a signed integer of 32 bits. Pages that
// are never written take no memory. Against the same work in memory where addresses are small.

const far = 2 ** 31;

/** A kernel whose next row begins past two gigabytes. */
function farKernel(room: number) {
  const kernel = loadKernel(far + room + 64);
  if (kernel === undefined) throw new Error("Two gigabytes of addresses were refused.");
  kernel.arena.bytes(1, far);
  return kernel;
}

function values(n: number): Float64Array {
  const rng = seededRng(7);
  return Float64Array.from({ length: n }, () => 100 * rng());
}

describe("rows past two gigabytes", () => {
  it("keep the ranks of a row", () => {
    const n = 60_000;
    const ps = [0.1, 0.5, 0.9];
    const kernel = farKernel(bytesOfRanks(1, n, ps) + bytesOfRows(1, n, 8));
    const row = kernel.arena.rows(1, n)[0] as Float64Array;
    expect(row.byteOffset).toBeGreaterThan(far);
    const source = values(n);
    row.set(source);
    const keeper = rankKeeper(kernel, 1, n, ps);
    for (let at = 0; at < n; at += 1000) keeper.absorb(0, row.subarray(at, at + 1000), 1000);
    const sorted = source.slice().sort();
    expect(ranksFrom([keeper.result()], 0)).toEqual(ps.map((p) => sorted[Math.ceil(p * n - 1e-9) - 1]));
    // Read at once, too.
    expect(kernel.selectRanks(row, [1, 30_000, n])).toEqual([sorted[0], sorted[29_999], sorted[n - 1]]);
  });
});
