import { createHash } from "node:crypto";
import { readFileSync, realpathSync } from "node:fs";
import { writeWhole } from "../files/writeWhole.ts";

/** Text of the file, and a tag that is another one whenever a byte of it is. */
export interface Reading {
  text: string;
  tag: string;
}
export type Writing = { kind: "saved"; tag: string } | { kind: "moved-on"; now: Reading };

/** The one file a page is bound to. */
export interface BoundFile {
  /** Throws the file system's error, and a TypeError where the bytes are no UTF-8 text. */
  read(): Reading;
  /** Saves only on top of the reading that `tag` names; whole or not at all. Throws the file system's error. */
  save(text: string, tag: string): Writing;
}

/** @param path  An existing file; a symbolic link is followed once, now, so that a save goes where the reading came from. */
export function boundFile(path: string): BoundFile {
  const real = realpathSync(path);
  const read = (): Reading => {
    const bytes = readFileSync(real);
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
        if (now.text !== text) writeWhole(real, text, true);
        return { kind: "saved", tag: tagOf(bytes) };
      }
      return { kind: "moved-on", now };
    },
  };
}

function tagOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex").slice(0, 32);
}
