import { loadKernel } from "../../../packages/core/src/kernel/kernel.ts";
import { plainKernel } from "../../../packages/core/src/kernel/plainKernel.ts";
import type { Kernel } from "../../../packages/core/src/kernel/types.ts";
import { seededRng } from "../../oracle/seededRng.ts";

/** The kernel in WebAssembly; the tests of this folder are about it, so a host that refuses it fails them. */
export function simd(room: number): Kernel {
  const kernel = loadKernel(room);
  if (kernel === undefined) throw new Error("This host refuses WebAssembly or its vectors.");
  return kernel;
}

/** Both kernels. */
export function both(room: number): Kernel[] {
  return [simd(room), plainKernel(room)];
}

/** Where two rows differ in any bit (-0 from 0, one NaN from another): the first ten places. */
export function differing(a: Float64Array, b: Float64Array): string[] {
  if (a.length !== b.length) return [`lengths ${a.length} and ${b.length}`];
  const places: string[] = [];
  const x = new BigInt64Array(a.slice().buffer);
  const y = new BigInt64Array(b.slice().buffer);
  for (let k = 0; k < x.length && places.length < 10; k++) {
    if (x[k] !== y[k]) places.push(`[${k}] ${a[k]} and ${b[k]}`);
  }
  return places;
}

const near = 1e-9;
const aside = [0, 0, 0, near, -near, near / 2, -near / 2, 0.5];

/**
 * A moment up to about `most`: anywhere, on the edge of a day, or within a few last digits of the tolerance beside one.
 */
export function moment(random: () => number, most: number): number {
  if (random() < 0.3) return random() * most;
  const day = Math.floor(random() * most);
  const by = aside[Math.floor(random() * aside.length)] as number;
  // A step of the last digit up or down, where the comparison with the tolerance turns.
  const digit = (Math.floor(random() * 5) - 2) * 2 ** (Math.floor(Math.log2(day + 1)) - 52);
  return Math.max(0, day + by + digit);
}

/** A duration: none, as good as none, whole days, beside whole days, anything. */
export function duration(random: () => number, most: number): number {
  const kind = random();
  if (kind < 0.1) return 0;
  if (kind < 0.2) return near * (1 + (Math.floor(random() * 5) - 2) * 2 ** -52);
  return moment(random, most);
}

export const rng = (seed: number): (() => number) => seededRng(seed);
