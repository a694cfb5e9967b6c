import { type Entry, type Fault, MAX_DEPTH, type Node, type SourceTree } from "./node.ts";

class JsonFault extends Error {
  fault: Fault;
  constructor(fault: Fault) {
    super(fault.code);
    this.fault = fault;
  }
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
/** Unrolled, so that long text costs no backtracking. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 forbids exactly these in a string.
const STRING = /"[^"\\\u0000-\u001f]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[^"\\\u0000-\u001f]*)*"/y;
const SPACE = /[ \t\r\n]*/y;

/**
 * Reads JSON (RFC 8259) into nodes with positions, repeated keys kept apart instead of silently dropped
 * as `JSON.parse` does. Linear in the text; nesting beyond `MAX_DEPTH` is a fault. Never throws.
 */
export function readJson(text: string): SourceTree {
  let at = 0;

  const skip = () => {
    SPACE.lastIndex = at;
    SPACE.test(text);
    at = SPACE.lastIndex;
  };
  const fail = (rule: string, remedy: string, code = "json-syntax"): never => {
    const received = at < text.length ? (text.slice(at, at + 24).split("\n")[0] ?? "") : "";
    throw new JsonFault({ code, at, received, rule, remedy });
  };
  const string = (): string => {
    STRING.lastIndex = at;
    if (!STRING.test(text)) return fail("This is not a JSON string.", "Write text between double quotes.");
    const raw = text.slice(at, STRING.lastIndex);
    at = STRING.lastIndex;
    return raw.includes("\\") ? (JSON.parse(raw) as string) : raw.slice(1, -1);
  };
  const word = (literal: string, value: boolean | null): Node => {
    if (!text.startsWith(literal, at))
      return fail("A JSON value was expected.", "Check the text from here on.");
    const node: Node = { kind: "scalar", value, at, end: at + literal.length };
    at += literal.length;
    return node;
  };

  const value = (depth: number): Node => {
    if (depth > MAX_DEPTH) {
      return fail(`A plan nests at most ${MAX_DEPTH} levels.`, "Close the brackets.", "too-deep");
    }
    const begin = at;
    const first = text[at];
    if (first === "{") return object(begin, depth);
    if (first === "[") return list(begin, depth);
    if (first === '"') return { kind: "scalar", value: string(), at: begin, end: at };
    if (first === "t") return word("true", true);
    if (first === "f") return word("false", false);
    if (first === "n") return word("null", null);
    NUMBER.lastIndex = at;
    if (!NUMBER.test(text)) return fail("A JSON value was expected.", "Check the text from here on.");
    at = NUMBER.lastIndex;
    return { kind: "scalar", value: Number(text.slice(begin, at)), at: begin, end: at };
  };

  const list = (begin: number, depth: number): Node => {
    const items: Node[] = [];
    at++;
    skip();
    if (text[at] !== "]") {
      for (;;) {
        skip();
        items.push(value(depth + 1));
        skip();
        if (text[at] !== ",") break;
        at++;
      }
      if (text[at] !== "]")
        return fail("A list ends with `]`.", "Put a comma between items, `]` at the end.");
    }
    at++;
    return { kind: "list", items, at: begin, end: at };
  };

  const object = (begin: number, depth: number): Node => {
    const entries = new Map<string, Entry>();
    const repeated: Entry[] = [];
    at++;
    skip();
    if (text[at] !== "}") {
      for (;;) {
        skip();
        const keyAt = at;
        const key = string();
        skip();
        if (text[at] !== ":") return fail("A colon follows a key.", "Write a colon here.");
        at++;
        skip();
        const entry: Entry = { key, keyAt, node: value(depth + 1) };
        if (entries.has(key)) repeated.push(entry);
        else entries.set(key, entry);
        skip();
        if (text[at] !== ",") break;
        at++;
      }
      if (text[at] !== "}")
        return fail("An object ends with `}`.", "Put a comma between keys, `}` at the end.");
    }
    at++;
    return { kind: "map", entries, repeated, at: begin, end: at };
  };

  try {
    if (text.charCodeAt(0) === 0xfeff) at = 1;
    skip();
    const root = value(0);
    skip();
    if (at < text.length) fail("The document ends here.", "Remove what follows.");
    return { text, root, faults: [] };
  } catch (error) {
    if (error instanceof JsonFault) return { text, faults: [error.fault], brokenFrom: error.fault.at };
    throw error;
  }
}
