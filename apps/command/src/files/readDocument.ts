import { readFile, stat } from "node:fs/promises";
import type { Problem } from "@leeway/core";

export interface ReadDocument {
  /** How problems name it. */
  name: string;
  text?: string;
  problem?: Problem;
}

const REASONS: Record<string, [rule: string, remedy: string]> = {
  ENOENT: ["There is no such file.", "Check the path; it is relative to where you stand."],
  ENOTDIR: ["There is no such file.", "Check the path; it is relative to where you stand."],
  EISDIR: ["That is a folder.", "Name the plan document inside it."],
  EACCES: ["It may not be read by you.", "Ask for permission to read it, or copy it."],
  EPERM: ["It may not be read by you.", "Ask for permission to read it, or copy it."],
};

function problem(code: string, rule: string, remedy: string): Problem {
  return { code, severity: "error", path: "", received: "", rule, remedy };
}

/** Bytes; four times what any reader of ours takes as text. */
const LARGEST = 200_000_000;

class TooLarge extends Error {}

async function bytesOf(subject: string): Promise<Buffer> {
  if (subject !== "-") {
    // Devices and pipes say 0; what comes out of them is read as it comes.
    if ((await stat(subject)).size > LARGEST) throw new TooLarge();
    return readFile(subject);
  }
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of process.stdin) {
    const bytes = Buffer.from(part);
    size += bytes.length;
    if (size > LARGEST) throw new TooLarge();
    parts.push(bytes);
  }
  return Buffer.concat(parts);
}

/**
 * Reads the text of a plan document, `-` being standard input. What cannot be read as text is a problem in
 * words; nothing is thrown.
 */
export async function readDocument(subject: string): Promise<ReadDocument> {
  const name = subject === "-" ? "standard input" : subject;
  let bytes: Buffer;
  try {
    bytes = await bytesOf(subject);
  } catch (error) {
    if (error instanceof TooLarge) {
      const rule = "It is larger than 200 million bytes.";
      return { name, problem: problem("too-large", rule, "Name the plan, or leave out what no plan needs.") };
    }
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    const [rule, remedy] = REASONS[code] ?? [`It could not be read (${code}).`, "Check the path."];
    return { name, problem: problem("unreadable", rule, remedy) };
  }
  let text: string | undefined;
  try {
    text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {}
  if (text === undefined || text.includes("\0")) {
    const rule = "That is not a text file in UTF-8.";
    return {
      name,
      problem: problem("not-text", rule, "Save the plan as YAML or JSON text, encoded as UTF-8."),
    };
  }
  if (text.trim() === "") {
    const remedy = "Start from `leeway new --yes`.";
    return { name, problem: problem("empty", "It is empty: there is no plan to read.", remedy) };
  }
  return { name, text };
}
