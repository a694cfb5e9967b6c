import { type HostMemory, host } from "./host.ts";
import { firstRow, pageSize, touchAt } from "./layout.ts";

/** What the word at `touchAt` says. */
const untouched = 0;
const touching = 1;
const stopping = 2;
const over = 3;

/** Bytes that the system hands out at once, as a rule; where it hands out more, less is left to do. */
const step = 4096;
/** Steps between two looks at the word: a fifth of a millisecond where memory is handed out slowly. */
const stepsAtOnce = 16;
/** Milliseconds to wait for a thread to stop; after them it is taken for lost, and the memory with it. */
const patience = 250;

/** The largest memory of a module that shares one, in pages. */
const mostPages = 65536;

let spare: HostMemory | undefined;

/**
 * Memory for the next shared kernel (`loadSharedKernel`), made before it is known how much will be needed, so that
 * another thread can have the system hand it out meanwhile (`touchMemory`). On a virtual machine that can take longer
 * than computing what is written there.
 *
 * undefined where the host cannot. What is not taken is to be dropped (`dropSpare`).
 */
export function spareMemory(bytes: number): HostMemory | undefined {
  const { WebAssembly: engine } = host();
  dropSpare();
  if (engine === undefined) return undefined;
  const initial = Math.min(mostPages, Math.ceil((firstRow + bytes) / pageSize));
  try {
    spare = new engine.Memory({ initial, maximum: mostPages, shared: true });
  } catch {
    // So much memory is refused; a run asks again for what it needs.
  }
  return spare;
}

/** The spare memory, no longer touched by anybody, with at least so many pages; undefined where there is none. */
export function takeSpare(pages: number): HostMemory | undefined {
  const memory = spare;
  if (memory === undefined || !dropSpare()) return undefined;
  const missing = pages - memory.buffer.byteLength / pageSize;
  try {
    if (missing > 0) memory.grow(missing);
    return memory;
  } catch {
    return undefined;
  }
}

/** Gives up the spare memory and says whether whoever touches it has stopped. */
export function dropSpare(): boolean {
  if (spare === undefined) return true;
  const words = new Int32Array(spare.buffer);
  const at = touchAt / 4;
  spare = undefined;
  if (Atomics.compareExchange(words, at, untouched, over) === untouched) return true;
  if (Atomics.compareExchange(words, at, touching, stopping) === touching) {
    Atomics.wait(words, at, stopping, patience);
  }
  return Atomics.load(words, at) === over;
}

/**
 * Has the system hand out all of a spare memory, page by page, until it is taken. For a thread that waits. Changes nothing
 * in it.
 *
 * Cost: 0.1 to 12 microseconds for each 4 kilobytes, by machine.
 */
export function touchMemory({ buffer }: HostMemory): void {
  const words = new Int32Array(buffer);
  const at = touchAt / 4;
  if (Atomics.compareExchange(words, at, untouched, touching) !== untouched) return;
  for (let from = firstRow; from < buffer.byteLength; from += step * stepsAtOnce) {
    if (Atomics.load(words, at) !== touching) break;
    touch(words, from, Math.min(buffer.byteLength, from + step * stepsAtOnce));
  }
  Atomics.store(words, at, over);
  Atomics.notify(words, at);
}

/** Has the system hand out the bytes from `from` up to `to`. Reading would not do: what was never written is shared. */
export function touch(words: Int32Array, from: number, to: number): void {
  for (let byte = from; byte < to; byte += step) Atomics.add(words, byte >> 2, 0);
}
