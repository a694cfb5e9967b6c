import { kernelBytes } from "./bytes.ts";
import type { KernelExports } from "./exports.ts";
import { type Host, type HostMemory, type HostWebAssembly, host } from "./host.ts";
import { firstRow, pageSize } from "./layout.ts";
import { simdKernel } from "./simdKernel.ts";
import { takeSpare } from "./spare.ts";
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
  const { WebAssembly: engine } = host();
  if (use === "off" || engine === undefined) return undefined;
  if (compiled === undefined) compiled = compile(engine);
  if (compiled === null) return undefined;
  const pages = Math.ceil((firstRow + room) / pageSize);
  try {
    const used = takeUsed(pages * pageSize);
    const memory = used?.memory ?? new engine.Memory({ initial: pages, maximum: pages });
    const { exports } = new engine.Instance(compiled, { env: { memory } });
    // The module is ours: its exports are what the interface says.
    const kernel = simdKernel(exports as KernelExports, memory.buffer, used?.clean);
    memories.set(kernel, memory);
    return kernel;
  } catch {
    // So much memory is refused; a smaller kernel may still do.
    return undefined;
  }
}

// Whose memory can be used again.
const memories = new WeakMap<Kernel, HostMemory>();
let left: { memory: HostMemory; clean: number } | undefined;

/**
 * Leaves the memory of a kernel that is done with to the next one that needs about as much: having the system hand out
 * new memory can take longer than computing what is written there. No row of it may be read or written any more. One
 * memory is kept; for programs that simulate again and again.
 */
export function leaveMemory(kernel: Kernel): void {
  const memory = memories.get(kernel);
  memories.delete(kernel);
  if (memory !== undefined) left = { memory, clean: kernel.arena.clean };
}

/** The memory that was left, if it is large enough, and no more than four times as large. */
function takeUsed(bytes: number): { memory: HostMemory; clean: number } | undefined {
  const size = left?.memory.buffer.byteLength ?? 0;
  if (size < bytes || size > 4 * bytes) return undefined;
  const taken = left;
  left = undefined;
  return taken;
}

/** A kernel in memory that threads can share, and what another thread needs to join in (`joinKernel`). */
export interface SharedKernel {
  kernel: Kernel;
  /** Can be posted to a thread. */
  entry: KernelEntry;
}

export interface KernelEntry {
  module: object;
  memory: HostMemory;
}

let compiledToShare: object | null | undefined;

/**
 * `loadKernel` in memory that threads share, the spare one if there is one (`spareMemory`); undefined where the host
 * cannot. `arena` belongs to the thread that made it.
 */
export function loadSharedKernel(room: number): SharedKernel | undefined {
  const { WebAssembly: engine } = host();
  if (engine === undefined) return undefined;
  if (compiledToShare === undefined) compiledToShare = compile(engine, sharing);
  if (compiledToShare === null) return undefined;
  const pages = Math.ceil((firstRow + room) / pageSize);
  try {
    const memory = takeSpare(pages) ?? new engine.Memory({ initial: pages, maximum: pages, shared: true });
    const wasm = joinKernel({ module: compiledToShare, memory });
    return { kernel: simdKernel(wasm, memory.buffer), entry: { module: compiledToShare, memory } };
  } catch {
    return undefined;
  }
}

/** The kernel's functions in another thread; it must have a page of its own (`usePage`) before it calls any other. */
export function joinKernel({ module, memory }: KernelEntry): KernelExports {
  const { WebAssembly: engine } = host();
  if (engine === undefined) throw new Error("There is no WebAssembly.");
  return new engine.Instance(module, { env: { memory } }).exports as KernelExports;
}

/** The same module, importing memory that is shared: then its greatest size must be stated, and is 65,536 pages. */
function sharing(bytes: Uint8Array): Uint8Array {
  // The module's second section is the import of its memory: kind 2, no flags, at least one page.
  const end = importEnd(bytes);
  const shared = new Uint8Array(bytes.length + 3);
  shared.set(bytes.subarray(0, end));
  shared.set([0x03, 0x01, 0x80, 0x80, 0x04], end - 2);
  shared.set(bytes.subarray(end), end + 3);
  const length = end - 16;
  shared[length] = (shared[length] as number) + 3;
  return shared;
}

/** Where the import of "env" "memory" ends, 15 bytes after its section's length. */
function importEnd(bytes: Uint8Array): number {
  const wanted = [0x02, 0x0f, 0x01, 0x03, 0x65, 0x6e, 0x76, 0x06];
  for (let at = 8; at < bytes.length - 17; at++) {
    if (wanted.every((byte, k) => bytes[at + k] === byte)) return at + 17;
  }
  throw new Error("The kernel imports no memory.");
}

/** Compiling checks the module: an engine without vectors, or a page whose policy forbids it, throws. */
function compile(
  engine: HostWebAssembly,
  change: (bytes: Uint8Array) => Uint8Array = (bytes) => bytes,
): object | null {
  const bytes = decoded(host());
  if (bytes === undefined) return null;
  try {
    return new engine.Module(change(bytes));
  } catch {
    return null;
  }
}

function decoded({ Buffer, atob }: Host): Uint8Array | undefined {
  if (Buffer !== undefined) return Buffer.from(kernelBytes, "base64");
  if (atob === undefined) return undefined;
  const text = atob(kernelBytes);
  const bytes = new Uint8Array(text.length);
  for (let k = 0; k < bytes.length; k++) bytes[k] = text.charCodeAt(k);
  return bytes;
}
