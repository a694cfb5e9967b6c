import { existsSync, linkSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";

const unfinished = new Set<string>();
process.on("exit", () => {
  for (const path of unfinished) rmSync(path, { force: true });
});

/**
 * Writes a file whole or not at all: to a temporary name beside it, then renamed. Folders are made.
 *
 * @param overwrite  Without it an existing file stands and is an error with code EEXIST.
 * Throws the file system's error; the temporary file is gone then, and when the process is stopped.
 */
export function writeWhole(path: string, text: string, overwrite: boolean): void {
  mkdirSync(dirname(path), { recursive: true });
  const aside = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  unfinished.add(aside);
  try {
    writeFileSync(aside, text);
    if (overwrite) renameSync(aside, path);
    else place(aside, path);
  } finally {
    rmSync(aside, { force: true });
    unfinished.delete(aside);
  }
}

/** A link, unlike a rename, refuses a name that is taken; not every file system has links. */
function place(aside: string, path: string): void {
  try {
    linkSync(aside, path);
  } catch (error) {
    const taken = error instanceof Error && "code" in error && error.code === "EEXIST";
    if (taken || existsSync(path)) throw error;
    renameSync(aside, path);
  }
}
