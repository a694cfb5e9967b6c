/**
 * `npm run bench`: how long a forecast takes, by tasks and iterations, and how much memory; where python3 with numpy is,
 * against a plain vectorised program for the same question. Every run is a process of its own; numpy and ours take turns.
 *
 *   --quick   up to 100,000 iterations
 *   --write   the table into tests/bench/RESULTS.md
 *
 * Times are `compile` + `simulate` + `summarise` of `--timing`; reading the plan is not in them, on either
 * side, and has a column of its own, in which the start of the program is.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { setup } from "../../../apps/command/setup/setup.mjs";
import { makePlan } from "./makePlan.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const command = join(here, "../../../apps/command/dist/leeway.mjs");
const quick = process.argv.includes("--quick");
const write = process.argv.includes("--write");

const sizes = [40, 300, 1000, 3000];
const lengths = quick ? [1e3, 1e4, 1e5] : [1e3, 1e4, 1e5, 1e6];

await setup({ say: () => {} });
const folder = mkdtempSync(join(tmpdir(), "leeway-bench-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

function planFile(name, options) {
  const file = join(folder, `${name}.json`);
  writeFileSync(file, JSON.stringify(makePlan(options)));
  return file;
}

function ours(file, iterations) {
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      "-r",
      join(here, "peak.cjs"),
      command,
      "forecast",
      file,
      "--json",
      "--timing",
      "--iterations",
      `${iterations}`,
    ],
    { encoding: "utf8", stdio: ["ignore", "ignore", "pipe"] },
  );
  if (status !== 0) throw new Error(`${file}, ${iterations} iterations:\n${stderr}`);
  const lines = stderr.trim().split("\n");
  const { read, compile, simulate, summarise } = JSON.parse(lines.at(-2));
  return { read, seconds: compile + simulate + summarise, megabytes: Number(lines.at(-1)) };
}

const hasNumpy = spawnSync("python3", ["-c", "import numpy"]).status === 0;
function theirs(file, iterations) {
  const { stdout } = spawnSync("python3", [join(here, "numpyPeer.py"), file, `${iterations}`], {
    encoding: "utf8",
  });
  return JSON.parse(stdout).seconds;
}

const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];
const spread = (values) => `${digits(Math.min(...values))}-${digits(Math.max(...values))}`;
const digits = (value) =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(3);

const rows = [];
const heads = [
  "plan",
  "iterations",
  "s",
  "least-most",
  "ns a task and iteration",
  "MB",
  "read s",
  "numpy s",
  "numpy / ours",
];
function row(name, file, tasks, iterations, { numpy = false } = {}) {
  const work = tasks * iterations;
  const repeats = work <= 1e8 ? 5 : work <= 3e8 ? 3 : 1;
  const runs = [];
  const peers = [];
  for (let k = 0; k < repeats; k++) {
    if (numpy) peers.push(theirs(file, iterations));
    runs.push(ours(file, iterations));
  }
  const seconds = runs.map((run) => run.seconds);
  const peer = peers.length > 0 ? median(peers) : undefined;
  rows.push([
    name,
    iterations.toLocaleString("en-US"),
    digits(median(seconds)),
    spread(seconds),
    digits((median(seconds) * 1e9) / work),
    String(median(runs.map((run) => run.megabytes))),
    digits(median(runs.map((run) => run.read))),
    peer === undefined ? "" : digits(peer),
    peer === undefined ? "" : (peer / median(seconds)).toFixed(1),
  ]);
  process.stdout.write(`${rows.at(-1).join("  ")}\n`);
}

process.stdout.write(`${heads.join("  ")}\n`);
for (const tasks of sizes) {
  const file = planFile(`${tasks}`, { tasks });
  // Numpy holds every row: beyond this it would need gigabytes.
  for (const iterations of lengths) {
    row(`${tasks} tasks`, file, tasks, iterations, { numpy: hasNumpy && tasks * iterations <= 3e7 });
  }
}
row("1000 tasks, weekdays", planFile("calendar", { tasks: 1000, calendar: true }), 1000, 1e4);
row("300 tasks, 15 people", planFile("people", { tasks: 300, people: 15 }), 300, 1e4);

if (write) {
  const table = [heads, heads.map(() => "---"), ...rows]
    .map((cells) => `| ${cells.join(" | ")} |`)
    .join("\n");
  const { model } = cpus()[0];
  const text = `# Measured speed

\`npm run bench -- --write\`, ${new Date().toISOString().slice(0, 10)}; ${cpus().length} cores of ${model}, Node ${process.versions.node}.
Medians of five runs (three beyond 100 million task-iterations, one beyond 300 million), each a process of its own, with
default workers; seconds are \`compile\` + \`simulate\` + \`summarise\`. Numpy: \`tests/bench/forecast/numpyPeer.py\`, in turns
with ours.

${table}
`;
  writeFileSync(join(here, "../RESULTS.md"), text);
}
