// What a task waits for is shown by names and stored by ids: the one leads back to the other, whatever tasks are called.
import type { Link } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linksCell, readLinksCell } from "../../../apps/notebook/src/plan/linksEntry.ts";
import { shownNames } from "../../../apps/notebook/src/plan/shownName.ts";

const SEED = 20270201;
/** Few words, so that names repeat, are ids or parts of each other, and hold what parts two names. */
const name = fc
  .array(fc.constantFrom("a", "b", "A", "dig", "Dig", "the", ",", ";", " ", "  ", "\n", ", "), {
    minLength: 1,
    maxLength: 5,
  })
  .map((parts) => parts.join(""))
  .filter((text) => text.trim() !== "");
const tasks = fc
  .uniqueArray(fc.constantFrom("a", "b", "dig", "the", "dig-a", "x", "y"), { minLength: 1 })
  .chain((ids) => fc.tuple(...ids.map((id) => fc.record({ id: fc.constant(id), name }))));

describe("what a task waits for", () => {
  it("reads back from the names that are shown", () => {
    fc.assert(
      fc.property(
        tasks.chain((all) => fc.tuple(fc.constant(all), fc.subarray(all.map(({ id }) => id)), fc.boolean())),
        ([all, ids, moved]) => {
          const order = moved ? [...ids].reverse() : ids;
          const cell = linksCell(
            order.map((task) => ({ task }) as Link),
            shownNames(all),
          );
          const known = new Set(all.map(({ id }) => id));
          expect(readLinksCell(cell, "after", undefined, known, "itself", all)).toEqual({
            edits: order.length === 0 ? [] : [{ path: "after", value: order }],
          });
        },
      ),
      { seed: SEED, numRuns: 2000 },
    );
  });

  it("is shown by a name that one task has, else by its id", () => {
    const shown = shownNames([
      { id: "dig", name: "Dig  the\ntrench" },
      { id: "pour", name: "Pour, then wait" },
      { id: "one", name: "Check" },
      { id: "two", name: "check" },
      { id: "three", name: "Dig" },
      { id: "four", name: "Cut; fit" },
      { id: "frame", name: "Frame" },
    ]);
    expect(Object.fromEntries(shown)).toEqual({
      dig: "Dig the trench",
      pour: "Pour, then wait",
      one: "one",
      two: "two",
      three: "three",
      four: "four",
      frame: "Frame",
    });
  });
});
