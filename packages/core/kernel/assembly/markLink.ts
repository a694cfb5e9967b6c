import { TOLERANCE } from "./layout";
import { addWork, startAt, workAt, workFrom } from "./moments";

// A link is a list of doubles, as packages/core/src/kernel/linkWriter.ts writes it; as in
// packages/core/src/kernel/twins/markLink.ts and to the bit. A row at address 0 is none.
const FROM: usize = 0;
const FROM_FINISH: usize = 8;
const FROM_DURATION: usize = 16;
const FROM_DAYS: usize = 24;
const LAGS: usize = 32;
const LAG: usize = 40;
const SCALE: usize = 48;
const LAG_DAYS: usize = 56;
const LAG_ORDER: usize = 64;
const LAG_LAST: usize = 72;
const WAIT: usize = 80;
const OWN_DAYS: usize = 88;
const OWN_ORDER: usize = 96;
const OWN_LAST: usize = 104;
const NEEDED: usize = 112;
const START: usize = 120;
const DURATION: usize = 128;
const STARTS_WORK: usize = 136;
const DAYS: usize = 144;
const LAST: usize = 152;
const MOVES: usize = 160;
const PUSHED: usize = 168;
const TO_FINISH: usize = 176;
const FROM_MOVES: usize = 184;
const FROM_PUSHED: usize = 192;

function address(link: usize, field: usize): usize {
  return <usize>load<f64>(link + field);
}

function works(days: usize, t: f64): bool {
  return workFrom(days, t) <= t + TOLERANCE;
}

/** The moment `lag` working days from just after t, t inside a working day. */
function fromRight(days: usize, order: usize, last: f64, t: f64, lag: f64): f64 {
  const w = workAt(days, last, t) + lag;
  return w < 0 ? w : startAt(days, order, last, w);
}

/** Whether, in iteration k, moving the predecessor moves the task and with it the plan's finish. */
function binds(link: usize, k: usize, push: bool): bool {
  const row = k << 3;
  let at = load<f64>(address(link, FROM) + row);
  // A start of work is already at work; an end goes on when the task's calendar next works.
  const fromPoint = load<f64>(address(link, FROM_DURATION) + row) <= TOLERANCE;
  if (fromPoint ? push : load<f64>(link, FROM_FINISH) !== 0) at = workFrom(address(link, FROM_DAYS), at);
  let nudged = true;
  const lags = address(link, LAGS);
  const lag = (lags === 0 ? load<f64>(link, LAG) : load<f64>(lags + row)) * load<f64>(link, SCALE);
  if (abs(lag) > TOLERANCE) {
    const days = address(link, LAG_DAYS);
    const order = address(link, LAG_ORDER);
    const last = load<f64>(link, LAG_LAST);
    nudged = works(days, at);
    at = nudged ? fromRight(days, order, last, at, lag) : addWork(days, order, last, at, lag);
  }
  if (at < -TOLERANCE) return false;
  const needed = address(link, NEEDED);
  const skipped = needed !== 0 && load<u8>(needed + k) === 0;
  const waits = address(link, WAIT);
  const wait: f64 = skipped || waits === 0 ? 0 : load<f64>(waits + row);
  if (wait > TOLERANCE) {
    const days = address(link, OWN_DAYS);
    const order = address(link, OWN_ORDER);
    const last = load<f64>(link, OWN_LAST);
    const on = nudged && works(days, at);
    at = on ? fromRight(days, order, last, at, wait) : addWork(days, order, last, at, wait);
    nudged = on;
  }
  const start = load<f64>(address(link, START) + row);
  const duration = load<f64>(address(link, DURATION) + row);
  const days = address(link, DAYS);
  const last = load<f64>(link, LAST);
  if (duration <= TOLERANCE && (load<f64>(link, STARTS_WORK) === 0 || skipped)) {
    if (nudged ? at < start - TOLERANCE : at <= start + TOLERANCE) return false;
    const byPush = at >= workFrom(days, start) - TOLERANCE;
    return load<u8>(address(link, byPush ? PUSHED : MOVES) + k) === 1;
  }
  if (load<u8>(address(link, MOVES) + k) !== 1) return false;
  const on = nudged && works(days, at);
  if (load<f64>(link, TO_FINISH) !== 0 && duration > TOLERANCE) {
    const needs = workAt(days, last, at) - duration;
    const has = workAt(days, last, start);
    return on ? needs >= has - TOLERANCE : needs > has + TOLERANCE;
  }
  return on ? at >= start - TOLERANCE : workFrom(days, at) > start + TOLERANCE;
}

/** Marks the predecessor where moving it moves the task: nudged on, and pushed to its next work. */
export function markLink(link: usize, n: usize): void {
  const into = address(link, PUSHED);
  const moves = address(link, FROM_MOVES);
  const pushed = address(link, FROM_PUSHED);
  for (let k: usize = 0; k < n; k++) {
    if (load<u8>(into + k) === 0 || load<u8>(pushed + k) === 1) continue;
    if (binds(link, k, false)) store<u8>(moves + k, 1);
    if (binds(link, k, true)) store<u8>(pushed + k, 1);
  }
}
