import { kernelBytes } from "./bytes.ts";
import type { KernelExports } from "./exports.ts";
import { type Host, type HostWebAssembly, host } from "./host.ts";
import { firstRow, pageSize } from "./layout.ts";
import { simdKernel } from "./simdKernel.ts";
import type { Kernel } from "./types.ts";

// Compiled once; null once it is known to be refused.
let compiled: object | null | undefined;

/**
 * The kernel in WebAssembly with an arena of `room` bytes (`bytesOfRows`, `bytesOfCalendar`); undefined where
 * WebAssembly or its vectors are refused (by the engine, or by a page's security policy) or so much memory is: take
 * `plainKernel` then, which gives the same bits.
 *
 * @param use  "off": undefined, whatever the host can do.
 *
 * Cost   a few tenths of a millisecond for the first, a tenth for each further one; memory is zero pages until written.
 */
export function loadKernel(room: number, use: "on" | "off" = "on"): Kernel | undefined {
  const { WebAssembly: engine, atob: decode } = host();
  if (use === "off" || engine === undefined || decode === undefined) return undefined;
  if (compiled === undefined) compiled = compile(engine, decode);
  if (compiled === null) return undefined;
  const pages = Math.ceil((firstRow + room) / pageSize);
  try {
    const memory = new engine.Memory({ initial: pages, maximum: pages });
    const { exports } = new engine.Instance(compiled, { env: { memory } });
    // The module is ours: its exports are what the interface says.
    return simdKernel(exports as KernelExports, memory.buffer);
  } catch {
    // So much memory is refused; a smaller kernel may still do.
    return undefined;
  }
}

/** Compiling checks the module: an engine without vectors, or a page whose policy forbids it, throws. */
function compile(engine: HostWebAssembly, decode: NonNullable<Host["atob"]>): object | null {
  const text = decode(kernelBytes);
  const bytes = new Uint8Array(text.length);
  for (let k = 0; k < bytes.length; k++) bytes[k] = text.charCodeAt(k);
  try {
    return new engine.Module(bytes);
  } catch {
    return null;
  }
}
