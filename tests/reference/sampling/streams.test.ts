import { describe, expect, it } from "vitest";
import {
  blockSize,
  type Design,
  fillUniforms,
  seedBlock,
} from "../../../packages/core/src/sampling/index.ts";
import { fillSfc32 } from "../../../packages/core/src/sampling/streams/fillSfc32.ts";

const block = (design: Design, seed: string, item: string, purpose: string, number = 0): Float64Array =>
  fillUniforms(design, seed, item, purpose, number, new Float64Array(blockSize));

describe("fillSfc32(seed, out), known answers", () => {
  // Apache Commons RNG, DotyHumphreySmallFastCounting32Test (read): the first 40 outputs of sfc32 of PractRand 0.94,
  // the C++ original, for this seed of three words; counter 1, 15 outputs thrown away.
  it("gives the outputs of PractRand's own sfc32", () => {
    const expected = [
      0x89b5c414, 0x7ee57639, 0xdbe18f7b, 0x94aa0162, 0xa22bff0a, 0x21c91fb8, 0x2c6fd6fe, 0xcda90d13,
      0x019684ca, 0xe5b400c0, 0x459d8590, 0x3aec0a1e, 0x254dac77, 0xbe10ae80, 0x9ac27819, 0xd17d10c6,
      0x71a69026, 0x4bb2bdda, 0x70853646, 0xda28f272, 0x879200d9, 0x8c2f8b5b, 0x8a87cb78, 0x27ffdced,
      0x988a2b7b, 0xf220ef9b, 0x13b8984f, 0x345d1732, 0x8f5bc6fc, 0x092b09ff, 0x046bd2b0, 0xa5a99fc5,
      0x19400604, 0xb76e7394, 0x037addd5, 0xe916ed79, 0x94f10dc6, 0xf2ecb45e, 0x69834355, 0xb814aeb2,
    ];
    const seed = Uint32Array.of(0xbb3c4104, 0x02294965, 0xda1ce2a9, 1);
    expect([...fillSfc32(seed, new Uint32Array(40))]).toEqual(expected);
  });

  it("goes on where a shorter fill stopped", () => {
    const seed = Uint32Array.of(1, 2, 3, 4);
    const long = fillSfc32(seed, new Uint32Array(50));
    expect([...fillSfc32(seed, new Uint32Array(20))]).toEqual([...long.subarray(0, 20)]);
  });
});

// Addresses. No published values: the first words are written down here so that a change of the address, the hash or
// the order of words cannot pass unseen, since it would change every forecast.
describe("seedBlock(seed, item, purpose, block)", () => {
  it("is pinned", () => {
    expect([...seedBlock("leeway", "design", "duration", 0)]).toEqual([
      1390519593, 1543615735, 1026995416, 3353147287,
    ]);
  });

  it("gives the same words for the same address, whatever was asked in between", () => {
    const first = [...seedBlock("leeway", "design", "duration", 3)];
    seedBlock("other", "design", "duration", 3);
    expect([...seedBlock("leeway", "design", "duration", 3)]).toEqual(first);
  });

  it("tells apart addresses that read alike", () => {
    const addresses: [string, string, string, number][] = [
      ["1", "a", "duration", 0],
      ["11", "a", "duration", 0],
      ["1", "1a", "duration", 0],
      ["", "11a", "duration", 0],
      ["1", "a", "duration", 1],
      ["1", "a", "duration", 11],
      ["1", "ad", "uration", 0],
      ["1", "a", "duration0", 0],
      ["1", "aduration", "", 0],
      ["1", "a\u0000", "duration", 0],
      ["1\u0000a", "", "duration", 0],
      ["1", "duration", "a", 0],
      ["0", "a", "duration", 0],
    ];
    const words = addresses.map((address) => seedBlock(...address).join());
    expect(new Set(words).size).toBe(addresses.length);
  });

  it("has no equal seeds in 40,000 neighbouring addresses", () => {
    const seen = new Set<string>();
    for (let item = 0; item < 400; item++) {
      for (let number = 0; number < 100; number++)
        seen.add(seedBlock("leeway", `t${item}`, "duration", number).join());
    }
    expect(seen.size).toBe(40_000);
  });
});

describe.each<Design>(["plain", "latin-hypercube"])("fillUniforms(%s, ...)", (design) => {
  it("is a function of its address alone", () => {
    const first = block(design, "leeway", "design", "duration", 2);
    block(design, "leeway", "build", "duration", 0);
    expect([...block(design, "leeway", "design", "duration", 2)]).toEqual([...first]);
    for (const other of [
      block(design, "leeway2", "design", "duration", 2),
      block(design, "leeway", "desig", "nduration", 2),
      block(design, "leeway", "design", "duration", 1),
    ]) {
      let equal = 0;
      for (let i = 0; i < blockSize; i++) if (other[i] === first[i]) equal++;
      expect(equal).toBe(0);
    }
  });

  it("writes 1,024 numbers strictly inside (0, 1) from the offset on, and nothing else", () => {
    const out = new Float64Array(blockSize + 7).fill(-1);
    fillUniforms(design, "leeway", "design", "duration", 0, out, 3);
    expect([out[0], out[2], out[3 + blockSize], out[6 + blockSize]]).toEqual([-1, -1, -1, -1]);
    for (let i = 3; i < 3 + blockSize; i++) {
      const u = out[i] ?? Number.NaN;
      expect(u > 0 && u < 1).toBe(true);
      // A multiple of 2^-43: so the distance to 1 is exact as well.
      expect(Number.isInteger(u * 2 ** 43)).toBe(true);
    }
  });

  // Pearson's chi-square over 256 equal cells, 8,192 items: 255 degrees of freedom. Quantiles at
  // 1e-6 and 1 - 1e-6 from SciPy 1.17 (chi2.isf): with an arbitrary seed this fails by luck twice in a million.
  it("is uniform over items at one place of the block", () => {
    const cells = new Float64Array(256);
    const places = [0, 1, 511, 1023];
    const items = 8192;
    for (let item = 0; item < items; item++) {
      const u = block(design, "leeway", `item-${item}`, "duration");
      for (const place of places) {
        const cell = Math.floor((u[place] ?? 0) * 256);
        cells[cell] = (cells[cell] ?? 0) + 1;
      }
    }
    const expected = (items * places.length) / 256;
    let chi = 0;
    for (const count of cells) chi += (count - expected) ** 2 / expected;
    // Under the Latin hypercube draws of one block repel each other, by one part in 1,024: nothing at this size.
    expect(chi).toBeGreaterThan(161.65);
    expect(chi).toBeLessThan(377.08);
  });

  // The correlation of neighbouring addresses: 300 pairs, each with standard error 1/32 (plain) or less; the mean
  // square times 1,023 follows chi-square over 300 pairs, here compared at 6 standard errors (1e-8 or so by luck).
  it("has no correlation between neighbouring items and blocks", () => {
    let sum = 0;
    const pairs = 300;
    for (let k = 0; k < pairs; k++) {
      const a = block(design, "leeway", `t${k}`, "duration", k);
      const b =
        k % 2 === 0
          ? block(design, "leeway", `t${k + 1}`, "duration", k)
          : block(design, "leeway", `t${k}`, "duration", k + 1);
      let product = 0;
      for (let i = 0; i < blockSize; i++) product += ((a[i] ?? 0) - 0.5) * ((b[i] ?? 0) - 0.5);
      sum += ((product * 12) / blockSize) ** 2 * blockSize;
    }
    expect(Math.abs(sum / pairs - 1)).toBeLessThan(6 * Math.sqrt(2 / pairs));
  });
});

describe("plain", () => {
  it("is pinned, and is the generator's words in order", () => {
    const words = fillSfc32(seedBlock("leeway", "design", "duration", 0), new Uint32Array(blockSize));
    const u = block("plain", "leeway", "design", "duration");
    for (let i = 0; i < blockSize; i++) expect(u[i]).toBe(((words[i] ?? 0) + 0.5) / 2 ** 32);
    expect([...u.subarray(0, 3)]).toEqual([0.6146891306852922, 0.6836134054465219, 0.5618536522379145]);
  });
});

describe("latin-hypercube", () => {
  it("is pinned", () => {
    expect([...block("latin-hypercube", "leeway", "design", "duration").subarray(0, 3)]).toEqual([
      0.10826265211187547, 0.06660775714851752, 0.10649598377892744,
    ]);
  });

  // McKay, Beckman & Conover (1979), Technometrics 21(2), 239-245 (recalled): one draw in each stratum.
  it("has exactly one draw in each of the 1,024 strata of every block", () => {
    for (let number = 0; number < 20; number++) {
      const seen = new Uint8Array(blockSize);
      for (const u of block("latin-hypercube", "leeway", "design", "duration", number)) {
        const stratum = Math.floor(u * blockSize);
        seen[stratum] = (seen[stratum] ?? 0) + 1;
      }
      expect(seen.every((count) => count === 1)).toBe(true);
    }
  });

  // Knuth, The Art of Computer Programming 2, 3.4.2 (recalled): every order of a shuffle is equally likely, so each
  // stratum is equally likely at each place. 16 places, 16 classes of stratum, 4,096 blocks: chi-square with
  // 16 x 15 = 240 degrees of freedom, standard deviation 21.9, compared at 5 of them: by luck once in 10^5 seeds.
  it("puts every stratum at every place equally often", () => {
    const counts = new Float64Array(256);
    const blocks = 4096;
    for (let number = 0; number < blocks; number++) {
      const u = block("latin-hypercube", "shuffle", "a", "duration", number);
      for (let i = 0; i < blockSize; i += 64) {
        const cell = (i / 64) * 16 + Math.floor((u[i] ?? 0) * 16);
        counts[cell] = (counts[cell] ?? 0) + 1;
      }
    }
    let chi = 0;
    for (const count of counts) chi += (count - blocks / 16) ** 2 / (blocks / 16);
    expect(chi).toBeGreaterThan(240 - 5 * 21.9);
    expect(chi).toBeLessThan(240 + 5 * 21.9);
  });

  // Stein (1987), Technometrics 29(2), 143-151; derived: the mean of d uniforms over n points has variance d / (12 n)
  // with plain draws and d / (12 n^3) with one draw in each of n strata. 600 replications: a variance estimate has a
  // relative standard error of sqrt(2 / 600) = 5.8 %; the bound of 30 % is 5 of them.
  it("lowers the variance of a sum of uniforms from d/(12 n) to d/(12 n^3)", () => {
    const replications = 600;
    for (const d of [2, 5]) {
      for (const [design, variance] of [
        ["plain", d / (12 * blockSize)],
        ["latin-hypercube", d / (12 * blockSize ** 3)],
      ] as const) {
        let sum = 0;
        for (let r = 0; r < replications; r++) {
          let mean = 0;
          for (let k = 0; k < d; k++)
            for (const u of block(design, "sum", `x${k}`, "duration", r)) mean += u - 0.5;
          sum += (mean / blockSize) ** 2;
        }
        expect(Math.abs(sum / replications / variance - 1)).toBeLessThan(0.3);
      }
    }
  });
});
