import type { Shape } from "../plan/types.ts";
import { betaSide } from "../sampling/shapes/betaSide.ts";
import { bodyLength, tableLength, tailLength } from "../sampling/table/layout.ts";
import { nodeCount, pertNodes, pertSplit, pertWeights, pieceLogs } from "../sampling/table/pertPiece.ts";
import { logCell, pieceOf } from "../sampling/table/pertTable.ts";
import { standardTable } from "../sampling/table/standardTable.ts";
import { type Arena, bytesOfRows } from "./arena.ts";
import type { KernelExports } from "./exports.ts";

const tailEntries = tailLength - 1;
/** Entries of a piece for one node: two tails and the body. */
const entries = 2 * tailEntries + bodyLength;
const pieceLength = (2 + entries) * nodeCount;
const sideLength = 51;

/** Bytes that a quantile table takes in an arena. */
export const bytesOfTable = bytesOfRows(1, tableLength, 8);

/** Bytes that everything takes from which PERT tables are made. */
export const bytesOfPieces =
  bytesOfRows(4, pieceLength, 8) +
  bytesOfRows(1, tailEntries, 8) +
  bytesOfRows(1, bodyLength, 8) +
  bytesOfRows(1, logCell.length, 8) +
  bytesOfRows(2, sideLength, 8);

// Made once, then copied into each kernel that needs them.
const made: (Float64Array | undefined)[] = [];

/** Bytes of memory in which threads share what PERT tables are made from. */
export const bytesOfSharedPieces = 4 * (8 + 8 * pieceLength);
let shared: SharedArrayBuffer | undefined;

/**
 * From now on what PERT tables are made from is looked for in `memory` (`bytesOfSharedPieces`), and left there when it is
 * made: threads that are given the same memory make it once. Changes no number.
 */
export function sharePieces(memory: SharedArrayBuffer): void {
  shared = memory;
  made.forEach((piece, number) => {
    if (piece !== undefined) leaveToOthers(number, piece);
  });
}

/** A piece that somebody has left in shared memory; its flag is set when it is whole. */
function fromOthers(number: number): Float64Array | undefined {
  if (shared === undefined || Atomics.load(new Int32Array(shared, 0, 4), number) === 0) return undefined;
  return new Float64Array(shared, 32 + 8 * pieceLength * number, pieceLength).slice();
}

function leaveToOthers(number: number, piece: Float64Array): void {
  if (shared === undefined) return;
  new Float64Array(shared, 32 + 8 * pieceLength * number, pieceLength).set(piece);
  Atomics.store(new Int32Array(shared, 0, 4), number, 1);
}

/** PERT tables that are still to be made, 32 bytes each as `KernelExports.pertTables` takes them. */
export interface TablesToMake {
  logCells: number;
  list: { piece: number; mirrored: boolean; table: number; x: number }[];
}

/**
 * Quantile tables in a kernel's memory: PERT tables are made there, at once or, when `later` is given, by whoever works
 * through it; the others are copied.
 */
export function tablesFor(
  wasm: KernelExports,
  arena: Arena,
): (shape: Shape, parameter: number, later?: TablesToMake) => Float64Array {
  const known = new Map<string | number, Float64Array>();
  const pieces: (Float64Array | undefined)[] = [];
  let logCells: Float64Array | undefined;
  const row = (length: number) => arena.rows(1, length)[0] as Float64Array;

  const pieceAt = (number: number): Float64Array => {
    const piece = row(pieceLength);
    const before = made[number] ?? fromOthers(number);
    if (before === undefined) {
      makePiece(wasm, piece, number / 8, row);
      leaveToOthers(number, piece);
    } else piece.set(before);
    made[number] = before ?? piece.slice();
    return piece;
  };

  return (shape, parameter, later) => {
    // A number is looked up as it is: writing thousands of them out takes milliseconds.
    const key = shape === "pert" ? parameter : `${shape} ${parameter}`;
    let table = known.get(key);
    if (table !== undefined) return table;
    if (shape === "pert") {
      const mirrored = parameter > 0.5;
      const x = mirrored ? 1 - parameter : parameter;
      const number = pieceOf(x);
      const piece = pieces[number] ?? pieceAt(number);
      pieces[number] = piece;
      if (logCells === undefined) {
        logCells = row(logCell.length);
        logCells.set(logCell);
      }
      table = row(tableLength);
      if (later === undefined) {
        wasm.pertTable(piece.byteOffset, logCells.byteOffset, x, mirrored ? 1 : 0, table.byteOffset);
      } else {
        later.logCells = logCells.byteOffset;
        later.list.push({ piece: piece.byteOffset, mirrored, table: table.byteOffset, x });
      }
    } else table = arena.table(standardTable(shape, parameter));
    known.set(key, table);
    return table;
  };
}

// Rows that are only needed while pieces are made, by the kernel they belong to.
const tools = new WeakMap<
  KernelExports,
  { tails: Float64Array; body: Float64Array; sides: Float64Array[] }
>();

function makePiece(
  wasm: KernelExports,
  piece: Float64Array,
  from: number,
  row: (length: number) => Float64Array,
): void {
  let own = tools.get(wasm);
  if (own === undefined) {
    own = { tails: row(tailEntries), body: row(bodyLength), sides: [row(sideLength), row(sideLength)] };
    const { tail, body } = pieceLogs();
    own.tails.set(tail.subarray(1));
    own.body.set(body);
    tools.set(wasm, own);
  }
  const [left, right] = own.sides as [Float64Array, Float64Array];
  const nodes = pertNodes(from);
  piece.set(nodes);
  piece.set(pertWeights(nodes), nodeCount);
  for (let j = 0; j < nodeCount; j++) {
    const x = nodes[j] as number;
    const half = betaSide(4 * x);
    fillSide(left, half);
    fillSide(right, betaSide(4 - 4 * x));
    const at = piece.byteOffset + 8 * (2 * nodeCount + j * entries);
    wasm.pertTail(left.byteOffset, own.tails.byteOffset, at);
    wasm.pertTail(right.byteOffset, own.tails.byteOffset, at + 8 * tailEntries);
    wasm.pertBody(
      left.byteOffset,
      right.byteOffset,
      own.body.byteOffset,
      pertSplit(half.atHalf),
      at + 16 * tailEntries,
    );
  }
}

function fillSide(into: Float64Array, side: ReturnType<typeof betaSide>): void {
  into[0] = side.alpha;
  into[1] = side.beta - 1;
  into[2] = side.logB;
  into.set(side.coefficients, 3);
}
