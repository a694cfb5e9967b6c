/**
 * Nanoseconds per element of every method of the kernel, in WebAssembly and in TypeScript: `node tests/bench/kernel.mjs`.
 *
 * Each figure is the least of the medians of several rounds, as the machine may be shared. Not a test.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "vite";

const root = new URL("../../", import.meta.url).pathname;

/** The kernel as one plain module, as the built command has it. */
async function load() {
  const entry = join(root, "tests/bench/kernelEntry.ts");
  const output = await build({
    configFile: false,
    root,
    logLevel: "error",
    build: { ssr: entry, write: false, minify: false, target: "node20" },
    ssr: { noExternal: true },
  });
  const dir = mkdtempSync(join(tmpdir(), "leeway-bench-"));
  process.on("exit", () => rmSync(dir, { recursive: true, force: true }));
  const file = join(dir, "kernel.mjs");
  writeFileSync(file, output.output[0].code);
  return await import(pathToFileURL(file).href);
}

const core = await load();

const t0 = performance.now();
const simd = core.loadKernel(8_000_000);
const t1 = performance.now();
core.loadKernel(8_000_000);
const t2 = performance.now();
const plain = core.plainKernel(8_000_000);
console.log(`first kernel ${(t1 - t0).toFixed(2)} ms, second ${(t2 - t1).toFixed(2)} ms`);

const n = 1024;
const seed = Uint32Array.of(1, 2, 3, 4);
const estimate = {
  kind: "range",
  low: 2,
  likely: 4,
  high: 10,
  shape: "pert",
  bounds: "extremes",
  unit: "days",
};
const outcomes = core.outcomeTable({
  kind: "outcomes",
  outcomes: [1, 2, 3, 5, 8].map((value) => ({ value, chance: 0.2 })),
  unit: "days",
});
const week = core.workCalendar((day) => day % 7 < 5 && day % 180 !== 100);

/** Rows and the calls to time, for one kernel. */
function setUp(kernel) {
  const { arena } = kernel;
  const [u, out, lower, d, start, finish, plan, total, costs, zero, into] = arena.rows(11, n);
  const [moves, movesI, occurs, result] = arena.bytes(4, n);
  const range = core.quantileTable(estimate);
  const table = { ...range, values: arena.table(range.values) };
  const few = { values: arena.table(outcomes.values), upTo: arena.table(outcomes.upTo) };
  const calendar = arena.calendar(week);
  const always = arena.calendar(core.workCalendar(() => true));
  kernel.fillLatin(seed, u);
  for (let k = 0; k < n; k++) {
    lower[k] = 100 + 40 * u[(k * 7) & 1023];
    d[k] = 2 + 8 * u[(k * 5) & 1023];
    costs[k] = 1000 * u[k];
    occurs[k] = u[(k * 3) & 1023] < 0.3 ? 1 : 0;
    moves[k] = u[(k * 11) & 1023] < 0.5 ? 1 : 0;
  }
  kernel.settle(calendar, lower, d, start, finish, 0, n);
  for (let k = 0; k < n; k++) plan[k] = k % 3 === 0 ? finish[k] : finish[k] + 50;
  const near = Float64Array.from(start, (s, k) => (k % 2 === 0 ? s : s - 5 * u[k]));
  const [late] = arena.rows(1, n);
  late.set(near);
  return {
    fillLatin: () => kernel.fillLatin(seed, u),
    fillPlain: () => kernel.fillPlain(seed, out),
    lookUp: () => kernel.lookUp(table, u, out, n, true),
    lookUpOutcomes: () => kernel.lookUpOutcomes(few, u, out, n, true),
    drawLatin: () => kernel.drawLatin(seed, table, out, n, true),
    occur: () => kernel.occur(u, 0.2, 0.5, result, n),
    multiplyImpact: () => kernel.multiplyImpact(out, occurs, zero, 0, n),
    addImpact: () => kernel.addImpact(out, occurs, d, 0.5, n),
    raiseTo: () => kernel.raiseTo(out, lower, n),
    scaleTo: () => kernel.scaleTo(out, d, 5, n),
    "raiseAfter, calendar": () => kernel.raiseAfter(calendar, out, lower, 3, n),
    "settle, every day": () => kernel.settle(always, lower, d, out, into, 0, n),
    "settle, on a calendar": () => kernel.settle(calendar, lower, d, out, into, 0, n),
    "markFinish, every day": () => kernel.markFinish(always, plan, finish, result, n),
    "markFinish, calendar": () => kernel.markFinish(calendar, plan, finish, result, n),
    "markSimple, every day": () => {
      movesI.fill(0);
      kernel.markSimple(always, movesI, moves, late, start, n);
    },
    "markSimple, calendar": () => {
      movesI.fill(0);
      kernel.markSimple(calendar, movesI, moves, late, start, n);
    },
    anySet: () => kernel.anySet(movesI.fill(0), n),
    addCost: () => kernel.addCost(total, costs, n),
    addCostWhere: () => kernel.addCostWhere(total, occurs, costs, 1, n),
    addTaskCost: () => kernel.addTaskCost(total, costs, zero, 250, d, n),
    addDaily: () => kernel.addDaily(total, d, 3, n),
    sumMasked: () => kernel.sumMasked(d, moves, 3, n, into),
    sumProducts: () => kernel.sumProducts(d, lower, n, into),
  };
}

function time(call, times) {
  const begin = performance.now();
  for (let i = 0; i < times; i++) call();
  return ((performance.now() - begin) * 1e6) / times;
}

/** The least of `rounds` medians of 7, in nanoseconds. */
function best(call, rounds = 5) {
  for (let i = 0; i < 300; i++) call();
  const times = Math.max(1, Math.ceil(2e6 / time(call, 20)));
  let least = Number.POSITIVE_INFINITY;
  for (let r = 0; r < rounds; r++) {
    const list = Array.from({ length: 7 }, () => time(call, times)).sort((a, b) => a - b);
    least = Math.min(least, list[3]);
  }
  return least;
}

const only = process.argv[2];
const row = (name, a, b) =>
  console.log(
    `${name.padEnd(24)} ${a.toFixed(2).padStart(7)} ${b.toFixed(2).padStart(7)} ${(b / a).toFixed(1).padStart(6)}x`,
  );
console.log(`${"ns per element".padEnd(24)}    wasm   plain`);
const calls = [setUp(simd), setUp(plain)];
for (const name of Object.keys(calls[0])) {
  if (only !== undefined && !name.includes(only)) continue;
  row(name, best(calls[0][name]) / n, best(calls[1][name]) / n);
}

for (const count of [1000, 10_000, 100_000, 1_000_000]) {
  if (only !== undefined && !"selectRanks".includes(only)) continue;
  const kernel = core.loadKernel(3 * count * 8 + 1000);
  const [values] = kernel.arena.rows(1, count);
  let state = 1;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  for (let k = 0; k < count; k++) values[k] = 100 + 10 * (next() + next() + next() + next());
  const outside = values.slice();
  for (const shares of [[0.1, 0.5, 0.9], Array.from({ length: 16 }, (_, i) => (i + 1) / 17)]) {
    const ranks = shares.map((share) => Math.ceil(share * count));
    const inside = best(() => kernel.selectRanks(values, ranks), 3) / count;
    const copied = best(() => kernel.selectRanks(outside, ranks), 3) / count;
    const twin = best(() => core.selectRanks(outside, ranks), 3) / count;
    row(`${shares.length} ranks of ${count}`, inside, twin);
    row("  copied in", copied, twin);
  }
}
