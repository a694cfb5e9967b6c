/**
 * Loaded before the command (`node --import`): at the n-th call that changes something under a folder, half of what was
 * to be written is written and the process kills itself with signal 9, as a power cut or `kill -9` would. Which calls
 * there were is written down, so that the caller knows how many there are.
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

const folder = process.env.LEEWAY_TEST_FOLDER ?? "";
const killAt = Number(process.env.LEEWAY_TEST_KILL_AT ?? 0);
const log = process.env.LEEWAY_TEST_LOG;
const { appendFileSync } = fs;
const handles = new Set();
let calls = 0;

const inFolder = (what) => (typeof what === "number" ? handles.has(what) : String(what).startsWith(folder));

function wrap(name, half) {
  const real = fs[name];
  fs[name] = (...args) => {
    if (!inFolder(args[0])) return real(...args);
    calls++;
    if (calls === killAt) {
      half?.(real, args);
      process.kill(process.pid, "SIGKILL");
    }
    if (log !== undefined) appendFileSync(log, `${name}\n`);
    const result = real(...args);
    if (name === "openSync") handles.add(result);
    return result;
  };
}

const halfText = (real, [to, text, ...rest]) =>
  real(to, String(text).slice(0, String(text).length >> 1), ...rest);
wrap("writeFileSync", halfText);
wrap("appendFileSync", halfText);
wrap("writeSync", (real, [to, bytes]) => {
  if (typeof bytes !== "string") real(to, bytes.subarray(0, bytes.length >> 1));
});
for (const name of [
  "openSync",
  "closeSync",
  "fsyncSync",
  "renameSync",
  "linkSync",
  "rmSync",
  "mkdirSync",
  "fchmodSync",
]) {
  wrap(name);
}
syncBuiltinESMExports();
