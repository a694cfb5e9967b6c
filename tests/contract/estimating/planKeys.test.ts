// The plan keys `opinions` and `detailOf`, as the project's published format describes them.
import { forecast, planFromData, planJsonSchema, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "../plan/plans.ts";

const plan = (opinions: string, more = "") => `format: 1
title: T
start: 2027-01-04
people: [{ id: ana, name: Ana }, { id: ben, name: Ben }]
tasks:
  - id: dig
    name: Dig
    duration: [3, 4, 8]${opinions}
${more}`;
const SAID = `
    opinions:
      - { by: ana, date: 2026-11-02, low: 3, likely: 4, high: 9, bounds: p10-p90, basis: Dug two, order: [basis, high, low, likely] }
      - { by: ben, low: 2, likely: 3, high: 5, dissent: No rock here }`;

describe("opinions", () => {
  it("are read in full, and are of the task's time unless they say", () => {
    const [task] = mustRead(plan(SAID)).tasks;
    expect(task?.opinions).toEqual([
      {
        by: "ana",
        date: "2026-11-02",
        of: "duration",
        estimate: {
          kind: "range",
          low: 3,
          likely: 4,
          high: 9,
          shape: "pert",
          bounds: "p10-p90",
          unit: "days",
        },
        basis: "Dug two",
        order: ["basis", "high", "low", "likely"],
      },
      {
        by: "ben",
        of: "duration",
        estimate: {
          kind: "range",
          low: 2,
          likely: 3,
          high: 5,
          shape: "pert",
          bounds: "extremes",
          unit: "days",
        },
        dissent: "No rock here",
      },
    ]);
  });

  it("take shape and bounds from the plan's `estimates`, as every estimate does", () => {
    const text = plan(SAID, "estimates: { shape: triangular, bounds: p5-p95 }\n");
    const said = mustRead(text).tasks[0]?.opinions?.[1]?.estimate;
    expect(said).toMatchObject({ shape: "triangular", bounds: "p5-p95" });
  });

  it("change neither hash nor any figure", () => {
    const without = mustRead(plan(""));
    const beside = mustRead(plan(SAID));
    expect([beside.sha256, beside.approvalSha256]).toEqual([without.sha256, without.approvalSha256]);
    const run = (of: typeof without) => forecast(of, { iterations: 200 }).forecast;
    expect(run(beside)).toEqual(run(without));
  });

  it("tells every fault at its place", () => {
    const wrong = `
    opinions:
      - { by: cid, low: 3, likely: 2, high: 9 }
      - { low: 3, likely: 4, high: 9, order: [high, middle] }
      - { by: ana, low: 3, high: 9, of: size }`;
    const { problems } = readPlan(plan(wrong));
    expect(problems.map(({ code, path }) => [code, path]).sort()).toEqual(
      [
        ["estimate-order", "tasks[0].opinions[0]"],
        ["estimate-shape", "tasks[0].opinions[2]"],
        ["missing-key", "tasks[0].opinions[1]"],
        ["not-a-choice", "tasks[0].opinions[1].order[1]"],
        ["not-a-choice", "tasks[0].opinions[2].of"],
        ["unknown-id", "tasks[0].opinions[0].by"],
      ].sort(),
    );
  });

  it("stand in the published schema", () => {
    const schema = JSON.stringify(planJsonSchema());
    expect(schema).toContain('"opinion":{"type":"object"');
    expect(schema).toContain('"detailOf"');
  });
});

it("detailOf names a task that need not be there any more, and counts in the hash", () => {
  const data = (detailOf?: string) => ({
    format: 1,
    title: "T",
    start: "2027-01-04",
    tasks: [{ id: "dig", name: "Dig", duration: 3, ...(detailOf && { detailOf }) }],
  });
  const { plan: read, problems } = planFromData(data("groundworks"));
  expect(problems).toEqual([]);
  expect(read?.tasks[0]?.detailOf).toBe("groundworks");
  const { plan: without } = planFromData(data());
  expect([read?.sha256, without?.sha256]).toEqual(Array(2).fill(expect.stringMatching(/^[0-9a-f]{64}$/)));
  expect(read?.sha256).not.toBe(without?.sha256);
  expect(planFromData(data("Ground Works")).problems[0]?.remedy).toBe("Write ground-works.");
});
