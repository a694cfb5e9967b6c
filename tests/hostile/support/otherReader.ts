import { CORE_SCHEMA, load, realMapTag, YAMLException } from "js-yaml";

const SCHEMA = CORE_SCHEMA.withTags(realMapTag);

/**
 * YAML 1.2.2, [202] l-document-prefix: byte order marks, each before comments and empty lines. js-yaml knows the first
 * one only.
 */
const PREFIX = /^(?:\uFEFF?[ \t]*(?:#[^\r\n]*)?(?:\r\n|\r|\n))*\uFEFF?/;

/**
 * A text as data, read by a library that has nothing to do with ours: js-yaml for YAML (it passes the YAML test suite,
 * says its page), the platform for JSON. Where it refuses, there is nothing to compare with: undefined.
 */
export function otherReading(text: string): { data: unknown } | undefined {
  const bare = text.replace(PREFIX, "");
  try {
    return { data: JSON.parse(bare) };
  } catch {
    try {
      return { data: plain(load(bare, { schema: SCHEMA })) };
    } catch (error) {
      if (error instanceof YAMLException) return undefined;
      throw error;
    }
  }
}

/** Maps as objects on which `__proto__` is a key like any other. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain);
  if (!(value instanceof Map)) return value;
  const result: Record<string, unknown> = Object.create(null);
  for (const [key, item] of value) result[String(key)] = plain(item);
  return result;
}
