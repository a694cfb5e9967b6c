import { createHash } from "node:crypto";
import { readFileSync, realpathSync } from "node:fs";
import { whyNotWritten } from "../files/whyNotWritten.ts";
import { writeWhole } from "../files/writeWhole.ts";

/** Text of the file, and a tag that is another one whenever a byte of it is. */
export interface Reading {
  text: string;
  tag: string;
}
export type Writing = { kind: "saved"; tag: string } | { kind: "moved-on"; now: Reading };

/** The one file a page is bound to. */
export interface BoundFile {
  /** Throws an error whose message is for the reader, and a TypeError where the bytes are no UTF-8 text. */
  read(): Reading;
  /** Saves only on top of the reading that `tag` names; whole or not at all. Throws as `read` does. */
  save(text: string, tag: string): Writing;
}

/** @param path  An existing file; a symbolic link is followed once, now, so that a save goes where the reading came from. */
export function boundFile(path: string): BoundFile {
  const real = realpathSync(path);
  const read = (): Reading => {
    const bytes = inWords(() => readFileSync(real), whyNotRead);
    return {
      text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes),
      tag: tagOf(bytes),
    };
  };
  return {
    read,
    save(text, tag) {
      const now = read();
      if (now.tag === tag || now.text === text) {
        const bytes = Buffer.from(text);
        if (now.text !== text)
          inWords(
            () => writeWhole(real, text, true),
            (error) => {
              const { rule, remedy } = whyNotWritten(real, error);
              return `${rule} ${remedy}`;
            },
          );
        return { kind: "saved", tag: tagOf(bytes) };
      }
      return { kind: "moved-on", now };
    },
  };
}

/** Does it; what breaks is told in words: the page shows them. */
function inWords<T>(work: () => T, words: (error: unknown) => string): T {
  try {
    return work();
  } catch (error) {
    throw new Error(words(error), { cause: error });
  }
}

function whyNotRead(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
  if (code === "ENOENT" || code === "ENOTDIR")
    return "The file is not there any more. Put it back, or save the plan to another place.";
  if (code === "EACCES" || code === "EPERM")
    return "You may not read the file any more. Ask for permission, or save the plan to another place.";
  return `The file could not be read (${code}). Save the plan to another place.`;
}

function tagOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex").slice(0, 32);
}
