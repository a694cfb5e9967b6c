import { utf8ToBytes } from "@noble/hashes/utils.js";

const MOST_OCTETS = 75;

/**
 * A text as a value: backslash, semicolon, comma and line break escaped, other control characters left out (3.3.11).
 * Whatever breaks a line by Unicode (5.8) is a line break: some readers take it for the end of the value.
 */
export function textValue(text: string): string {
  return (
    text
      .replace(/\r\n?|[\v\f\u0085\u2028\u2029]/g, "\n")
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones RFC 5545 forbids
      .replace(/[\u0000-\u0008\u000E-\u001F\u007F]/g, "")
      .replace(/[\\;,]/g, (char) => `\\${char}`)
      .replace(/\n/g, "\\n")
  );
}

/**
 * A content line, folded so that no line is longer than 75 octets of UTF-8 without its break, and no character is cut
 * in two (3.1).
 */
export function contentLine(name: string, value: string): string {
  const lines: string[] = [];
  let line = "";
  let octets = 0;
  // By code point: half a surrogate pair is no character.
  for (const char of `${name}:${value}`) {
    const size = utf8ToBytes(char).length;
    if (octets + size > MOST_OCTETS) {
      lines.push(line);
      line = " ";
      octets = 1;
    }
    line += char;
    octets += size;
  }
  return [...lines, line].map((each) => `${each}\r\n`).join("");
}
