import { bytesOfSharedPieces, makePieces, sharePieces } from "@leeway/core";

/** What PERT tables are made from, as the build keeps it beside the command: see compute/pieces.ts. */
export function piecesFile(): Uint8Array {
  const memory = new SharedArrayBuffer(bytesOfSharedPieces);
  sharePieces(memory);
  makePieces();
  return new Uint8Array(memory).slice();
}
