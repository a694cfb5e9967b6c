import { drawRecords } from "./drawMany";
import { fillLatin } from "./draws";
import { TOLERANCE } from "./layout";
import { lookUpOutcomes } from "./lookUp";
import { anySet, markFinish, markSimple, occur } from "./mark";
import { scaleTo } from "./place";
import { boundBy, datesOf, placeEveryDay, placeOnCalendar, startsFrom } from "./programPlace";
import { sumDuration, sumImpact, sumMoving } from "./programTold";
import {
  addCost,
  addCostWhere,
  addDailyCost,
  addImpact,
  addTaskCost,
  multiplyImpact,
  sumProductsInto,
} from "./sums";

// A program is what a block of a simulation does, step by step: written once from a model
// (packages/core/src/simulate/program/writeProgram.ts), carried out for every block by whoever has the memory.
//
// A step is a number of 32-bit words, the first of which says what it is; doubles stand at multiples of eight bytes.
// Addresses are of three kinds: of rows of the block, to which `rows` is added (each thread has its own); of rows of all
// iterations, to which `place` (moments) or `top` (the plan's finish and cost) is added; and of what all blocks read. Starts
// may be kept or not, so they have a beginning of their own, `starts`.
// What a step tells goes to the block's answers, at an offset.

/**
 * Carries out a program for one block of n iterations. `seed`: from the beginning of a stream's words to those of the
 * block. Returns where in the program a task ran past day 36,525, or -1.
 */
export function runProgram(
  program: usize,
  rows: usize,
  place: usize,
  starts: usize,
  top: usize,
  told: usize,
  seed: usize,
  n: usize,
): i32 {
  let p = program;
  for (;;) {
    const op = load<u32>(p);
    if (op === 16) {
      const links = <usize>load<u32>(p, 4);
      const days = <usize>load<u32>(p, 20);
      const duration = rows + load<u32>(p, 8);
      const start = starts + load<u32>(p, 12);
      const finish = place + load<u32>(p, 16);
      const list = p + 56;
      const lower = boundBy(list, links, place, start, rows + load<u32>(p, 32), n);
      const a = lower;
      const b = links > 1 && links <= 3 ? place + load<u32>(list, 4) : lower;
      const c = links === 3 ? place + load<u32>(list, 8) : b;
      const planFinish = top + load<u32>(p, 28);
      const latest =
        days === 0
          ? placeEveryDay(a, b, c, duration, start, finish, planFinish, load<f64>(p, 40), n)
          : placeOnCalendar(
              days,
              load<u32>(p, 24),
              load<f64>(p, 48),
              a,
              b,
              c,
              duration,
              start,
              finish,
              planFinish,
              load<f64>(p, 40),
              n,
            );
      store<f64>(rows + load<u32>(p, 36), latest);
      if (latest > 36525.0) return p - program;
      p = list + (((links + 1) >> 1) << 3);
    } else if (op === 20) {
      const links = <usize>load<u32>(p, 4);
      const duration = rows + load<u32>(p, 8);
      const moves = rows + load<u32>(p, 12);
      const start = starts + load<u32>(p, 16);
      const days = <usize>load<u32>(p, 20);
      const list = p + 56;
      if (anySet(moves, n)) {
        sumMoving(duration, moves, load<f64>(p, 32), told + load<u32>(p, 24), n);
        const gap = load<f64>(p, 40);
        const end = load<f64>(p, 48);
        const placing = load<u32>(p, 28);
        if (placing !== 0 && links > 0) {
          const step = program + placing;
          startsFrom(step, start, place, rows + load<u32>(step, 32), n);
        }
        const last = list + (links << 3);
        for (let at = list; at < last; at += 8) {
          markSimple(days, gap, end, rows + load<u32>(at), moves, place + load<u32>(at, 4), start, n);
        }
      }
      p = list + (links << 3);
    } else if (op === 14) {
      store<f64>(
        told + load<u32>(p, 16),
        addDailyCost(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          load<f64>(p, 24),
          rows + load<u32>(p, 12),
          n,
        ),
      );
      p += 32;
    } else if (op === 11) {
      sumDuration(rows + load<u32>(p, 4), told + load<u32>(p, 8), n);
      p += 16;
    } else if (op === 19) {
      beginMarks(p, rows, place, top, n);
      p += 48;
    } else if (op === 1) {
      drawRecords(load<u32>(p, 8), load<u32>(p, 4), seed, n, rows, told);
      p += 16;
    } else if (op === 2) {
      const words = <usize>load<u32>(p, 4) + seed;
      const out = rows + load<u32>(p, 8);
      fillLatin(load<u32>(words), load<u32>(words, 4), load<u32>(words, 8), load<u32>(words, 12), out);
      p += 16;
    } else if (op === 3) {
      occur(rows + load<u32>(p, 4), load<f64>(p, 16), load<f64>(p, 24), rows + load<u32>(p, 8), n);
      p += 32;
    } else if (op === 4) {
      const out = (load<u32>(p, 8) ? top : rows) + load<u32>(p, 4);
      fill(out, load<f64>(p, 16), n);
      p += 24;
    } else if (op === 5) {
      memory.fill(rows + load<u32>(p, 4), <u8>load<u32>(p, 8), n);
      p += 16;
    } else if (op === 6) {
      const below = lookUpOutcomes(
        load<u32>(p, 4),
        load<u32>(p, 8),
        load<u32>(p, 12),
        rows + load<u32>(p, 16),
        rows + load<u32>(p, 20),
        n,
        load<u32>(p, 24),
      );
      if (below > 0) {
        const at = told + load<u32>(p, 28);
        store<u32>(at, load<u32>(at) + <u32>below);
      }
      p += 32;
    } else if (op === 7) {
      scaleTo(rows + load<u32>(p, 4), rows + load<u32>(p, 8), load<f64>(p, 16), n);
      p += 24;
    } else if (op === 8) {
      multiplyImpact(
        rows + load<u32>(p, 4),
        rows + load<u32>(p, 8),
        rows + load<u32>(p, 12),
        load<f64>(p, 16),
        n,
      );
      p += 24;
    } else if (op === 9) {
      addImpact(rows + load<u32>(p, 4), rows + load<u32>(p, 8), rows + load<u32>(p, 12), load<f64>(p, 16), n);
      p += 24;
    } else if (op === 12) {
      store<f64>(told + load<u32>(p, 12), addCost(top + load<u32>(p, 4), rows + load<u32>(p, 8), n));
      p += 16;
    } else if (op === 13) {
      store<f64>(
        told + load<u32>(p, 20),
        addTaskCost(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          rows + load<u32>(p, 12),
          load<f64>(p, 24),
          rows + load<u32>(p, 16),
          n,
        ),
      );
      p += 32;
    } else if (op === 15) {
      store<f64>(
        told + load<u32>(p, 16),
        addCostWhere(
          top + load<u32>(p, 4),
          rows + load<u32>(p, 8),
          rows + load<u32>(p, 12),
          load<f64>(p, 24),
          n,
        ),
      );
      p += 32;
    } else if (op === 17) {
      memory.fill(told, 0, load<u32>(p, 4));
      p += 8;
    } else if (op === 18) {
      datesOf(top + load<u32>(p, 4), (top >> 1) + load<u32>(p, 8), rows + load<u32>(p, 12), n);
      p += 16;
    } else if (op === 21) {
      sumImpact(p, rows, told, n);
      p += 96;
    } else if (op === 22) {
      sumProductsInto(rows + load<u32>(p, 4), rows + load<u32>(p, 8), n, told + load<u32>(p, 12));
      p += 16;
    } else break;
  }
  return -1;
}

function fill(out: usize, value: f64, n: usize): void {
  const two = f64x2.splat(value);
  const end = out + (n << 3);
  for (; out + 8 < end; out += 16) v128.store(out, two);
  if (out < end) store<f64>(out, value);
}

/** `markFinish`, which need not be looked at where even the latest finish of the task is far from the plan's. */
function beginMarks(p: usize, rows: usize, place: usize, top: usize, n: usize): void {
  const moves = rows + load<u32>(p, 8);
  const days = <usize>load<u32>(p, 16);
  const gap = load<f64>(p, 32);
  const end = load<f64>(p, 40);
  const latest = load<f64>(rows + load<u32>(p, 12));
  const moment = load<f64>(rows + load<u32>(p, 24)) - TOLERANCE;
  const far = days === 0 ? latest < moment : latest < min(end, moment - gap);
  if (far) memory.fill(moves, 0, n);
  else markFinish(days, gap, end, top + load<u32>(p, 20), place + load<u32>(p, 4), moves, n);
}
