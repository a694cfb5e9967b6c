import { readFileSync, realpathSync } from "node:fs";
import { writeWhole } from "../files/writeWhole.ts";
import { withLock } from "./withLock.ts";

/**
 * Writes a plan anew, whole or not at all, where it still says what was read from it; false where somebody changed it
 * meanwhile. A link stays a link, and the file's rights stay. Editors know nothing of our lock: between looking and
 * writing there is a moment, as short as it can be, in which theirs would be lost.
 *
 * Throws the file system's error, or `Locked`.
 */
export async function writePlan(path: string, before: string, after: string): Promise<boolean> {
  const file = realpathSync(path);
  return withLock(file, () => {
    const now = new TextDecoder("utf-8", { ignoreBOM: true }).decode(readFileSync(file));
    if (now.replace(/^\uFEFF/, "") !== before.replace(/^\uFEFF/, "")) return false;
    const mark = now.startsWith("\uFEFF") && !after.startsWith("\uFEFF") ? "\uFEFF" : "";
    writeWhole(file, mark + after, true);
    return true;
  });
}
