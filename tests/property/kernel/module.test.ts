import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { compileKernel, sourceOf } from "../../../packages/core/kernel/build.mjs";
import { bytesOfRows } from "../../../packages/core/src/kernel/arena.ts";
import { kernelBytes } from "../../../packages/core/src/kernel/bytes.ts";
import { loadKernel } from "../../../packages/core/src/kernel/kernel.ts";
import { plainKernel } from "../../../packages/core/src/kernel/plainKernel.ts";
import { simd } from "./kernels.ts";

describe("the committed module", () => {
  it("is what its sources compile to", async () => {
    const bytes = await compileKernel();
    const file = new URL("../../../packages/core/src/kernel/bytes.ts", import.meta.url);
    expect(readFileSync(file, "utf8")).toBe(sourceOf(bytes));
    expect(Buffer.from(kernelBytes, "base64").equals(Buffer.from(bytes))).toBe(true);
  });

  it("asks for a memory and nothing else", () => {
    const module = new WebAssembly.Module(Buffer.from(kernelBytes, "base64"));
    expect(WebAssembly.Module.imports(module)).toEqual([{ module: "env", name: "memory", kind: "memory" }]);
    expect(new Set(WebAssembly.Module.exports(module).map(({ kind }) => kind))).toEqual(
      new Set(["function"]),
    );
  });
});

describe("loadKernel(room, use)", () => {
  it("answers undefined when switched off, and where so much memory is refused", () => {
    expect(loadKernel(1000, "off")).toBe(undefined);
    expect(loadKernel(2 ** 40)).toBe(undefined);
    expect(loadKernel(1000)?.lane).toBe("simd");
  });

  it("answers undefined where the host has no WebAssembly, or refuses it", () => {
    const host = globalThis.WebAssembly;
    try {
      Reflect.deleteProperty(globalThis, "WebAssembly");
      expect(loadKernel(1000)).toBe(undefined);
    } finally {
      globalThis.WebAssembly = host;
    }
    expect(loadKernel(1000)?.lane).toBe("simd");
  });

  it("gives kernels with the same methods", () => {
    expect(Object.keys(simd(1000)).sort()).toEqual(Object.keys(plainKernel(1000)).sort());
  });

  it("keeps the memory of one kernel apart from another's", () => {
    const [a] = simd(bytesOfRows(1, 4, 8)).arena.rows(1, 4) as [Float64Array];
    const [b] = simd(bytesOfRows(1, 4, 8)).arena.rows(1, 4) as [Float64Array];
    a.fill(1);
    expect([...b]).toEqual([0, 0, 0, 0]);
  });
});

describe("the arena", () => {
  it("hands out as much as bytesOfRows says and refuses more", () => {
    const room = bytesOfRows(3, 1024, 8) + bytesOfRows(2, 1000, 1) + bytesOfRows(1, 7, 4);
    for (const { arena } of [simd(room), plainKernel(room)]) {
      const rows = [...arena.rows(3, 1024), ...arena.bytes(2, 1000), ...arena.int32(1, 7)];
      const ends = rows.map((row) => [row.byteOffset, row.byteOffset + row.byteLength]);
      ends.forEach(([from], i) => {
        expect((from as number) % 16).toBe(0);
        expect(from).toBeGreaterThanOrEqual(i === 0 ? 0 : ((ends[i - 1] as number[])[1] as number) + 15);
      });
      expect(() => arena.rows(20, 1024)).toThrow(RangeError);
    }
  });

  it("hands out rows of 0 where the kernel has worked before", () => {
    const kernel = simd(100_000);
    const values = Float64Array.from({ length: 4000 }, (_, k) => 1 + ((k * 7919) % 4000));
    expect(kernel.selectRanks(values, [1, 4000])).toEqual([1, 4000]);
    expect(kernel.arena.rows(4, 1024).every((row) => row.every((value) => value === 0))).toBe(true);
  });

  it("copies a table once", () => {
    for (const { arena } of [simd(100_000), plainKernel(100_000)]) {
      const table = Float64Array.of(1, 2, 3);
      const copy = arena.table(table);
      expect([...copy]).toEqual([1, 2, 3]);
      expect(copy.buffer).not.toBe(table.buffer);
      expect(arena.table(table)).toBe(copy);
    }
  });
});
