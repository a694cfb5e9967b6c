import { TOLERANCE } from "./layout";
import { finishAt, workAt, workFrom } from "./moments";

// Lists of doubles, as packages/core/src/kernel/peopleWriter.ts writes them.
//   A wanted share: the room beside it, how many others, how many absences; for each other its share and the addresses of
//   its starts and finishes; for each absence from, to, and how much is gone.
//   What a task shares: its share, the capacity, how many sharers, how many absences; for each sharer its share, 1 where it
//   comes before, 1 where it may free the person, the addresses of its starts, finishes, durations, marks of two kinds,
//   and its calendar's table; the absences as above.

const HEAD: usize = 24;
const OTHER: usize = 24;
const ABSENCE: usize = 24;
const SHARED: usize = 32;
const SHARER: usize = 72;

/** Entry k of the row whose address stands at `where`. */
function entryOf(where: usize, k: usize): f64 {
  return load<f64>(<usize>load<f64>(where) + (k << 3));
}

/** The end of an overload inside [s, f) were the share added to what its person holds already; 0 when it fits. */
function overloadEnd(wanted: usize, k: usize, s: f64, f: f64): f64 {
  const room = load<f64>(wanted);
  const absences = <usize>load<f64>(wanted, 16);
  const others = wanted + HEAD;
  const away = others + <usize>load<f64>(wanted, 8) * OTHER;
  let end: f64 = 0;
  let together = 0;
  let sum: f64 = 0;
  for (let at = others; at < away; at += OTHER) {
    const from = entryOf(at + 8, k);
    const to = entryOf(at + 16, k);
    if (from >= f - TOLERANCE || to <= s + TOLERANCE || to - from <= TOLERANCE) continue;
    const share = load<f64>(at);
    if (share > room) {
      if (to > end) end = to;
    } else {
      together += 1;
      sum += share;
    }
  }
  if (end > 0 || (absences === 0 && (together < 2 || sum <= room))) return end;
  end = loadEndAt(room, others, away, absences, k, s);
  if (end > 0) return end;
  for (let at = others; at < away; at += OTHER) {
    const from = entryOf(at + 8, k);
    if (from <= s || from >= f - TOLERANCE) continue;
    end = loadEndAt(room, others, away, absences, k, from);
    if (end > 0) return end;
  }
  for (let at = away; at < away + absences * ABSENCE; at += ABSENCE) {
    const from = load<f64>(at);
    if (from <= s || from >= f - TOLERANCE) continue;
    end = loadEndAt(room, others, away, absences, k, from);
    if (end > 0) return end;
  }
  return 0;
}

/** Where the load at moment x leaves no room: the earliest end among what is held there; otherwise 0. */
function loadEndAt(room: f64, others: usize, away: usize, absences: usize, k: usize, x: f64): f64 {
  let sum: f64 = 0;
  let end: f64 = Infinity;
  for (let at = others; at < away; at += OTHER) {
    const from = entryOf(at + 8, k);
    const to = entryOf(at + 16, k);
    if (from > x + TOLERANCE || to <= x + TOLERANCE || to - from <= TOLERANCE) continue;
    sum += load<f64>(at);
    if (to < end) end = to;
  }
  for (let at = away; at < away + absences * ABSENCE; at += ABSENCE) {
    const to = load<f64>(at, 8);
    if (load<f64>(at) > x + TOLERANCE || to <= x + TOLERANCE) continue;
    sum += load<f64>(at, 16);
    if (to < end) end = to;
  }
  return sum > room ? end : 0;
}

/** Where the next wanted share stands. */
function nextWanted(wanted: usize): usize {
  return wanted + HEAD + <usize>load<f64>(wanted, 8) * OTHER + <usize>load<f64>(wanted, 16) * ABSENCE;
}

/** Moves work on to the earliest moment from which all of `count` wanted shares are free; none moves past `most`. */
export function freeFrom(
  days: usize,
  order: usize,
  last: f64,
  list: usize,
  count: i32,
  start: usize,
  finish: usize,
  duration: usize,
  most: f64,
  n: usize,
): void {
  for (let k: usize = 0; k < n; k++) {
    const at = k << 3;
    const d = load<f64>(duration + at);
    if (d <= TOLERANCE) continue;
    let s = load<f64>(start + at);
    let f = load<f64>(finish + at);
    let wanted = list;
    for (let h = 0; h < count; ) {
      const end = overloadEnd(wanted, k, s, f);
      if (end <= s + TOLERANCE) {
        h += 1;
        wanted = nextWanted(wanted);
        continue;
      }
      s = workFrom(days, end);
      f = finishAt(days, order, last, workAt(days, last, s) + d);
      if (f > most) break;
      h = 0;
      wanted = list;
    }
    store<f64>(start + at, s);
    store<f64>(finish + at, f);
  }
}

/** Marks who frees the person as a task that moves starts; answers whether one of them comes later than it. */
export function markSharers(shared: usize, moving: usize, start: usize, duration: usize, n: usize): i32 {
  const share = load<f64>(shared);
  const capacity = load<f64>(shared, 8) + TOLERANCE;
  const first = shared + SHARED;
  const away = first + <usize>load<f64>(shared, 16) * SHARER;
  const end = away + <usize>load<f64>(shared, 24) * ABSENCE;
  let later = 0;
  for (let other = first; other < away; other += SHARER) {
    if (load<f64>(other, 16) === 0) continue;
    const target = <usize>load<f64>(other, 48);
    const pushed = <usize>load<f64>(other, 56);
    const days = <usize>load<f64>(other, 64);
    for (let k: usize = 0; k < n; k++) {
      if (load<u8>(moving + k) === 0 || load<u8>(target + k) === 1) continue;
      if (load<f64>(duration + (k << 3)) <= TOLERANCE || entryOf(other + 40, k) <= TOLERANCE) continue;
      const s = load<f64>(start + (k << 3));
      const f = entryOf(other + 32, k);
      if (f > s + TOLERANCE || workFrom(days, f) < s - TOLERANCE) continue;
      let held = loadBeside(first, away, other, s, k);
      for (let at = away; at < end; at += ABSENCE) {
        if (load<f64>(at) > s + TOLERANCE || load<f64>(at, 8) <= s + TOLERANCE) continue;
        held += load<f64>(at, 16);
        break;
      }
      if (held + load<f64>(other) + share <= capacity) continue;
      store<u8>(target + k, 1);
      store<u8>(pushed + k, 1);
      if (load<f64>(other, 8) === 0) later = 1;
    }
  }
  return later;
}

/** What the person holds at moment s besides the task that starts and the one that ends. */
function loadBeside(first: usize, away: usize, except: usize, s: f64, k: usize): f64 {
  let held: f64 = 0;
  for (let at = first; at < away; at += SHARER) {
    if (at === except) continue;
    const from = entryOf(at + 24, k);
    if (entryOf(at + 32, k) <= s + TOLERANCE || from > s + TOLERANCE) continue;
    if (from < s - TOLERANCE || load<f64>(at, 8) !== 0) held += load<f64>(at);
  }
  return held;
}
