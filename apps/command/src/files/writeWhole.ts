import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fchmodSync,
  fsyncSync,
  linkSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmdirSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

const unfinished = new Set<string>();
process.on("exit", () => {
  for (const path of unfinished) rmSync(path, { force: true });
});

/** The file is there and says that nobody writes to it. */
export class WriteProtected extends Error {}

/**
 * Writes a file whole or not at all: to a temporary name beside it, forced to the disk, then renamed. Folders are made, and go
 * again where the file cannot be written.
 * A link stays a link, and what it leads to is written; rights stay as they are. A file that is write-protected is not
 * written, although the folder would allow it: whoever protected it meant it. A device or a pipe has no whole and is
 * written to as it stands.
 *
 * @param overwrite  Without it an existing file stands and is an error with code EEXIST.
 * Throws the file system's error, or `WriteProtected`; the temporary file is gone then, and when the process is stopped.
 */
export function writeWhole(path: string, text: string, overwrite: boolean): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there?.isCharacterDevice() || there?.isFIFO() || there?.isSocket()) {
    writeFileSync(path, text);
    return;
  }
  const file = overwrite && isLink(path) ? realpathSync(path) : path;
  if (overwrite && there?.isFile()) mayBeWritten(file, there);
  const folder = dirname(file);
  const made = mkdirSync(folder, { recursive: true });
  sweep(folder, basename(file));
  const aside = join(folder, `.${basename(file)}.${process.pid}.part`);
  unfinished.add(aside);
  let written = false;
  try {
    putDown(aside, text, overwrite ? there : undefined);
    if (overwrite) renameSync(aside, file);
    else place(aside, file);
    written = true;
    settle(folder);
  } finally {
    drop(aside);
    unfinished.delete(aside);
    if (!written && made !== undefined) takeAway(folder, made);
  }
}

function drop(aside: string): void {
  try {
    rmSync(aside, { force: true });
  } catch {
    // A name that is too long was never there; what else stays is swept up later.
  }
}

/** Folders made for a file that could not be written, from the innermost up to the first; those that hold something stay. */
function takeAway(folder: string, first: string): void {
  try {
    rmdirSync(folder);
    if (folder !== first && folder.startsWith(first)) takeAway(dirname(folder), first);
  } catch {
    // Somebody else put something there.
  }
}

function isLink(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() === true;
}

/** The administrator may write anything: for them the rights on the file are looked at. */
function mayBeWritten(file: string, { mode }: Stats): void {
  if ((mode & 0o222) === 0) throw new WriteProtected(file);
  accessSync(file, constants.W_OK);
}

/** The text in a new file with the rights of the old one, on the disk before anything is renamed. */
function putDown(aside: string, text: string, old: Stats | undefined): void {
  const handle = openSync(aside, "w", old?.isFile() ? old.mode & 0o777 : 0o666);
  try {
    writeFileSync(handle, text);
    if (old?.isFile()) fchmodSync(handle, old.mode & 0o7777);
    fsyncSync(handle);
  } finally {
    closeSync(handle);
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

/** That the name leads to the new file is on the disk too, where the system can say so of a folder. */
function settle(folder: string): void {
  try {
    const handle = openSync(folder, "r");
    try {
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
  } catch {
    // Windows opens no folders; the file itself is safe.
  }
}

/** What a killed process left beside the file a minute ago or longer; nobody else knows these names. */
function sweep(folder: string, name: string): void {
  for (const each of readdirSync(folder)) {
    if (!each.startsWith(`.${name}.`) || !/^\d+\.part$/.test(each.slice(name.length + 2))) continue;
    const left = join(folder, each);
    const at = statSync(left, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (!unfinished.has(left) && Date.now() - at > 60_000) rmSync(left, { force: true });
  }
}
