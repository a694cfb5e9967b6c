import {
  bytesOfRows,
  joinKernel,
  type KernelEntry,
  type KernelExports,
  loadSharedKernel,
  touch,
} from "../../kernel/index.ts";
import type { AsWritten } from "../asWritten.ts";
import { blockSize, bytesOfBlock, bytesOfTables } from "../block.ts";
import type { Model } from "../model.ts";
import type { SimulateOptions } from "../simulate.ts";
import { keepsFinishes, newTrials, type Trials } from "../trials.ts";
import { addToldTo, bytesOfAllTold } from "./addTold.ts";
import { followsProgram } from "./followsProgram.ts";
import { bytesOfStreams, noteStreams, seedLong } from "./seeding.ts";
import { bytesOfWords, streamsOf } from "./streams.ts";
import { toldLayout } from "./told.ts";
import { bytesOfProgram, lawsOf, localRows, newAddresses, writeProgram } from "./writeProgram.ts";

/** What another thread needs to work on a run: memory, module, where in the memory it is told what there is to do. */
export interface RunEntry extends KernelEntry {
  board: number;
}

/**
 * A simulation that several threads work on in one memory. Its parts, tables, then blocks, then percentiles of tasks,
 * are taken piece by piece from counters on a board; who takes which does not matter to what comes out.
 */
export interface SharedRun {
  entry: RunEntry;
  trials: Trials;
  /** Works on a stage until there is nothing left to take. */
  drain(stage: Stage): void;
  /** Whether all that was taken is done. */
  done(stage: Stage): boolean;
  /** Waits a moment for others, at most this many milliseconds. */
  wait(stage: Stage, milliseconds: number): void;
  /** Iterations that are done. */
  iterations(): number;
  /** Writes the program, so that blocks can be taken. */
  write(asWritten: AsWritten): void;
  /** Lets percentiles be taken, when all blocks are done; or says which task ran past its calendar. */
  read(): number | undefined;
  /** Adds up the sums, when all blocks are done: others may read percentiles meanwhile. */
  sum(asWritten: AsWritten): void;
  /** Sends away whoever still waits for something to do. */
  close(): void;
  /** The starts of a task in all iterations, computed again; until the next call. */
  starts(task: number): Float64Array;
  /** Percentiles of all tasks, to be asked once, as `taskRanks` has them, NaN where a row has to be looked at again. */
  ranks(): Float64Array;
}

export type Stage = "tables" | "blocks" | "ranks";

// The board: 32-bit words.
const next = { tables: 0, blocks: 1, ranks: 2 } as const;
const count = { tables: 3, blocks: 4, ranks: 5 } as const;
const finished = { tables: 6, blocks: 7, ranks: 8 } as const;
const ready = { tables: 9, blocks: 10, ranks: 11 } as const;
const at = {
  list: 16,
  tables: 17,
  logCells: 18,
  program: 19,
  told: 20,
  toldBytes: 21,
  iterations: 22,
  span: 23,
  words: 24,
  placing: 25,
  finishes: 26,
  stride: 27,
  tasks: 28,
  wantedOfStarts: 29,
  ofStarts: 30,
  wantedOfFinishes: 31,
  ofFinishes: 32,
  ranks: 33,
  scratch: 34,
  pages: 36,
  beyond: 37,
  threads: 38,
  most: 39,
  closed: 40,
  zeros: 41,
  ofWords: 42,
  decades: 43,
  streams: 44,
  ofStreams: 45,
  leaning: 46,
  /** Stretches of rows to be touched ahead: the next, how many, how many are done. */
  nextStretch: 47,
  stretches: 48,
  touched: 49,
} as const;
const boardLength = 56;

/** Where a step that places a task has the earliest moment. */
const earliestAt = 40;
const pageBytes = 65536;
/** Bytes of rows that are touched ahead at once. */
const stretchBytes = 262144;
const tablesAtOnce = 32;
const streamsAtOnce = 64;
const tasksAtOnce = 8;
const ranksPerTask = 7;

/** Whether a simulation can be shared so: all of it computed by the program, moments kept. */
export function canBeShared(model: Model, options: SimulateOptions): boolean {
  const n = options.iterations ?? model.plan.iterations;
  return (
    followsProgram(model) &&
    keepsFinishes(model, n) &&
    n >= 256 &&
    options.months !== true &&
    (options.design ?? "latin-hypercube") === "latin-hypercube" &&
    options.previous === undefined &&
    options.keep !== true &&
    model.plan.commitment.funds.length === 0 &&
    model.overheads.length === 0 &&
    model.intervals.length === 0 &&
    model.benefits.length === 0 &&
    model.lateness === undefined &&
    model.tasks.length > 0 &&
    model.tasks.every((task) => task.targetDay === undefined)
  );
}

/**
 * undefined where memory cannot be shared.
 *
 * @param wanted  The ranks of starts and finishes that a summary reads, ascending; the former are among the latter.
 * @param begun   Called as soon as others can join, before there is anything to be computed.
 */
export function shareRun(
  model: Model,
  options: SimulateOptions,
  threads: number,
  wanted: { starts: readonly number[]; finishes: readonly number[] },
  begun: (entry: RunEntry) => void,
): SharedRun | undefined {
  const n = options.iterations ?? model.plan.iterations;
  const size = Math.min(n, blockSize);
  const tasks = model.tasks.length;
  const blocks = Math.ceil(n / blockSize);
  const decades = Math.ceil(blocks / 10);
  const layout = toldLayout(model);
  const seeding = streamsOf(model, options.seed ?? model.plan.seed);
  const room = roomFor(n);
  const span = bytesOfBlock(model, size) + bytesOfProgram(model);
  const roomNeeded =
    threads * (span + bytesOfRows(1, room, 8) + pageBytes + 64) +
    bytesOfTables(model) +
    bytesOfRows(tasks + 3, n, 8) +
    bytesOfRows(1, n, 4) +
    bytesOfRows(1, blocks * layout.bytes, 1) +
    bytesOfRows(1, decades * bytesOfWords(model), 1) +
    bytesOfStreams(seeding) +
    bytesOfAllTold(model) +
    bytesOfRows(1, ranksPerTask * tasks, 8) +
    bytesOfRows(1, 32 * model.slots.length, 1) +
    bytesOfRows(2, tasks, 4) +
    bytesOfRows(4, blocks + boardLength + 64, 4);
  const shared = loadSharedKernel(roomNeeded);
  if (shared === undefined) return undefined;
  const { kernel, entry } = shared;
  const { arena, wasm } = kernel;
  if (wasm === undefined) return undefined;
  const board = arena.int32(1, boardLength)[0] as Int32Array;
  const put = (values: Partial<Record<keyof typeof at, number>>) => {
    for (const [name, value] of Object.entries(values)) board[at[name as keyof typeof at]] = value;
  };
  const trials = newTrials(model, undefined, options, { kernel });
  const runEntry = { ...entry, board: board.byteOffset };
  put({
    finishes: addressOf(trials.finishes[0]),
    stride: bytesOfRows(1, n, 8),
    stretches: Math.floor((tasks * bytesOfRows(1, n, 8)) / stretchBytes),
    tasks,
    threads: 1,
    most: threads,
  });
  if (threads > 1) begun(runEntry);
  const before = arena.room;
  const block = newAddresses(model, kernel, size);
  const local = localRows(model, kernel);
  const each = before - arena.room;
  // The others' rows stand behind, in the same order.
  for (let thread = 1; thread < threads; thread++) arena.bytes(1, each - 64);
  const pages = arena.bytes(1, (threads - 1) * pageBytes)[0] as Uint8Array;
  const scratch = arena.rows(threads, room);
  const told = arena.bytes(1, blocks * layout.bytes)[0] as Uint8Array;
  const found = arena.rows(1, ranksPerTask * tasks)[0] as Float64Array;
  const beyond = arena.int32(1, blocks)[0] as Int32Array;
  const placing = arena.int32(1, tasks)[0] as Int32Array;
  const leaning = arena.int32(1, tasks)[0] as Int32Array;
  model.tasks.forEach(({ calendar, links }, j) => {
    if (calendar.everyDay && links.length <= 1) leaning[j] = 1 + (links[0]?.from ?? tasks);
  });
  const [zeros = 0] = arena.addresses(1, n, 8);
  const wantedRows = [wanted.starts, wanted.finishes].map((ranks) => {
    const row = arena.int32(1, ranks.length)[0] as Int32Array;
    row.set(ranks);
    return row;
  }) as [Int32Array, Int32Array];

  const later = { logCells: 0, list: [] as TableToMake[] };
  const laws = lawsOf(model, kernel, later);
  const list = arena.bytes(1, 32 * later.list.length)[0] as Uint8Array;
  noteTables(list, later.list);
  const words = arena.int32(1, (decades * bytesOfWords(model)) >> 2)[0] as Int32Array;
  const streams = noteStreams(arena, seeding);
  put({
    list: list.byteOffset,
    tables: later.list.length,
    logCells: later.logCells,
    told: told.byteOffset,
    toldBytes: layout.bytes,
    iterations: n,
    span: each,
    words: words.byteOffset,
    ofWords: bytesOfWords(model),
    decades,
    streams,
    ofStreams: seeding.length,
    placing: placing.byteOffset,
    leaning: leaning.byteOffset,
    zeros,
    wantedOfStarts: addressOf(wantedRows[0]),
    ofStarts: wanted.starts.length,
    wantedOfFinishes: addressOf(wantedRows[1]),
    ofFinishes: wanted.finishes.length,
    ranks: found.byteOffset,
    scratch: addressOf(scratch[0]),
    pages: pages.byteOffset,
    beyond: beyond.byteOffset,
  });
  board[count.tables] =
    Math.ceil(later.list.length / tablesAtOnce) + Math.ceil(seeding.length / streamsAtOnce);
  board[count.blocks] = blocks;
  board[count.ranks] = Math.ceil(tasks / tasksAtOnce);
  open(board, "tables");

  let taskAt: ReadonlyMap<number, number> = new Map();
  const worker = workerOn(wasm, board, 0);
  return {
    entry: runEntry,
    trials,
    drain: worker.drain,
    done: (stage) => isDone(board, stage),
    wait: (stage, milliseconds) => waitFor(board, stage, milliseconds),
    iterations: () => Math.min(n, blockSize * Atomics.load(board, finished.blocks)),
    write(asWritten) {
      const rows = {
        starts: block.starts,
        finishes: trials.finishes,
        finish: trials.finish,
        finishDay: trials.finishDay,
        cost: trials.cost,
      };
      const at = words.byteOffset;
      const program = writeProgram(model, asWritten, at, kernel, block, local, laws, rows, layout);
      seedLong(seeding, words, decades);
      taskAt = program.taskAt;
      for (const [offset, j] of taskAt) placing[j] = program.at + offset;
      put({ program: program.at });
      stopTouching(board);
      open(board, "blocks");
    },
    read() {
      const first = beyond.findIndex((place) => place > 0);
      if (first >= 0) return taskAt.get((beyond[first] as number) - 1) as number;
      open(board, "ranks");
      return undefined;
    },
    sum(asWritten) {
      addToldTo(trials.sums, kernel, model, asWritten, {
        at: told.byteOffset,
        bytes: layout.bytes,
        blocks,
        n,
      });
    },
    close() {
      Atomics.store(board, at.closed, 1);
      for (const stage of ["blocks", "ranks"] as const) Atomics.notify(board, ready[stage]);
    },
    starts(task) {
      wasm.startsOf(placing[task] as number, addressOf(scratch[0]), zeros, n);
      return (scratch[0] as Float64Array).subarray(0, n);
    },
    ranks() {
      const read = found.slice();
      const doubles = new Float64Array(arena.buffer);
      const places = wanted.starts.map((rank) => wanted.finishes.indexOf(rank));
      for (let j = 0; j < tasks; j++) {
        const from = (leaning[j] as number) - 1;
        if (from < 0) continue;
        const earliest = doubles[((placing[j] as number) + earliestAt) >> 3] as number;
        // Where a row has to be looked at again, only its first says so.
        const first = from === tasks ? 0 : (read[ranksPerTask * from + 3] as number);
        if (Number.isNaN(first)) read[ranksPerTask * j] = first;
        else
          for (let i = 0; i < places.length; i++) {
            const bound =
              from === tasks ? 0 : (read[ranksPerTask * from + 3 + (places[i] as number)] as number);
            read[ranksPerTask * j + i] = bound < earliest ? earliest : bound;
          }
      }
      return read;
    },
  };
}

/** Works on a run that another thread shares, until there is nothing left to do. Waits, so not for a page's own thread. */
export function joinRun(entry: RunEntry): void {
  const board = new Int32Array(entry.memory.buffer, entry.board, boardLength);
  const closed = () => Atomics.load(board, at.closed) === 1;
  const thread = closed() ? Number.POSITIVE_INFINITY : Atomics.add(board, at.threads, 1);
  if (thread >= (board[at.most] as number)) return;
  const kernel = joinKernel(entry);
  let worker: ReturnType<typeof workerOn> | undefined;
  let before: Stage | undefined;
  for (const stage of ["tables", "blocks", "ranks"] as const) {
    while (!closed() && before !== undefined && !isDone(board, before)) waitFor(board, before, patience);
    while (!closed() && Atomics.load(board, ready[stage]) === 0) {
      if (!touchStretch(board)) Atomics.wait(board, ready[stage], 0, patience);
    }
    if (closed()) return;
    worker ??= workerOn(kernel, board, thread);
    worker.drain(stage);
    before = stage;
  }
}

/** Milliseconds after which a thread that waits looks up. */
const patience = 100;

/**
 * Has the system hand out a stretch of the memory that finishes will stand in: for a thread with nothing else to do, as
 * on a virtual machine that can take as long as computing what is written there. Says whether there was one left.
 */
function touchStretch(board: Int32Array): boolean {
  const stretch = Atomics.add(board, at.nextStretch, 1);
  if (stretch >= (board[at.stretches] as number)) return false;
  const from = (board[at.finishes] as number) + stretch * stretchBytes;
  touch(new Int32Array(board.buffer), from, from + stretchBytes);
  Atomics.add(board, at.touched, 1);
  Atomics.notify(board, at.touched);
  return true;
}

/** Waits until nobody touches a row that is about to be written. */
function stopTouching(board: Int32Array): void {
  const all = board[at.stretches] as number;
  const taken = Math.min(all, Atomics.exchange(board, at.nextStretch, all));
  for (let waits = 0; waits < patience; waits++) {
    const done = Atomics.load(board, at.touched);
    // A thread that was lost meanwhile touches nothing any more.
    if (done >= taken) return;
    Atomics.wait(board, at.touched, done, 1);
  }
}

/** Doubles a thread needs while ranks are read: a row, and what is gathered of it. */
function roomFor(n: number): number {
  return n + (n >> 2) + 16;
}

type TableToMake = { piece: number; mirrored: boolean; table: number; x: number };

function noteTables({ buffer, byteOffset }: Uint8Array, tables: readonly TableToMake[]): void {
  const integers = new Uint32Array(buffer, byteOffset, 8 * tables.length);
  const doubles = new Float64Array(buffer, byteOffset, 4 * tables.length);
  tables.forEach(({ piece, mirrored, table, x }, i) => {
    integers[8 * i] = piece;
    integers[8 * i + 1] = mirrored ? 1 : 0;
    integers[8 * i + 2] = table;
    doubles[4 * i + 2] = x;
  });
}

function addressOf(row: { byteOffset: number } | undefined): number {
  return row?.byteOffset ?? 0;
}

function open(board: Int32Array, stage: Stage): void {
  Atomics.store(board, ready[stage], 1);
  Atomics.notify(board, ready[stage]);
}

function isDone(board: Int32Array, stage: Stage): boolean {
  return Atomics.load(board, finished[stage]) >= (board[count[stage]] as number);
}

function waitFor(board: Int32Array, stage: Stage, milliseconds: number): void {
  const done = Atomics.load(board, finished[stage]);
  if (done < (board[count[stage]] as number)) Atomics.wait(board, finished[stage], done, milliseconds);
}

/** What one thread does with a board, through a kernel of its own. */
function workerOn(wasm: KernelExports, board: Int32Array, thread: number): { drain(stage: Stage): void } {
  const of = (name: keyof typeof at) => board[at[name]] as number;
  // The first thread has the memory's own first page.
  if (thread > 0) wasm.usePage(of("pages") + pageBytes * (thread - 1));
  const rows = thread * of("span");
  const n = of("iterations");
  const scratch = of("scratch") + thread * bytesOfRows(1, roomFor(n), 8);
  const work: Record<Stage, (piece: number) => void> = {
    tables(piece) {
      const from = piece * tablesAtOnce;
      const tables = of("tables");
      if (from < tables) {
        wasm.pertTables(of("list"), from, Math.min(tables, from + tablesAtOnce), of("logCells"));
        return;
      }
      const first = streamsAtOnce * (piece - Math.ceil(tables / tablesAtOnce));
      const to = Math.min(of("ofStreams"), first + streamsAtOnce);
      wasm.seedStreams(of("streams"), first, to, of("decades"), of("ofWords"), of("words"));
    },
    blocks(b) {
      const first = b * blockSize;
      const told = of("told") + b * of("toldBytes");
      const decade = Math.floor(b / 10);
      const seed = decade * of("ofWords") + 16 * (b - 10 * decade);
      const size = Math.min(blockSize, n - first);
      const beyond = wasm.runProgram(of("program"), rows, 8 * first, rows, 8 * first, told, seed, size);
      if (beyond < 0) return;
      const blocks = board[count.blocks] as number;
      Atomics.store(new Int32Array(board.buffer, of("beyond"), blocks), b, beyond + 1);
      // Blocks ahead of it are all taken already; those behind are not needed.
      const untaken = blocks - Atomics.exchange(board, next.blocks, blocks);
      if (untaken > 0) Atomics.add(board, finished.blocks, untaken);
    },
    ranks(piece) {
      const from = piece * tasksAtOnce;
      const to = Math.min(of("tasks"), from + tasksAtOnce);
      const placing = new Int32Array(board.buffer, of("placing"), of("tasks"));
      const leaning = new Int32Array(board.buffer, of("leaning"), of("tasks"));
      const rank = (row: number, wanted: number, ranks: number, into: number) =>
        wasm.rankRow(row, n, ranks, wanted, scratch + 8 * n + 64, n >> 2, into);
      for (let j = from; j < to; j++) {
        const out = of("ranks") + 8 * ranksPerTask * j;
        if (leaning[j] === 0) {
          wasm.startsOf(placing[j] as number, scratch, of("zeros"), n);
          rank(scratch, of("ofStarts"), of("wantedOfStarts"), out);
        }
        rank(of("finishes") + j * of("stride"), of("ofFinishes"), of("wantedOfFinishes"), out + 24);
      }
    },
  };
  return {
    drain(stage) {
      const pieces = board[count[stage]] as number;
      for (
        let piece = Atomics.add(board, next[stage], 1);
        piece < pieces;
        piece = Atomics.add(board, next[stage], 1)
      ) {
        work[stage](piece);
        Atomics.add(board, finished[stage], 1);
        Atomics.notify(board, finished[stage]);
      }
    },
  };
}
