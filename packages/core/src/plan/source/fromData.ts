import { type Entry, type Fault, MAX_DEPTH, type Node, type SourceTree } from "./node.ts";

/** A value nothing in JSON stands for: a function, a symbol, a big integer, `undefined` in a list. */
const STRANGE = "A plan holds only text, numbers, true or false, lists and objects.";

/** How many times larger than its objects a document may grow because they stand in several places. */
const GROWTH = 20;
/** What may stand in several places whatever the size of the rest. */
const FREE = 10_000;

/** The way to a value: `tasks[3].duration`. */
type Way = { before: Way; key: string | number } | undefined;

/**
 * Turns a JSON value in memory into nodes without positions. Object keys with the value `undefined` count
 * as left out. Objects within themselves, objects in so many places that the document explodes, nesting beyond
 * `MAX_DEPTH`, holes in lists and values JSON has no form for are faults.
 */
export function fromData(data: unknown): SourceTree {
  const converter = new Converter();
  try {
    return { root: converter.convert(data, undefined, 0), faults: converter.faults };
  } catch (error) {
    // Getters and proxies run foreign code, which may throw anything.
    const received = error instanceof Error ? error.message.slice(0, 60) : "";
    const path = pathOf(converter.at);
    return {
      faults: [{ code: "not-json", at: -1, path, received, rule: STRANGE, remedy: "Pass a plain object." }],
    };
  }
}

const NONE = { at: -1, end: -1 };
const nothing = (): Node => ({ kind: "scalar", value: null, ...NONE });

class Converter {
  readonly faults: Fault[] = [];
  /** Where it is. */
  at: Way;
  /** Objects on the way from the root: meeting one of them again is a loop. */
  private readonly above = new Set<object>();
  private readonly met = new Set<object>();
  /** Values of objects met for the first time, and of all. */
  private written = 0;
  private grown = 0;
  private stopped = false;

  convert(value: unknown, way: Way, depth: number): Node {
    this.at = way;
    if (this.stopped) return nothing();
    switch (typeof value) {
      case "string":
      case "number":
      case "boolean":
        return { kind: "scalar", value, ...NONE };
      case "object":
        break;
      default:
        return this.fault("not-json", way, typeof value, STRANGE, "Convert it to text or a number first.");
    }
    if (value === null) return { kind: "scalar", value, ...NONE };
    if (this.above.has(value)) {
      return this.fault("loop-of-data", way, "", "This object is within itself.", "Remove the loop.");
    }
    if (depth > MAX_DEPTH) {
      return this.fault(
        "too-deep",
        way,
        "",
        `A plan nests at most ${MAX_DEPTH} levels.`,
        "Remove the extra levels.",
      );
    }
    this.above.add(value);
    const node = Array.isArray(value) ? this.list(value, way, depth) : this.map(value, way, depth);
    this.above.delete(value);
    return node;
  }

  private list(value: readonly unknown[], way: Way, depth: number): Node {
    const items: Node[] = [];
    const { length } = value;
    for (let index = 0; index < length && !this.stopped; index++) {
      const here: Way = { before: way, key: index };
      if (!(index in value)) {
        items.push(this.fault("not-json", here, "", "The list has a hole here.", "Fill it, or close it up."));
        break; // a list may be said to be four thousand million long
      }
      if (!this.fits(value, here)) break;
      items.push(this.convert(value[index], here, depth + 1));
    }
    this.met.add(value);
    return { kind: "list", items, ...NONE };
  }

  private map(value: object, way: Way, depth: number): Node {
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && Object.getPrototypeOf(prototype) !== null) {
      return this.fault("not-json", way, "object", STRANGE, "Convert it to text or a number first.");
    }
    const entries = new Map<string, Entry>();
    for (const [key, item] of Object.entries(value)) {
      if (item === undefined) continue;
      const here: Way = { before: way, key };
      if (!this.fits(value, here)) break;
      entries.set(key, { key, keyAt: -1, node: this.convert(item, here, depth + 1) });
    }
    this.met.add(value);
    return { kind: "map", entries, repeated: [], ...NONE };
  }

  /** Counts one value of an object; false, once told, when the document has outgrown its objects. */
  private fits(holder: object, way: Way): boolean {
    this.grown++;
    if (!this.met.has(holder)) this.written++;
    if (this.grown <= FREE + GROWTH * this.written) return true;
    if (!this.stopped) {
      const rule = "Objects that stand in several places make this document far larger than they are.";
      this.fault("alias-growth", way, "", rule, "Give each place an object of its own.");
      this.stopped = true;
    }
    return false;
  }

  private fault(code: string, way: Way, received: string, rule: string, remedy: string): Node {
    this.faults.push({ code, at: -1, path: pathOf(way), received, rule, remedy });
    return nothing();
  }
}

function pathOf(way: Way): string {
  const steps: (string | number)[] = [];
  for (let each = way; each !== undefined; each = each.before) steps.unshift(each.key);
  return steps
    .map((step, index) => {
      if (typeof step === "number") return `[${step}]`;
      if (!/^[\p{L}\p{N}_-]+$/u.test(step)) return `[${JSON.stringify(step.slice(0, 60))}]`;
      return index === 0 ? step : `.${step}`;
    })
    .join("");
}
