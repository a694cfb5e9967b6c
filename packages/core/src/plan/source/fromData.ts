import { type Entry, type Fault, MAX_DEPTH, type Node, type SourceTree } from "./node.ts";

/** A value nothing in JSON stands for: a function, a symbol, a big integer, `undefined` in a list. */
const STRANGE = "A plan holds only text, numbers, true or false, lists and objects.";

/**
 * Turns a JSON value in memory into nodes without positions. Object keys with the value `undefined` count
 * as left out. Loops of references, nesting beyond `MAX_DEPTH` and values JSON has no form for are faults.
 */
export function fromData(data: unknown): SourceTree {
  const faults: Fault[] = [];
  const none = { at: -1, end: -1 };
  let count = 0;

  const strange = (value: unknown): Node => {
    faults.push({
      code: "not-json",
      at: -1,
      received: typeof value,
      rule: STRANGE,
      remedy: "Convert it to text or a number first.",
    });
    return { kind: "scalar", value: null, ...none };
  };

  const convert = (value: unknown, depth: number): Node => {
    if (depth > MAX_DEPTH || ++count > 20_000_000) {
      if (!faults.some((fault) => fault.code === "too-deep")) {
        faults.push({
          code: "too-deep",
          at: -1,
          received: "",
          rule: `A plan nests at most ${MAX_DEPTH} levels.`,
          remedy: "Remove the loop or the extra levels.",
        });
      }
      return { kind: "scalar", value: null, ...none };
    }
    switch (typeof value) {
      case "string":
      case "number":
      case "boolean":
        return { kind: "scalar", value, ...none };
      case "object":
        break;
      default:
        return strange(value);
    }
    if (value === null) return { kind: "scalar", value, ...none };
    if (Array.isArray(value)) {
      return { kind: "list", items: Array.from(value, (item: unknown) => convert(item, depth + 1)), ...none };
    }
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && Object.getPrototypeOf(prototype) !== null) return strange(value);
    const entries = new Map<string, Entry>();
    for (const [key, item] of Object.entries(value)) {
      if (item !== undefined) entries.set(key, { key, keyAt: -1, node: convert(item, depth + 1) });
    }
    return { kind: "map", entries, repeated: [], ...none };
  };

  try {
    return { root: convert(data, 0), faults };
  } catch (error) {
    // Getters and proxies run foreign code, which may throw anything.
    const received = error instanceof Error ? error.message.slice(0, 60) : "";
    return {
      faults: [{ code: "not-json", at: -1, received, rule: STRANGE, remedy: "Pass a plain object." }],
    };
  }
}
