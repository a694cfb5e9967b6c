/**
 * `npm run reproduce`: the example plans, each with its tornado, forecast by one bundle of the library in several engines,
 * and the answers held against those of the Node at hand. Engines that are not to be had are named with the reason.
 *
 * The same bytes are asked of every Node and of Chromium; of Firefox, whose engine is another one altogether, each number
 * within 1e-12 of its size. Ends with 1 where one differs more.
 *
 *   npm run reproduce                       Node 20, 22 and 24 (by npx), Chromium, Firefox
 *   npm run reproduce -- --iterations 500
 */
import { execFile, spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs, promisify } from "node:util";
import { build } from "vite";

const { values } = parseArgs({ options: { iterations: { type: "string", default: "3000" } } });
const iterations = Number(values.iterations);
if (!Number.isSafeInteger(iterations) || iterations < 1) {
  process.stderr.write(`--iterations ${values.iterations}: a whole number from 1 on, for example 3000.\n`);
  process.exit(2);
}

const root = fileURLToPath(new URL("../..", import.meta.url));
const run = promisify(execFile);
/** Relative; what another engine may differ by. */
const TOLERANCE = 1e-12;

async function coreScript() {
  const built = await build({
    configFile: false,
    root,
    logLevel: "warn",
    build: {
      write: false,
      target: "es2022",
      lib: { entry: "packages/core/src/index.ts", formats: ["iife"], name: "leewayCore" },
    },
  });
  const [{ output }] = Array.isArray(built) ? built : [built];
  return output[0].code;
}

const plans = readdirSync(join(root, "examples")).filter((name) => name.endsWith(".plan.yaml"));
const texts = plans.map((name) => readFileSync(join(root, "examples", name), "utf8"));
const script = `${await coreScript()}
;globalThis.answers = ${JSON.stringify(texts)}.map((text) =>
  JSON.stringify(leewayCore.forecast(leewayCore.readPlan(text).plan, { iterations: ${iterations}, tornado: true }).forecast));`;

const folder = mkdtempSync(join(tmpdir(), "leeway-reproduce-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
const file = join(folder, "forecasts.cjs");
writeFileSync(
  file,
  `${script}\nprocess.stdout.write(JSON.stringify({ engine: "Node " + process.version, answers }));`,
);

const node = async (command, args) =>
  JSON.parse((await run(command, [...args, file], { maxBuffer: 1 << 28, timeout: 300_000 })).stdout);

/** Opens a page in a browser without a window; the page sends its answers back to this process. */
function browser(program, args) {
  return new Promise((resolve, reject) => {
    const page = `<!doctype html><meta charset="utf-8"><script src="forecasts.js"></script><script>
fetch("answers", { method: "POST", body: JSON.stringify({ engine: navigator.userAgent, answers }) })</script>`;
    const server = createServer((request, response) => {
      if (request.method === "POST") {
        const parts = [];
        request.on("data", (part) => parts.push(part));
        request.on("end", () => {
          response.end();
          done(resolve, JSON.parse(Buffer.concat(parts).toString()));
        });
        return;
      }
      const code = request.url === "/forecasts.js";
      if (!code && request.url !== "/") return response.writeHead(404).end();
      response.setHeader(
        "Content-Type",
        code ? "text/javascript; charset=utf-8" : "text/html; charset=utf-8",
      );
      response.end(code ? script : page);
    });
    let child;
    const timer = setTimeout(() => done(reject, new Error("no answer within 5 minutes")), 300_000);
    const done = (how, what) => {
      clearTimeout(timer);
      child?.kill("SIGKILL");
      server.closeAllConnections();
      server.close();
      how(what);
    };
    server.listen(0, "127.0.0.1", () => {
      child = spawn(program, [...args, `http://127.0.0.1:${server.address().port}/`], { stdio: "ignore" });
      child.on("error", (error) => done(reject, error));
    });
  });
}

const installed = (...paths) => paths.find((path) => path !== undefined && existsSync(path));
const chromium = installed(process.env.LEEWAY_CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser");
const firefox = installed(process.env.LEEWAY_FIREFOX, "/usr/bin/firefox-esr", "/usr/bin/firefox");
const absent = (name, command) => () => Promise.reject(new Error(`not installed: ${command} (${name})`));
const quiet = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"];

const engines = [
  ...[20, 22, 24].map((major) => [
    `Node ${major}`,
    0,
    () => node("npx", ["--yes", "-p", `node@${major}`, "node"]),
  ]),
  [
    "Chromium",
    0,
    chromium === undefined
      ? absent("Chromium", "apt-get install -y chromium")
      : () => browser(chromium, [...quiet, `--user-data-dir=${join(folder, "chromium")}`]),
  ],
  [
    "Firefox",
    TOLERANCE,
    firefox === undefined
      ? absent("Firefox", "apt-get install -y firefox-esr")
      : () => browser(firefox, ["--headless", "--no-remote", "--profile", folder]),
  ],
];

/** The largest relative difference between two answers; infinite where they are not of one form. */
function apart(a, b) {
  if (typeof a === "number" && typeof b === "number") {
    return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
  }
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) {
    return a === b ? 0 : Number.POSITIVE_INFINITY;
  }
  const keys = Object.keys(a);
  if (keys.join("\n") !== Object.keys(b).join("\n")) return Number.POSITIVE_INFINITY;
  return Math.max(0, ...keys.map((key) => apart(a[key], b[key])));
}

const digest = (text) => createHash("sha256").update(text).digest("hex").slice(0, 16);
const here = await node(process.execPath, []);
process.stdout.write(`${plans.length} plans, ${iterations} futures each, tornado included\n\n`);
for (const [at, name] of plans.entries()) process.stdout.write(`${digest(here.answers[at])}  ${name}\n`);
process.stdout.write(`\nheld against ${here.engine}:\n`);
let worst = 0;
for (const [name, allowed, forecasts] of engines) {
  try {
    const { engine, answers } = await forecasts();
    const same = answers.every((answer, at) => answer === here.answers[at]);
    const difference = same
      ? 0
      : Math.max(...answers.map((answer, at) => apart(JSON.parse(here.answers[at]), JSON.parse(answer))));
    if (!same && (allowed === 0 || !(difference <= allowed))) worst = 1;
    const told = same
      ? "the same bytes"
      : `differs by up to ${difference.toExponential(1)} of a number's size`;
    process.stdout.write(`${name.padEnd(9)} ${told}  (${engine})\n`);
  } catch (error) {
    process.stdout.write(`${name.padEnd(9)} not tried: ${error.message.split("\n")[0]}\n`);
  }
}
process.exitCode = worst;
