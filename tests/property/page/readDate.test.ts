import { formatDate } from "@leeway/charts";
import { expect, it } from "vitest";
import { readDate } from "../../../apps/notebook/src/plan/readDate.ts";

// A page of its own words, no source: what is offered is read, and is not the same twice, also where a form has written
// the document's dates as the page writes them.
it("offers two ways of writing a date that it reads, and that stay two", () => {
  const refused = readDate("next week");
  if ("value" in refused) throw new Error("It was read.");
  const shown = refused.words.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (day) => formatDate(day));
  const [, one = "", other = ""] = /Write it as (.+) or (.+)\.$/.exec(shown) ?? [];
  expect(readDate(one)).toEqual({ value: "2027-10-01" });
  expect(readDate(other)).toEqual({ value: "2027-10-01" });
  expect(other).not.toBe(one);
});
