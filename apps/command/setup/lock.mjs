import { closeSync, mkdirSync, openSync, readFileSync, rmSync, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { root } from "./root.mjs";

/** No setup takes longer than this; a lock older than it was left behind. Milliseconds. */
const LONGEST = 15 * 60_000;

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}

/**
 * Runs `work` while no other process on this checkout does: two callers that both find the build stale must
 * not install into one directory at once. A lock whose owner is gone is taken over.
 */
export async function withLock(work) {
  mkdirSync(join(root, ".leeway"), { recursive: true });
  const path = join(root, ".leeway", "setup.lock");
  for (;;) {
    try {
      const file = openSync(path, "wx");
      writeSync(file, String(process.pid));
      closeSync(file);
      break;
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
      // An owner that has not yet written its number counts as alive: give it one turn.
      await wait(150);
      const owner = Number(readIfThere(path));
      const since = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
      if ((owner > 0 && !isAlive(owner)) || Date.now() - since > LONGEST) rmSync(path, { force: true });
    }
  }
  const release = () => rmSync(path, { force: true });
  process.on("exit", release);
  try {
    return await work();
  } finally {
    process.off("exit", release);
    release();
  }
}

function readIfThere(path) {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}
