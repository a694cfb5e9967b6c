import { isAlias, isMap, isScalar, isSeq, type ParsedNode, parseDocument } from "yaml";
import { type Entry, type Fault, MAX_DEPTH, type Node, type SourceTree } from "./node.ts";
import { quoteColons } from "./quoteColons.ts";
import { yamlSizeFault } from "./sizeFault.ts";
import { describeYamlError } from "./yamlError.ts";

/** How many times larger than written a document may grow through its aliases. */
const ALIAS_GROWTH = 20;

/** Faults of syntax that are listed. */
const MOST_ERRORS = 20;

const OPTIONS = {
  version: "1.2",
  schema: "core",
  // Repeated keys are found during conversion, in linear time and with their place.
  uniqueKeys: false,
  prettyErrors: false,
  logLevel: "error",
  stringKeys: false,
} as const;

/**
 * Reads YAML 1.2 (core schema: dates stay text) into nodes with positions. Aliases are followed; loops and
 * explosive growth through them are faults. A line whose unquoted text holds a colon is reported and read
 * as if quoted, so that what follows is still checked. Never throws.
 */
export function readYaml(text: string): SourceTree {
  const tooLarge = yamlSizeFault(text);
  if (tooLarge !== undefined) return { text, faults: [tooLarge], brokenFrom: 0 };
  const faults: Fault[] = [];
  // A carriage return alone ends a line too (YAML 1.2.2, section 5.4); the parser knows it before a line feed only.
  let reading = text.replace(/\r(?!\n)/g, "\n");
  try {
    for (let pass = 0; ; pass++) {
      const document = parseDocument(reading, OPTIONS);
      const repaired = pass < 3 ? quoteColons(reading, document.errors, faults) : undefined;
      if (repaired !== undefined) {
        reading = repaired;
        continue;
      }
      let brokenFrom: number | undefined;
      let last: number | undefined;
      for (const [index, error] of [...document.errors, ...document.warnings].entries()) {
        // One break in the text is often followed by a flood of others that mean nothing.
        if (index < MOST_ERRORS && error.pos[0] !== last) faults.push(describeYamlError(error, reading));
        last = error.pos[0];
        brokenFrom = Math.min(brokenFrom ?? error.pos[0], error.pos[0]);
      }
      const tree: SourceTree = { text: reading, faults };
      if (brokenFrom !== undefined) tree.brokenFrom = brokenFrom;
      const root =
        document.contents === null ? undefined : new Converter(reading, faults).convert(document.contents);
      if (root !== undefined) tree.root = root;
      return tree;
    }
  } catch (error) {
    const deep = error instanceof RangeError;
    faults.push({
      code: deep ? "too-deep" : "yaml-syntax",
      at: 0,
      received: "",
      rule: deep ? `A plan nests at most ${MAX_DEPTH} levels.` : "This is not YAML 1.2.",
      remedy: deep ? "Close the brackets." : "Check the text, or start from a fresh plan.",
    });
    return { text, faults, brokenFrom: 0 };
  }
}

class Converter {
  private readonly anchors = new Map<string, { node: Node; size: number }>();
  private readonly text: string;
  private readonly faults: Fault[];
  /** Nodes as written, and nodes with aliases followed. */
  private written = 0;
  private grown = 0;

  constructor(text: string, faults: Fault[]) {
    this.text = text;
    this.faults = faults;
  }

  convert(node: ParsedNode | null, depth = 0): Node | undefined {
    this.written++;
    const before = this.grown++;
    const range = node?.range ?? [0, 0, 0];
    const [at, end] = range;
    if (node === null) return { kind: "scalar", value: null, at, end };
    if (depth > MAX_DEPTH) {
      this.fault("too-deep", at, `A plan nests at most ${MAX_DEPTH} levels.`, "Close the brackets.");
      return undefined;
    }
    if (isAlias(node)) return this.alias(node.source, at);
    let result: Node;
    if (isScalar(node)) {
      const value: unknown = node.value;
      const known = typeof value === "string" || typeof value === "number" || typeof value === "boolean";
      result = { kind: "scalar", value: known ? value : null, at, end };
    } else if (isSeq(node)) {
      const items: Node[] = [];
      for (const item of node.items) {
        const converted = this.convert(item, depth + 1);
        if (converted !== undefined) items.push(converted);
      }
      result = { kind: "list", items, at, end };
    } else if (isMap(node)) {
      const entries = new Map<string, Entry>();
      const repeated: Entry[] = [];
      for (const pair of node.items) {
        const key = this.key(pair.key);
        const keyAt = pair.key?.range?.[0] ?? at;
        if (key === undefined) {
          this.fault("odd-key", keyAt, "A key is plain text.", "Write `key: value`.");
          continue;
        }
        const value = this.convert(pair.value ?? null, depth + 1);
        if (value === undefined) continue;
        // An empty value has no text of its own: it is found at its key.
        if (value.at === 0 && value.end === 0) value.at = value.end = keyAt;
        const entry: Entry = { key, keyAt, node: value };
        if (entries.has(key)) repeated.push(entry);
        else entries.set(key, entry);
      }
      result = { kind: "map", entries, repeated, at, end };
    } else {
      return undefined;
    }
    if (node.anchor) this.anchors.set(node.anchor, { node: result, size: this.grown - before });
    return result;
  }

  private key(node: ParsedNode | null): string | undefined {
    if (!isScalar(node)) return undefined;
    const value: unknown = node.value;
    if (typeof value === "string") return value;
    if (value === null && node.source === "") return undefined;
    return node.source ?? String(value);
  }

  private alias(name: string, at: number): Node | undefined {
    const target = this.anchors.get(name);
    if (target === undefined) {
      this.fault(
        "alias",
        at,
        `\`*${name}\` stands for nothing that is complete before it.`,
        "Write the value out.",
      );
      return undefined;
    }
    this.grown += target.size;
    if (this.grown > 10_000 + ALIAS_GROWTH * this.written) {
      if (!this.faults.some((fault) => fault.code === "alias-growth")) {
        this.fault(
          "alias-growth",
          at,
          "Aliases make this document far larger than its text.",
          "Write the values out.",
        );
      }
      return undefined;
    }
    return target.node;
  }

  private fault(code: string, at: number, rule: string, remedy: string): void {
    const received = this.text.slice(at, at + 40).split("\n")[0] ?? "";
    this.faults.push({ code, at, received, rule, remedy });
  }
}
