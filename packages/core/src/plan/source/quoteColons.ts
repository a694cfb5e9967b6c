import type { YAMLError } from "yaml";
import type { Fault } from "./node.ts";

/** A key and its unquoted text, as far as the end of the line: `title: Phase 2: build`. */
const IN_BLOCK = /^([ \t]*(?:- +)*[^\s:#"'[{][^:]*: +)([^\s"'[{>|&*!#].*)$/;
/** Unquoted text between brackets, as far as the next comma or bracket. */
const IN_BRACKETS = /[^\s"'[{>|&*!#,\]}][^,\]}\n\r]*/y;
/** A longer text is not written out again in what is to be done. */
const MOST = 120;

/**
 * Puts quotes round unquoted text that holds a colon, where the parser stumbled over it, and reports each.
 * Every line keeps its number. `undefined` where there is nothing to quote.
 */
export function quoteColons(text: string, errors: readonly YAMLError[], faults: Fault[]): string | undefined {
  const parts: string[] = [];
  let done = 0;
  for (const { code, pos } of errors) {
    const found =
      code === "BLOCK_AS_IMPLICIT_KEY"
        ? inBlock(text, pos[0])
        : code === "BLOCK_IN_FLOW"
          ? inBrackets(text, pos[0])
          : undefined;
    if (found === undefined || found.at < done || !/:(?:\s|$)/.test(found.value)) continue;
    const quoted = JSON.stringify(found.value);
    faults.push({
      code: "colon-in-text",
      at: found.at,
      received: found.value,
      rule: "A text with a colon needs quotes.",
      remedy: quoted.length > MOST ? "Put it between quotes." : `Write ${found.key}: ${quoted}.`,
    });
    parts.push(text.slice(done, found.at), quoted);
    done = found.at + found.value.length;
  }
  return done === 0 ? undefined : parts.join("") + text.slice(done);
}

interface Found {
  key: string;
  value: string;
  at: number;
}

function inBlock(text: string, at: number): Found | undefined {
  const begin = text.lastIndexOf("\n", at - 1) + 1;
  const newline = text.indexOf("\n", begin);
  const line = text.slice(begin, newline < 0 ? text.length : newline).replace(/\r$/, "");
  const [, head = "", rest = ""] = IN_BLOCK.exec(line) ?? [];
  const value = rest.trimEnd();
  if (value === "") return undefined;
  const key = head.trim().replace(/^(?:- +)+|:$/g, "");
  return { key, value, at: begin + head.length };
}

function inBrackets(text: string, at: number): Found | undefined {
  IN_BRACKETS.lastIndex = at;
  const value = IN_BRACKETS.exec(text)?.[0].trimEnd();
  if (value === undefined) return undefined;
  const [, key = "name"] = /([\w-]+):[ \t]+$/.exec(text.slice(Math.max(0, at - 60), at)) ?? [];
  return { key, value, at };
}
