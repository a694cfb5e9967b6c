import type { Place } from "../source/place.ts";
import type { Json } from "../source/toJson.ts";
import type { Reading } from "./reading.ts";

export type JsonSchema = { [key: string]: Json };
/** Named parts of the schema, collected under `$defs`. */
export type Definitions = Map<string, JsonSchema>;

/**
 * One kind of value in the plan document. Reading, checking, suggestions and the published JSON Schema all
 * come from it. `D` is the draft it reads: objects with every key optional, since a draft may be faulty.
 */
export interface Type<D> {
  /** What belongs here, in words for a planner, e.g. `a date like 2027-02-01`. */
  what: string;
  /** Reports every problem below `place`; `undefined` where nothing usable came. */
  read(place: Place, reading: Reading): D | undefined;
  schema(definitions: Definitions): JsonSchema;
}

/** A key of an object: its type, one sentence about it, and what holds where it is left out. */
export interface Key<D> {
  type: Type<D>;
  about: string;
  required: boolean;
  /** Published as the default; filled in by `build/`. */
  fallback?: Json;
  /** Words people write for it. */
  mistakenFor?: readonly string[];
}

/** Draft of a type. */
export type DraftOf<T> = T extends Type<infer D> ? D : never;

/** A key that must be there. */
export function required<D>(type: Type<D>, about: string, mistakenFor?: readonly string[]): Key<D> {
  return { type, about, required: true, ...(mistakenFor && { mistakenFor }) };
}

/** A key that may be left out. */
export function optional<D>(
  type: Type<D>,
  about: string,
  extra?: Pick<Key<D>, "fallback" | "mistakenFor">,
): Key<D> {
  return { type, about, required: false, ...extra };
}
