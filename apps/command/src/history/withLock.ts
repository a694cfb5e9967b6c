import {
  closeSync,
  linkSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

/** Whoever holds a lock longer than this has been killed, or stands on a machine that has. */
const ABANDONED_MS = 60_000;
const PATIENCE_MS = 15_000;

const held = new Set<string>();
process.on("exit", () => {
  for (const lock of held) rmSync(lock, { force: true });
});

/** Somebody else is writing, and does not end. */
export class Locked extends Error {}

/**
 * Runs `change` while no other process that asks the same way runs one on this file: a lock file beside it, made only
 * where there is none. A lock whose process is gone, or that is a minute old, is taken over.
 *
 * Throws `Locked` after 15 seconds; what `change` throws; the file system's error where no lock can be made.
 */
export async function withLock<T>(file: string, change: () => T): Promise<T> {
  const lock = `${file}.lock`;
  const until = Date.now() + PATIENCE_MS;
  while (!taken(lock)) {
    if (abandoned(lock)) takeAway(lock);
    else if (Date.now() > until) throw new Locked(lock);
    else await pause(20);
  }
  held.add(lock);
  try {
    return change();
  } finally {
    rmSync(lock, { force: true });
    held.delete(lock);
  }
}

/** The number goes in before the name is taken, so that a lock always says whose it is, however its maker ends. */
function taken(lock: string): boolean {
  const own = hidden(lock);
  try {
    writeFileSync(own, String(process.pid));
    linkSync(own, lock);
    return true;
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code === "EEXIST") return false;
    if (code !== "EPERM" && code !== "ENOTSUP" && code !== "EOPNOTSUPP") throw error;
    return takenWithoutLinks(lock);
  } finally {
    rmSync(own, { force: true });
  }
}

/** A name beside it that is this process's own; `writeWhole` sweeps up what a killed one leaves. */
function hidden(lock: string): string {
  return join(dirname(lock), `.${basename(lock, ".lock")}.${process.pid}.part`);
}

/** Where the file system has no links. */
function takenWithoutLinks(lock: string): boolean {
  try {
    const file = openSync(lock, "wx");
    writeSync(file, String(process.pid));
    closeSync(file);
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    throw error;
  }
}

/**
 * Two may find the same lock abandoned, and the slower one must not take away the lock the faster has made since: what
 * was taken away is looked at again, and put back where it is somebody's.
 */
function takeAway(lock: string): void {
  const aside = hidden(lock);
  try {
    renameSync(lock, aside);
  } catch {
    return; // somebody else took it away
  }
  try {
    if (!abandoned(aside)) linkSync(aside, lock);
  } catch {
    // a third has taken its place already; there is nothing better to do than to wait for it
  } finally {
    rmSync(aside, { force: true });
  }
}

function abandoned(lock: string): boolean {
  try {
    const age = Date.now() - statSync(lock).mtimeMs;
    if (age > ABANDONED_MS) return true;
    const owner = Number(readFileSync(lock, "utf8"));
    // Between making the file and writing the number into it, it is empty.
    if (!Number.isInteger(owner) || owner <= 0) return false;
    process.kill(owner, 0);
    return false;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "ESRCH";
  }
}
