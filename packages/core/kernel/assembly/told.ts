import { CHARS } from "./layout";
import { seedTen } from "./seeds";

/** into[at] += value. */
function add(into: usize, at: usize, value: f64): void {
  const place = into + (at << 3);
  store<f64>(place, load<f64>(place) + value);
}

/** into += row, `count` doubles. */
function addRow(into: usize, row: usize, count: usize): void {
  for (let i: usize = 0; i < count; i++) add(into, i, load<f64>(row + (i << 3)));
}

/**
 * Adds up what the program told of `blocks` blocks of n iterations in all: to the bit what `sumsTold` and `addSums` of
 * packages/core/src/simulate come to, block by block. At `what` stand, 32 bits each: how many tasks, entries,
 * responses, doubles of pairs and slots there are; addresses of the impacts of each task and of the costs of each entry
 * (how many, 32 bits each), of the entries that impacts belong to (32 bits each), and of the as-written money of each
 * task and of each entry (doubles).
 *
 * `out` begins as 0 and is written as rows of doubles: by task critical, needed, points, duration, money, own days, own
 * money; by entry days, money; responses; pairs; cuts by slot. Behind it, two rows by entry are used meanwhile.
 */
export function addTold(what: usize, told: usize, toldBytes: usize, blocks: u32, n: u32, out: usize): void {
  const tasks = <usize>load<u32>(what);
  const entries = <usize>load<u32>(what, 4);
  const responses = <usize>load<u32>(what, 8);
  const pairs = <usize>load<u32>(what, 12);
  const slots = <usize>load<u32>(what, 16);
  const impactsOf = <usize>load<u32>(what, 20);
  const costsOf = <usize>load<u32>(what, 24);
  const entryOf = <usize>load<u32>(what, 28);
  const taskMoney = <usize>load<u32>(what, 32);
  const entryMoney = <usize>load<u32>(what, 36);
  const row = tasks << 3;
  const ofEntries = out + 7 * row;
  const ofResponses = ofEntries + (entries << 4);
  const ofPairs = ofResponses + (responses << 3);
  const ofCuts = ofPairs + (pairs << 3);
  const days = ofCuts + (slots << 3);
  const money = days + (entries << 3);
  for (let b: u32 = 0; b < blocks; b++) {
    const left = n - (b << 10);
    const size = <f64>(left < 1024 ? left : 1024);
    memory.fill(days, 0, entries << 4);
    let at = told + <usize>b * toldBytes;
    let impact = at + tasks * 40;
    let entry = entryOf;
    for (let j: usize = 0; j < tasks; j++, at += 40) {
      let own = load<f64>(at);
      const spent = load<f64>(at, 32);
      let ownMoney = spent - size * load<f64>(taskMoney + (j << 3));
      for (let i = load<u32>(impactsOf + (j << 2)); i > 0; i--, impact += 16, entry += 4) {
        const inDuration = load<f64>(impact);
        const added = load<f64>(impact, 8);
        own -= inDuration;
        ownMoney -= added;
        add(days, load<u32>(entry), inDuration);
        add(money, load<u32>(entry), added);
      }
      add(out, j, load<f64>(at, 8));
      add(out + row, j, size);
      add(out + 2 * row, j, load<f64>(at, 24));
      add(out + 3 * row, j, load<f64>(at, 16));
      add(out + 4 * row, j, spent);
      add(out + 5 * row, j, own);
      add(out + 6 * row, j, ownMoney);
    }
    at = impact;
    for (let e: usize = 0; e < entries; e++) {
      let sum: f64 = 0;
      for (let c = load<u32>(costsOf + (e << 2)); c > 0; c--, at += 8) sum += load<f64>(at);
      add(money, e, sum - size * load<f64>(entryMoney + (e << 3)));
    }
    addRow(ofEntries, days, entries << 1);
    addRow(ofResponses, at, responses);
    at += responses << 3;
    addRow(ofPairs, at, pairs);
    at += pairs << 3;
    for (let s: usize = 0; s < slots; s++, at += 4) add(ofCuts, s, <f64>load<u32>(at));
  }
}

/**
 * Seeds streams `from` up to `to` of a list: address and length of each text (32 bits each), of at most 5,600 characters;
 * an empty one is left alone.
 * The words of ten blocks each, for so many decades, stand `stride` bytes apart; those of stream i begin 160 i bytes from
 * the beginning.
 */
export function seedStreams(
  list: usize,
  from: u32,
  to: u32,
  decades: u32,
  stride: usize,
  words: usize,
): void {
  for (let i = from; i < to; i++) {
    const entry = list + ((<usize>i) << 3);
    const length = <usize>load<u32>(entry, 4);
    if (length === 0) continue;
    const out = words + <usize>i * 160;
    memory.copy(CHARS, load<u32>(entry), length << 1);
    for (let decade: u32 = 0; decade < decades; decade++) {
      let digits: usize = 0;
      for (let rest = decade; rest > 0; rest /= 10) digits++;
      let at = CHARS + ((length + digits) << 1);
      for (let rest = decade; rest > 0; rest /= 10) {
        at -= 2;
        store<u16>(at, <u16>(48 + (rest % 10)));
      }
      seedTen(length + digits, out + <usize>decade * stride);
    }
  }
}
