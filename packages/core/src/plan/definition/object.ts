import type { Entry, MapNode } from "../source/node.ts";
import { childPlace, type Place } from "../source/place.ts";
import { id } from "./names.ts";
import type { Reading } from "./reading.ts";
import { checkCharacters, text } from "./scalars.ts";
import { type Definitions, type DraftOf, type JsonSchema, type Key, optional, type Type } from "./type.ts";

type Keys = Record<string, Key<unknown>>;
/** An object as read: any key may be missing, because a draft may be faulty. */
export type ObjectDraft<K extends Keys> = {
  [P in keyof K]?: DraftOf<K[P]["type"]> | undefined;
} & { note?: string; was?: string };

/** Keys every object may carry. */
const NOTE = optional(text("a note"), "A remark in Markdown; changes no number.", {
  mistakenFor: ["comment", "notes", "remark"],
});
const WAS_ID = optional(
  id(undefined),
  "The id it had before it was renamed: keeps its draws and its place in comparisons.",
);
const WAS_TEXT = optional(text("an old name"), "The name it had before it was renamed.");

/**
 * An object with these keys and no others (`note` and `was` apart). `name` puts its schema under `$defs`.
 */
export function object<K extends Keys>(
  name: string,
  about: string,
  own: K,
  settle?: (draft: ObjectDraft<K>, place: Place, reading: Reading) => void,
): Type<ObjectDraft<K>> & { keys: Keys } {
  const keys: Keys = { ...own, note: NOTE, was: "id" in own ? WAS_ID : WAS_TEXT };
  const what = `an object: ${about}`;
  const required = Object.keys(keys).filter((key) => keys[key]?.required);

  const read = (place: Place, reading: Reading): ObjectDraft<K> | undefined => {
    const { node } = place;
    if (node.kind !== "map") {
      const given = node.kind === "list" ? "a list" : reading.source(place) || "nothing";
      reading.report(
        place,
        "wrong-type",
        `${upper(what)}.`,
        `Write its keys, such as ${sample(required, keys)}, not ${shortly(given)}.`,
      );
      return undefined;
    }
    repeated(node, place, reading);
    const draft: Record<string, unknown> = {};
    for (const entry of node.entries.values()) {
      const key = Object.hasOwn(keys, entry.key) ? keys[entry.key] : undefined;
      if (key === undefined) {
        unknown(entry, place, keys, about, reading);
        continue;
      }
      const value = key.type.read(
        { parent: place, key: entry.key, keyAt: entry.keyAt, node: entry.node },
        reading,
      );
      if (value !== undefined) draft[entry.key] = value;
    }
    for (const key of required) {
      if (node.entries.has(key)) continue;
      reading.report(
        place,
        "missing-key",
        `${upper(about)} needs \`${key}\`.`,
        `Add \`${key}\`: ${keys[key]?.about}`,
        {
          received: "",
        },
      );
    }
    // Each key was read by its own type just above; the compiler cannot follow that through a loop.
    const result = draft as ObjectDraft<K>;
    reading.settle(result, place);
    settle?.(result, place, reading);
    return result;
  };

  return {
    what,
    keys,
    read,
    schema(definitions) {
      if (!definitions.has(name)) {
        definitions.set(name, {}); // taken before descending, so that a type may contain itself
        definitions.set(name, objectSchema(about, keys, required, definitions));
      }
      return { $ref: `#/$defs/${name}` };
    },
  };
}

function objectSchema(about: string, keys: Keys, required: string[], definitions: Definitions): JsonSchema {
  const properties: JsonSchema = {};
  for (const [key, { type, about: description, fallback }] of Object.entries(keys)) {
    properties[key] = { ...type.schema(definitions), description };
    if (fallback !== undefined) properties[key] = { ...properties[key], default: fallback };
  }
  const schema: JsonSchema = {
    type: "object",
    description: `${upper(about)}.`,
    properties,
    additionalProperties: false,
  };
  if (required.length > 0) schema.required = required;
  return schema;
}

function repeated(node: MapNode, place: Place, reading: Reading): void {
  for (const entry of node.repeated) {
    const at: Place = { parent: place, key: entry.key, keyAt: entry.keyAt, node: entry.node };
    reading.report(at, "repeated-key", `\`${entry.key}\` is here twice.`, "Keep one of the two.", {
      received: "",
      at: entry.keyAt,
    });
  }
}

function unknown(entry: Entry, place: Place, keys: Keys, about: string, reading: Reading): void {
  const meant =
    Object.keys(keys).find((key) => keys[key]?.mistakenFor?.includes(entry.key)) ??
    reading.suggest(entry.key, Object.keys(keys));
  const names = Object.keys(keys).sort();
  const listed = names.length > 14 ? `${names.slice(0, 14).join(", ")}, and others` : names.join(", ");
  const { node } = entry;
  // `{ name: Dig, fill, duration: 1 }`: what stands behind the comma became a key without a value.
  const comma = node.kind === "scalar" && node.value === null && node.at >= 0 && node.end === node.at;
  let remedy = `Known here: ${listed}.`;
  if (meant !== undefined) remedy = `Did you mean \`${meant}\`? ${keys[meant]?.about}`;
  else if (comma) remedy = "Text with a comma between brackets needs quotes.";
  const at: Place = { parent: place, key: entry.key, keyAt: entry.keyAt, node: entry.node };
  reading.report(at, "unknown-key", `${upper(about)} has no key \`${entry.key.slice(0, 60)}\`.`, remedy, {
    received: entry.key,
    at: entry.keyAt,
  });
}

function upper(sentence: string): string {
  return sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
}

function sample(required: string[], keys: Keys): string {
  const names = required.length > 0 ? required : Object.keys(keys).slice(0, 2);
  return names.map((key) => `\`${key}\``).join(", ");
}

function shortly(given: string): string {
  const line = given.split("\n")[0] ?? "";
  return line.length > 30 ? `${line.slice(0, 27)}...` : line;
}

/**
 * A map from free labels to values, e.g. calendars by name.
 *
 * @param label  Called with each label and its place.
 */
export function mapOf<D>(
  about: string,
  value: Type<D>,
  label: (name: string, place: Place, reading: Reading) => void,
): Type<Map<string, D>> {
  return {
    what: about,
    read(place, reading) {
      const { node } = place;
      if (node.kind !== "map") {
        reading.report(place, "wrong-type", `${upper(about)}.`, "Write `name: { ... }` for each.");
        return undefined;
      }
      repeated(node, place, reading);
      const result = new Map<string, D>();
      for (const entry of node.entries.values()) {
        const at = childPlace(place, entry.key);
        checkCharacters(entry.key, at, reading);
        label(entry.key, at, reading);
        const draft = value.read(at, reading);
        if (draft !== undefined) result.set(entry.key, draft);
      }
      return result;
    },
    schema: (definitions) => ({ type: "object", additionalProperties: value.schema(definitions) }),
  };
}
