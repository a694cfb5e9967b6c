// Each check on a plan that brings it about and on one that nearly does. The expectations are the rules of the table
// themselves (sources beside them in packages/core/src/findings/rules), worked out by hand for this plan of eight tasks.
import { checkRules, findingFamilies, planFromData } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { cases } from "./cases.ts";
import { cleanPlan, edited, findingsOf, TODAY } from "./cleanPlan.ts";

it("of the clean plan says nothing", () => {
  expect(findingsOf(cleanPlan(), TODAY, 400)).toEqual([]);
});

it("has a case for every check, and every check a row", () => {
  expect(Object.keys(cases).sort()).toEqual(checkRules.map(({ code }) => code).sort());
});

describe.each(checkRules)("$code", ({ code, severity, source, what, why, advice, needsForecast }) => {
  const { found, near, path, ids = [], today } = cases[code];
  const of = (edits: typeof found) =>
    findingsOf(edited(edits), today, needsForecast ? 400 : 0).filter((each) => each.code === code);

  it("is found where it is, with its place and what it is about", () => {
    const [first] = of(found);
    expect(first).toMatchObject({ path, ids, source, advice });
    expect(first?.message.endsWith(why)).toBe(true);
    expect(first?.message.length).toBeGreaterThan(why.length + 10);
  });

  it("is not found where it nearly is", () => {
    expect(of(near)).toEqual([]);
  });

  it("says what, why and what to do in plain sentences", () => {
    expect(what).toMatch(/^[A-Z][^.!]+$/);
    for (const sentence of [why, advice, source]) expect(sentence).toMatch(/^[^!]+[.?]$/);
    expect(["error", "warning", "note"]).toContain(severity);
  });
});

// Whoever reads it knows tasks by their names. Common practice, no source.
it.each(["lead", "lag", "redundant-link", "no-effect-on-finish"] as const)(
  "names in %s what a task hangs together with",
  (code) => {
    const { found, today } = cases[code];
    const document = edited(found);
    const [first] = findingsOf(document, today, 0).filter((each) => each.code === code);
    const quoted = [...(first?.message ?? "").matchAll(/“([^”]+)”/g)].map(([, name]) => name);
    const { plan } = planFromData(document);
    expect(quoted).not.toEqual([]);
    expect(plan?.tasks.map(({ name }) => name)).toEqual(expect.arrayContaining(quoted));
    expect(first?.message).not.toContain("`");
  },
);

it("lists families one after the other, grave findings first", () => {
  const all = findingsOf(
    edited({
      ...cases["open-end"].found,
      ...cases.lag.found,
      ...cases["over-budget"].found,
      "risks.frost.owner": undefined,
    }),
  );
  const rank = all.map(({ severity }) => ["error", "warning", "note"].indexOf(severity));
  expect(rank).toEqual([...rank].sort());
  const families = new Map(
    checkRules.map(({ code, family }) => [code as string, findingFamilies.indexOf(family)]),
  );
  for (const severity of ["error", "warning", "note"]) {
    const order = all
      .filter((each) => each.severity === severity)
      .map(({ code }) => families.get(code) ?? -1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  }
  expect(new Set(rank).size).toBe(3);
});

const quality = (more: object) => [{ id: "dry", statement: "Dry inside", atLeast: 6, ...more }];

// Less is missing, or more is at stake, than in the row of the table.
it.each([
  ["benefit-incomplete", { "benefits.0.baseline": undefined }, "note"],
  ["benefit-incomplete", { "benefits.0.owner": undefined }, "warning"],
  ["quality-missed", { "purpose.quality": quality({ measured: 5 }) }, "error"],
  ["quality-missed", { "purpose.quality": quality({ expected: 5 }) }, "warning"],
  ["away-in-task", { "people.lena.away": "2027-02-02" }, "warning"],
  ["away-in-task", { "people.omar.away": "2027-02-08" }, "note"],
] as const)("%s of %j is a %s", (code, edits, severity) => {
  expect(findingsOf(edited(edits)).find((each) => each.code === code)?.severity).toBe(severity);
});
