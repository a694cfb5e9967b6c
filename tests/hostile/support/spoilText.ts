import fc from "fast-check";
import { BITS, KEYS, NUMBER_TEXTS, WORDS } from "./values.ts";

type Spoil = (text: string) => string;

const at = (text: string, part: number) => Math.floor(part * (text.length + 1));

/** The n-th match of a pattern, replaced: whatever stands there, the text keeps its form. */
function replaced(text: string, pattern: RegExp, part: number, put: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  const match = found[Math.floor(part * found.length)];
  if (match === undefined) return text;
  return text.slice(0, match.index) + put(match[0]) + text.slice(match.index + match[0].length);
}

const part = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });
const number = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...NUMBER_TEXTS) },
  { weight: 1, arbitrary: fc.double().map(String) },
  { weight: 1, arbitrary: fc.integer({ min: -3, max: 40 }).map(String) },
);
const word = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom<string>(...WORDS) },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 12 }) },
);
const lines = (text: string) => text.split("\n");

const NUMBER = /(?<![\w.-])-?\d+(?:\.\d+)?(?![\w.-])/g;
const VALUE = /(?<=: )[^\n{}[\],"]+/g;
const KEY = /\b[a-zA-Z]+(?="?: )/g;
const ID = /\b(?:ant|bee|cat|dove|eel|fox|gnu|hare|ibex|jay|kite|lark|mole|newt|owl|pug)\b/g;
const DATE = /\d{4}-\d\d-\d\d/g;

const spoils: fc.Arbitrary<Spoil>[] = [
  fc.tuple(part, number).map(
    ([p, put]): Spoil =>
      (text) =>
        replaced(text, NUMBER, p, () => put),
  ),
  fc.tuple(part, number).map(
    ([p, put]): Spoil =>
      (text) =>
        replaced(text, VALUE, p, () => put),
  ),
  fc.tuple(part, word).map(
    ([p, put]): Spoil =>
      (text) =>
        replaced(text, VALUE, p, () => put),
  ),
  fc.tuple(part, word).map(
    ([p, put]): Spoil =>
      (text) =>
        replaced(text, VALUE, p, () => JSON.stringify(put)),
  ),
  fc.tuple(part, fc.constantFrom(...KEYS)).map(
    ([p, put]): Spoil =>
      (text) =>
        replaced(text, KEY, p, () => put),
  ),
  // Ids exchanged: links that go round, names of the wrong kind, the same thing twice.
  fc.tuple(part, part).map(
    ([p, q]): Spoil =>
      (text) => {
        const ids = [...text.matchAll(ID)];
        const other = ids[Math.floor(q * ids.length)]?.[0];
        return other === undefined ? text : replaced(text, ID, p, () => other);
      },
  ),
  fc
    .tuple(
      part,
      fc.constantFrom("0001-01-01", "1900-01-01", "2027-02-30", "2999-12-31", "9999-12-31", "2030-06-01"),
    )
    .map(
      ([p, put]): Spoil =>
        (text) =>
          replaced(text, DATE, p, () => put),
    ),
  fc.tuple(part, fc.constantFrom(...BITS)).map(
    ([p, put]): Spoil =>
      (text) => {
        const place = at(text, p);
        return text.slice(0, place) + put + text.slice(place);
      },
  ),
  fc.tuple(part, fc.integer({ min: 1, max: 30 })).map(
    ([p, length]): Spoil =>
      (text) => {
        const place = at(text, p);
        return text.slice(0, place) + text.slice(place + length);
      },
  ),
  fc.tuple(part, part, fc.integer({ min: 1, max: 60 })).map(
    ([p, q, length]): Spoil =>
      (text) => {
        const [from, to] = [at(text, p), at(text, q)];
        return text.slice(0, to) + text.slice(from, from + length) + text.slice(to);
      },
  ),
  // Whole lines: twice, gone, in another place, further in or out.
  fc.tuple(part, part, fc.nat(3)).map(
    ([p, q, how]): Spoil =>
      (text) => {
        const all = lines(text);
        const from = Math.floor(p * all.length);
        const line = all[from] ?? "";
        if (how === 0) all.splice(from, 1);
        else if (how === 1) all.splice(Math.floor(q * all.length), 0, line);
        else if (how === 2) all[from] = `  ${line}`;
        else all[from] = line.replace(/^ {1,2}/, "");
        return all.join("\n");
      },
  ),
  part.map(
    (p): Spoil =>
      (text) =>
        text.slice(0, at(text, p)),
  ),
  fc.constantFrom<Spoil>(
    (text) => `\uFEFF${text}`,
    (text) => text.replaceAll("\n", "\r\n"),
    (text) => text.replaceAll("\n", "\r"),
    (text) => text.replaceAll("\n", "\u2028"),
    (text) => text.replaceAll("  ", "\t"),
    (text) => text + text,
    (text) => text.replaceAll("-", "\u2011"),
    (text) => Buffer.from(text, "utf16le").toString("utf8"),
    (text) => Buffer.from(text.replace("name: ", "name: é"), "latin1").toString("utf8"),
    (text) => [...text].reverse().join(""),
  ),
];

const spoil = fc.oneof(...spoils);

/** One of these texts with one to four things done to it. */
export function spoiled(texts: readonly string[]): fc.Arbitrary<string> {
  return fc
    .tuple(fc.nat(texts.length - 1), fc.array(spoil, { minLength: 1, maxLength: 4 }))
    .map(([index, done]) => done.reduce((text, each) => each(text), texts[index] ?? ""));
}

/** Nothing but bits of syntax, keys, words and numbers. */
export const soup: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(
      fc.constantFrom<string>(...BITS),
      fc.constantFrom(...KEYS).map((key) => `${key}: `),
      word,
      number,
      fc.constant("\n"),
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(""));
