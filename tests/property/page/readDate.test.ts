import { expect, it } from "vitest";
import { readDate } from "../../../apps/notebook/src/plan/readDate.ts";

// The page's own words, no source; the second is ISO 8601.
it("offers two ways of writing a date that it reads", () => {
  const refused = readDate("next week");
  if ("value" in refused) throw new Error("It was read.");
  const [, one = "", other = ""] = /Write it as (.+) or (.+)\.$/.exec(refused.words) ?? [];
  expect(readDate(one)).toEqual({ value: "2027-10-01" });
  expect(readDate(other)).toEqual({ value: "2027-10-01" });
  expect(other).not.toBe(one);
});
