import fc from "fast-check";
import { KEYS, STRANGE, WORDS } from "./values.ts";

type Branch = Record<string, unknown> | unknown[];

const isBranch = (value: unknown): value is Branch =>
  Array.isArray(value) ||
  (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype);

/** Every place in a document: what holds it and under which key. */
function places(root: Branch): { holder: Branch; key: string }[] {
  const found: { holder: Branch; key: string }[] = [];
  const seen = new Set<Branch>();
  const walk = (holder: Branch) => {
    if (seen.has(holder)) return;
    seen.add(holder);
    for (const key of Object.keys(holder)) {
      found.push({ holder, key });
      const value: unknown = Reflect.get(holder, key);
      if (isBranch(value)) walk(value);
    }
  };
  walk(root);
  return found;
}

function put(holder: Branch, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, writable: true, enumerable: true, configurable: true });
}

const part = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const number = fc.oneof(
  fc.double(),
  fc.integer({ min: -5, max: 60 }),
  fc.double({ min: 0, max: 2, noNaN: true }),
);
const value: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...STRANGE) },
  { weight: 3, arbitrary: number },
  { weight: 2, arbitrary: fc.constantFrom(...WORDS) },
  { weight: 1, arbitrary: fc.anything({ maxDepth: 2, maxKeys: 3 }) },
);

interface Deed {
  what: "replace" | "nudge" | "remove" | "rename" | "double" | "wrap" | "move" | "loop";
  at: number;
  to: number;
  value: unknown;
  number: number;
  key: string;
}
const deed: fc.Arbitrary<Deed> = fc.record({
  what: fc.constantFrom<Deed["what"]>(
    "replace",
    "replace",
    "nudge",
    "nudge",
    "nudge",
    "remove",
    "rename",
    "double",
    "wrap",
    "move",
    "loop",
  ),
  at: part,
  to: part,
  value,
  number,
  key: fc.constantFrom<string>(...KEYS),
});

function done(root: Branch, { what, at, to, value, number, key }: Deed): void {
  const all = places(root);
  const numbers = all.filter((place) => typeof Reflect.get(place.holder, place.key) === "number");
  const pool = what === "nudge" && numbers.length > 0 ? numbers : all;
  const place = pool[Math.floor(at * pool.length)];
  const other = all[Math.floor(to * all.length)];
  if (place === undefined || other === undefined) return;
  const { holder } = place;
  const current: unknown = Reflect.get(holder, place.key);
  if (what === "replace") put(holder, place.key, value);
  else if (what === "nudge") put(holder, place.key, number);
  else if (what === "remove") Reflect.deleteProperty(holder, place.key);
  else if (what === "wrap") put(holder, place.key, [current]);
  else if (what === "move") put(holder, place.key, structuredCloneOf(Reflect.get(other.holder, other.key)));
  else if (what === "double" && Array.isArray(holder)) holder.push(structuredCloneOf(current));
  else if (what === "loop" && at < 0.1) put(holder, place.key, root);
  else put(holder, what === "rename" ? key : place.key, current);
}

/** A copy where JSON could make one; anything else as it is. */
function structuredCloneOf(value: unknown): unknown {
  try {
    return structuredClone(value);
  } catch {
    return value;
  }
}

/** A copy of one of these documents with one to three things done to it. */
export function spoiledData(documents: readonly object[]): fc.Arbitrary<unknown> {
  return fc
    .tuple(fc.nat(documents.length - 1), fc.array(deed, { minLength: 1, maxLength: 3 }))
    .map(([index, deeds]) => {
      const copy: unknown = structuredClone(documents[index]);
      if (isBranch(copy)) for (const each of deeds) done(copy, each);
      return copy;
    });
}

/** Objects that have the keys of plans and nothing right behind them. */
export const dataSoup: fc.Arbitrary<unknown> = fc.letrec<{ node: unknown }>((tie) => ({
  node: fc.oneof(
    { maxDepth: 4, depthIdentifier: "soup" },
    value,
    fc.dictionary(fc.constantFrom<string>(...KEYS), tie("node"), { maxKeys: 6, depthIdentifier: "soup" }),
    fc.array(tie("node"), { maxLength: 3, depthIdentifier: "soup" }),
  ),
})).node;
