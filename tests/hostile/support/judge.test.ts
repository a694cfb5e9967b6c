// The judge of problems is judged itself: what it must find, and what it must let pass.
import type { Problem } from "@leeway/core";
import { expect, it } from "vitest";
import { faultsOf } from "./judgeProblems.ts";

const problem = (remedy: string, received = "`5`"): Problem => ({
  code: "not-allowed",
  severity: "error",
  path: "tasks[0]",
  received,
  rule: "A number.",
  remedy,
});
const inner = (one: Problem, read: string): boolean =>
  faultsOf([one], read).some((fault) => fault.startsWith("inner words"));

it.each([
  ["Write at most NaN.", "5", "a: NaN"],
  ["Write a number, not NaN.", "5", "a: NaN"],
  ["Write undefined.", "`undefined`", "undefined: [undefined]"],
  ["Write at least “NaN”.", "5", "a: 5"],
  ["Did you mean [object Object]?", "5", "“[object Object]”"],
])("finds the program's own words: %s, of %s in %s", (remedy, received, read) =>
  expect(inner(problem(remedy, received), read)).toBe(true),
);

it.each([
  ["Write a number, not NaN.", "`NaN`", "a: NaN"],
  ["Write a plan, not {a: NaN, b....", "`{a: NaN, b: 5}`", "{a: NaN, b: 5}"],
  ["Did you mean “NaN”?", "5", "NaN: {}"],
  ["Write `undefined` once.", "5", "undefined: 1"],
  ["Write at most 5.", "5", "NaN"],
])("lets what came pass: %s, of %s in %s", (remedy, received, read) =>
  expect(inner(problem(remedy, received), read)).toBe(false),
);
