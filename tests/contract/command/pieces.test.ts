import { readFileSync } from "node:fs";
import { bytesOfSharedPieces } from "@leeway/core";
import { beforeAll, describe, expect, it } from "vitest";
import { pertPiece } from "../../../packages/core/src/sampling/table/pertPiece.ts";
import { build } from "./leeway.ts";

beforeAll(build);

const file = new URL("../../../apps/command/dist/pieces.bin", import.meta.url);

describe("the pieces that the build keeps", () => {
  it("are those the library makes, to the bit", () => {
    const { buffer, byteLength } = new Uint8Array(readFileSync(file));
    expect(byteLength).toBe(bytesOfSharedPieces);
    expect([...new Int32Array(buffer, 0, 4)]).toEqual([1, 1, 1, 1]);
    const values = new Float64Array(buffer, 32);
    for (let number = 0; number < 4; number++) {
      const { nodes, weights, values: byEntry } = pertPiece(number / 8);
      const entries = byEntry.length / nodes.length;
      // The library's own has the nodes of an entry side by side, the kernel's the entries of a node.
      const byNode = Float64Array.from({ length: byEntry.length }, (_, at) => {
        const node = Math.floor(at / entries);
        return byEntry[(at - node * entries) * nodes.length + node] as number;
      });
      const expected = Float64Array.of(...nodes, ...weights, ...byNode);
      const found = values.slice(number * expected.length, (number + 1) * expected.length);
      expect(Buffer.from(found.buffer).equals(Buffer.from(expected.buffer)), `piece ${number}`).toBe(true);
    }
  });
});
