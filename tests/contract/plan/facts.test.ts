// What an occurred risk did in fact takes the place of its ranges; who entered what and what was measured bind nobody.
import { forecast } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { HEAD, mustRead } from "./plans.ts";

const withRisk = (more: string, impacts = "{ tasks: a, delay: [1, 5, 20], cost: [100, 500, 900] }") =>
  `${HEAD}tasks:\n  - { id: a, name: A, duration: 10 }\nrisks:\n  - { id: r, name: R, probability: 0.2, impacts: ${impacts}${more} }\n`;
const answer = (text: string) => {
  const result = forecast(mustRead(text), { iterations: 300 });
  if (result.forecast === undefined) throw new Error(JSON.stringify(result.problems));
  return result.forecast;
};

describe("what an occurred risk did in fact", () => {
  it("is its own delay and cost, certain: 10 days and 3 make 13, and 250 is spent", () => {
    const { finish, cost, asWritten } = answer(
      withRisk(", status: occurred, actual: { cost: 250, days: 3 }"),
    );
    expect(finish.sd).toBe(0);
    expect(asWritten.workingDays).toBe(13);
    expect([cost.sd, asWritten.cost]).toEqual([0, 250]);
  });
  it("leaves a range where it does not say", () => {
    const { finish, cost } = answer(withRisk(", status: occurred, actual: { cost: 250 }"));
    expect(finish.sd).toBeGreaterThan(0);
    expect(cost.sd).toBe(0);
  });
  it("falls once, however many impacts named a cost", () => {
    const impacts = "[{ tasks: a, cost: [1, 2, 3] }, { cost: [4, 5, 9] }]";
    expect(answer(withRisk(", status: occurred, actual: { cost: 70 }", impacts)).asWritten.cost).toBe(70);
    const none = "{ tasks: a, delay: [1, 2, 3] }";
    expect(answer(withRisk(", status: occurred, actual: { cost: 70 }", none)).asWritten.cost).toBe(70);
  });
  it("is not taken down by a response once more; what stays a range still is", () => {
    const halved =
      ", status: occurred, actual: { cost: 250 }, responses: { id: x, action: X, adopted: true, scale: 0.5 }";
    const { asWritten } = answer(withRisk(halved));
    // As written: 10 days and half of the likely 5.
    expect([asWritten.cost, asWritten.workingDays]).toEqual([250, 12.5]);
  });
  it("stands for a factor and for a wait, and falls on a task once", () => {
    const impacts = "[{ tasks: a, factor: [1.2, 1.5, 2] }, { tasks: a, wait: [1, 5, 9], delay: [1, 2, 3] }]";
    const plan = mustRead(withRisk(", status: occurred, actual: { days: 4 }", impacts));
    const [first, second] = plan.risks[0]?.impacts ?? [];
    expect(first).toEqual({ tasks: ["a"], delay: { kind: "fixed", value: 4, unit: "days" } });
    expect(second).toEqual({ tasks: ["a"] });
    const wait = mustRead(
      withRisk(", status: occurred, actual: { days: 4 }", "{ tasks: a, wait: [1, 5, 9] }"),
    );
    expect(wait.risks[0]?.impacts).toEqual([
      { tasks: ["a"], wait: { kind: "fixed", value: 4, unit: "days" } },
    ]);
  });
});

describe("what binds no approval", () => {
  it("is what a risk did, what was measured, and who entered a task", () => {
    const bar = (more: string) =>
      `purpose: { quality: [{ id: q, statement: Quiet, atMost: 45${more} }] }\npeople: { id: p, name: P }\n`;
    const before = mustRead(withRisk("") + bar(""));
    const after = mustRead(
      withRisk(", status: occurred, actual: { days: 3 }").replace(
        "duration: 10",
        "duration: 10, enteredBy: p",
      ) + bar(", measured: 44, on: 2027-01-05"),
    );
    expect(after.approvalSha256).toBe(before.approvalSha256);
    expect(after.sha256).not.toBe(before.sha256);
    const entered = mustRead(withRisk("").replace("duration: 10", "duration: 10, enteredBy: p") + bar(""));
    expect(entered.sha256).toBe(before.sha256);
    expect(mustRead(withRisk("") + bar("").replace("45", "46")).approvalSha256).not.toBe(
      before.approvalSha256,
    );
  });
});
