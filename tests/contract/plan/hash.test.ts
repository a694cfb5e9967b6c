// The plan's hash: RFC 8785 (JSON Canonicalization Scheme) and SHA-256 (FIPS 180-4), with the rules of plan format 1.
import { createHash } from "node:crypto";
import { approvalHash, type Json, planFromData, planHash, setInPlan } from "@leeway/core";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { fixture, HEAD, mustRead, TASK } from "./plans.ts";

const sha256 = (text: string) => createHash("sha256").update(text, "utf8").digest("hex");

describe("planHash(document)", () => {
  // RFC 8785 by its authors' test data: github.com/cyberphone/json-canonicalization, testdata/input/values.json
  // and testdata/output/values.json, read. The hash is Node's own SHA-256 of the published output.
  it("hashes the canonical form of the authors' example", () => {
    const input = String.raw`{
  "numbers": [1E30, 4.50, 333333333.33333329, 2e-3, 0.000000000000000000000000001],
  "escaping": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
}`;
    const output = String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","literals":[null,true,false],"numbers":[1e+30,4.5,333333333.3333333,0.002,1e-27]}`;
    expect(planHash(JSON.parse(input) as Json)).toBe(sha256(output));
  });

  // RFC 8785, section 3.2.3, recalled: keys are sorted by UTF-16 code units, not by code points or locale.
  it("sorts keys by UTF-16 code units", () => {
    const keys = ["\u20ac", "\r", "\ufb33", "1", "\ud83d\ude00", "\u0080", "\u00f6"];
    const sorted = ["\r", "1", "\u0080", "\u00f6", "\u20ac", "\ud83d\ude00", "\ufb33"];
    const written = `{${sorted.map((key) => `${JSON.stringify(key)}:0`).join(",")}}`;
    expect(planHash(Object.fromEntries(keys.map((key) => [key, 0])))).toBe(sha256(written));
  });

  it("hashes a plan as written, defaults not filled in", () => {
    const canonical =
      '{"format":1,"start":"2027-01-04","tasks":[{"duration":3,"id":"a","name":"A"}],"title":"T"}';
    expect(mustRead(HEAD + TASK).sha256).toBe(sha256(canonical));
    expect(mustRead(`${HEAD}${TASK}iterations: 10000\n`).sha256).not.toBe(sha256(canonical));
  });

  it("sorts every list of objects with `id`, at every depth, and no other", () => {
    const document = (risks: string[], responses: string[], between: string[]): Json => ({
      risks: risks.map((id) => ({ id, responses: responses.map((each) => ({ id: each })) })),
      correlations: [{ between }],
    });
    const first = planHash(document(["r", "s"], ["x", "y"], ["a", "b"]));
    expect(planHash(document(["s", "r"], ["y", "x"], ["a", "b"]))).toBe(first);
    expect(planHash(document(["r", "s"], ["x", "y"], ["b", "a"]))).not.toBe(first);
  });

  it("is the same for YAML and JSON, comments and the order of keys aside", () => {
    const yaml = fixture("complete.plan.yaml");
    const data: unknown = parse(yaml);
    const { sha256: hash, approvalSha256 } = mustRead(yaml);
    const reversed = (value: unknown): unknown =>
      typeof value !== "object" || value === null
        ? value
        : Array.isArray(value)
          ? value.map(reversed)
          : Object.fromEntries(
              Object.entries(value)
                .reverse()
                .map(([key, item]) => [key, reversed(item)]),
            );
    for (const text of [`# more\n${yaml}`, JSON.stringify(data), JSON.stringify(reversed(data), null, 2)]) {
      expect(mustRead(text)).toMatchObject({ sha256: hash, approvalSha256 });
    }
    expect(planFromData(data).plan?.sha256).toBe(hash);
  });

  it("takes `7`, `7.0` and JSON's 7 for one number", () => {
    const hash = (written: string) =>
      mustRead(`${HEAD}tasks: [{ id: a, name: A, duration: ${written} }]`).sha256;
    expect(new Set([hash("7"), hash("7.0"), hash("0x7"), hash("7e0")]).size).toBe(1);
    expect(hash("8")).not.toBe(hash("7"));
  });

  it("leaves approvals, objections, changes and accepted findings out", () => {
    const plain = mustRead(HEAD + TASK);
    const people = "people: { id: p, name: P }\n";
    const decided = `${HEAD}${people}approvals: { who: p, decision: approve }\nobjections: { id: o }\nchanges: { what: x }\nacceptedFindings: { finding: no-ranges, who: p, date: 2027-01-05, why: Fixed by law }\n${TASK}`;
    expect(mustRead(decided).sha256).toBe(mustRead(HEAD + people + TASK).sha256);
    expect(mustRead(decided).sha256).not.toBe(plain.sha256);
  });
});

describe("approvalHash(document)", () => {
  const text = fixture("complete.plan.yaml");
  const plan = mustRead(text);

  it("does not change with progress, which changes the plan's hash", () => {
    const edits: [path: (string | number)[], value: unknown][] = [
      [["statusDate"], "2027-01-18"],
      [["tasks", "drawings", "remaining"], 1],
      [["tasks", "drawings", "spent"], 10],
      [["tasks", "survey", "finished"], "2027-01-11"],
      [["risks", "snow", "status"], "occurred"],
      [["assumptions", "floor", "status"], "closed"],
      [["assumptions", "floor", "tripped"], "2027-01-14"],
    ];
    for (const [path, value] of edits) {
      const after = mustRead(setInPlan(text, path, value).text);
      expect(after.approvalSha256, path.join(".")).toBe(plan.approvalSha256);
      expect(after.sha256, path.join(".")).not.toBe(plan.sha256);
    }
  });

  it("changes with everything else", () => {
    for (const [path, value] of [
      [["tasks", "survey", "duration"], 6],
      [["risks", "snow", "probability"], 0.2],
      [["title"], "Other"],
    ] as const) {
      expect(mustRead(setInPlan(text, path, value).text).approvalSha256).not.toBe(plan.approvalSha256);
    }
  });

  it("is the plan's hash where there is no progress", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (extra) => {
        const document = JSON.parse(JSON.stringify({ ...extra, statusDate: undefined })) as Json;
        fc.pre(!JSON.stringify(document).match(/"(tasks|risks|assumptions|statusDate)"/));
        expect(approvalHash(document)).toBe(planHash(document));
      }),
      { seed: 8785, numRuns: 200 },
    );
  });
});
