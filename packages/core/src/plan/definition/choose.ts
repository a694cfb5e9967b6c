import type { Place } from "../source/place.ts";
import type { Reading } from "./reading.ts";
import type { Definitions, JsonSchema, Type } from "./type.ts";

/**
 * A short form or an object: `survey` or `{ task: survey, lag: 2 }`. Both become the object's draft.
 *
 * @param expand  Makes the object from the short form.
 */
export function shorthand<S, O extends object>(
  short: Type<S>,
  long: Type<O>,
  expand: (short: S) => O,
): Type<O> {
  return {
    what: `${short.what}, or ${long.what}`,
    read(place: Place, reading: Reading) {
      if (place.node.kind === "map") return long.read(place, reading);
      const draft = short.read(place, reading);
      return draft === undefined ? undefined : reading.settle(expand(draft), place);
    },
    schema: (definitions: Definitions): JsonSchema => ({
      anyOf: [short.schema(definitions), long.schema(definitions)],
    }),
  };
}
