// The example plans are what a check should leave: nothing that contradicts the promise, no warning but those their
// stories are about (the date asked for is missed more often than made), and every acceptance with its finding.
import { readFileSync } from "node:fs";
import { checkPlan, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { examples, examplesEnding } from "../examples/places.ts";

const names = examplesEnding(".plan.yaml").filter((name) => name !== "minimal.plan.yaml");

describe.each(names)("examples/%s", (name) => {
  const { plan } = readPlan(readFileSync(examples + name, "utf8"));
  if (plan === undefined) throw new Error(name);
  const { findings, measures } = checkPlan(plan, { today: "2027-01-15" });

  it("has no error and no warning of the plan as written that nobody accepted", () => {
    const grave = findings.filter(({ severity, accepted }) => severity !== "note" && accepted === undefined);
    expect(grave).toEqual([]);
  });

  it("accepts what is there, and little of it", () => {
    expect(findings.filter(({ code }) => code === "acceptance-unused")).toEqual([]);
    expect(plan.acceptedFindings.length).toBeGreaterThan(0);
    expect(findings.filter(({ accepted }) => accepted !== undefined).length).toBeLessThan(6);
  });

  it("has a path that responds, all logic in place, and every link from a finish to a start", () => {
    const value = (code: string) => measures.find((each) => each.code === code)?.value;
    expect(value("path-test")).toBe(600);
    expect(value("finish-to-start")).toBe(1);
    expect(value("missing-logic")).toBeLessThanOrEqual(0.05);
  });
});

it("the least example keeps the notes of a first sketch: it is an invitation to ask", () => {
  const { plan } = readPlan(readFileSync(`${examples}minimal.plan.yaml`, "utf8"));
  if (plan === undefined) throw new Error("minimal");
  const { findings } = checkPlan(plan, { today: "2027-01-15" });
  expect(findings.some(({ severity }) => severity === "error")).toBe(false);
  expect(findings.map(({ code }) => code)).toContain("too-few-tasks");
});
