import { createHash } from "node:crypto";

/**
 * One line for each number, string and typed array in a value, with its path; arrays by a hash of their bytes.
 * Walks whatever is there, so a row that somebody forgot to hand over shows.
 */
export function digest(value: unknown, path = ""): string[] {
  if (ArrayBuffer.isView(value)) {
    const bytes = new Uint8Array(value.buffer, value.byteOffset, value.byteLength);
    return [
      `${path} ${value.constructor.name} ${value.byteLength} ${createHash("sha256").update(bytes).digest("hex")}`,
    ];
  }
  if (typeof value === "object" && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => digest(inner, `${path}.${key}`));
  }
  return [`${path} ${String(value)}`];
}
