import { CORE_SCHEMA, load, realMapTag } from "js-yaml";

const SCHEMA = CORE_SCHEMA.withTags(realMapTag);

/**
 * A text as data, read by a library that has nothing to do with ours: js-yaml for YAML (it passes the YAML test suite,
 * says its page), the platform for JSON. Its error is thrown.
 */
export function otherReading(text: string): unknown {
  const bare = text.replace(/^\uFEFF/, "");
  try {
    return JSON.parse(bare);
  } catch {
    return plain(load(bare, { schema: SCHEMA }));
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
