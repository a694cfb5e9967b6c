import { readFileSync } from "node:fs";
import { bytesOfSharedPieces, sharePieces } from "@leeway/core";

/** What the build leaves beside the command: `makePieces.ts`. */
const file = new URL("./pieces.bin", import.meta.url);

/**
 * Takes what PERT tables are made from out of the file that the build left, which saves 20 milliseconds of a cold start.
 * Without the file it is made anew, to the same bits.
 */
export function takePieces(): void {
  try {
    const bytes = readFileSync(file);
    if (bytes.byteLength !== bytesOfSharedPieces) return;
    const memory = new SharedArrayBuffer(bytes.byteLength);
    new Uint8Array(memory).set(bytes);
    sharePieces(memory);
  } catch {
    // There is none: it is made anew.
  }
}
