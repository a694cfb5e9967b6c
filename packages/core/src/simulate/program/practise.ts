import { lastDay, workCalendar } from "../../calendar/workCalendar.ts";
import { bytesOfCalendar, bytesOfRows, bytesOfTable, loadSharedKernel } from "../../kernel/index.ts";
import { blockSize } from "../block.ts";
import { newSteps, step } from "./steps.ts";

/** Calls until the engine has begun to compile what is called well. */
const rounds = 24;
/** As long as a row whose ranks are read. */
const rowLength = 4096;

let practised = false;

/**
 * Has the kernel carry out a program of no meaning on memory that is 0, so that the engine compiles it well before a plan
 * comes that matters: for a thread that waits. What is compiled serves every thread of the process that shares memory
 * (`shareRun`), as engines keep one code for the same module; without it the first block of each thread takes two to
 * three times as long as the others. Changes no number; once a thread is enough.
 *
 * Cost: about 20 milliseconds, and as much of the engine's own threads.
 */
export function practise(): void {
  if (practised) return;
  practised = true;
  const flags = new Uint8Array(lastDay + 1);
  for (let day = 0; day <= lastDay; day++) flags[day] = day % 7 < 5 ? 1 : 0;
  const week = workCalendar(flags);
  const shared = loadSharedKernel(
    bytesOfCalendar(week) +
      4 * bytesOfTable +
      bytesOfRows(16, blockSize, 8) +
      bytesOfRows(4, rowLength, 8) +
      bytesOfRows(4, 4096, 8),
  );
  const wasm = shared?.kernel.wasm;
  if (shared === undefined || wasm === undefined) return;
  const { arena } = shared.kernel;
  const { days, order, last, gap, end } = arena.calendar(week);
  const at = (count: number, length: number) => arena.addresses(count, length, 8);
  const [duration, once, perDay, cost, spare, start, zero, planFinish] = at(8, blockSize) as Eight;
  const [first, second, planDays, movesA, movesB, occurs] = at(6, blockSize) as Eight;
  const [row, scratch, table, told, words, records, small] = at(7, rowLength / 2) as Eight;
  const drawn = new Uint32Array(arena.buffer, records, 48);
  [duration, once, perDay, cost].forEach((out, lane) => {
    drawn.set([words + 160 * lane, table, out, 1], 12 * lane);
  });
  const onCalendar = [days.byteOffset, order.byteOffset] as const;
  const steps = newSteps();
  steps.add(step.clearTold, [256]);
  steps.add(step.draw, [4, records]);
  steps.add(step.uniforms, [words, spare]);
  steps.add(step.occur, [spare, occurs], [0, 0.5]);
  steps.add(step.addImpact, [duration, occurs, once], [1]);
  steps.add(step.sumDuration, [duration, 16]);
  steps.add(step.addDailyCost, [cost, once, duration, 32, 0], [1]);
  const placings: number[] = [];
  for (const [finish, links] of [
    [first, []],
    [second, [first]],
  ] as const) {
    for (const [ofDays, ofOrder] of [[0, 0], onCalendar]) {
      placings.push(steps.length());
      const own = [duration, start, finish, ofDays, ofOrder, planFinish, zero, small];
      steps.add(step.place, [links.length, ...own], [0, last], links);
    }
  }
  steps.add(step.dates, [planFinish, planDays, small + 8]);
  for (const ofDays of [0, days.byteOffset]) {
    steps.add(step.beginMarks, [second, movesB, small, ofDays, planFinish, small + 8, 0], [gap, end]);
    const own = [duration, movesB, start, ofDays, 0, placings[2] as number];
    steps.add(step.mark, [1, ...own], [0, gap, end], [movesA, first]);
  }
  steps.add(step.end, []);
  const program = arena.bytes(1, steps.length())[0] as Uint8Array;
  program.set(steps.bytes());
  const values = new Float64Array(arena.buffer, row, rowLength);
  for (let k = 0; k < rowLength; k++) values[k] = (k * 1.618) % 1;
  const ranks = new Uint32Array(arena.buffer, small + 64, 3);
  ranks.set([400, 2000, 3600]);
  for (let round = 0; round < rounds; round++) {
    wasm.runProgram(program.byteOffset, 0, 0, 0, 0, told, 0, blockSize);
    wasm.rankRow(row, rowLength, small + 64, 3, scratch, rowLength >> 2, told);
    wasm.startsOf(program.byteOffset + (placings[2] as number), scratch, zero, blockSize);
  }
}

type Eight = [number, number, number, number, number, number, number, number];
