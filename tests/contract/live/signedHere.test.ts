// What was agreed is what was signed (common practice, no source). An approval is bound to the plan without its progress:
// where it covers the plan as it stands, what was signed is known without a kept copy.
import { readPlan, signedHere } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { computeStanding } from "../../../apps/command/src/history/computeStanding.ts";
import { mustRead } from "../plan/plans.ts";

const text = (more: string, task = "") => `format: 1
title: T
start: 2027-01-04
iterations: 64
commitment: { confidence: 0.8, finishBy: 2027-01-05 }
stakeholders: { id: chair, name: The chair }
tasks: [{ id: a, name: A, duration: [3, 5, 9]${task} }]
returnTriggers: [{ id: t, chanceOfDateBelow: 0.6 }]
${more}`;
const { approvalSha256: hash } = mustRead(text(""));
const signed = `approvals: { who: chair, decision: approve, date: 2027-01-02, plan: "${hash}" }\n`;
const progress = [`statusDate: 2027-01-05\n${signed}`, ", started: 2027-01-05"] as const;

describe("signedHere(plan)", () => {
  it("is nothing where nobody signed, or signed another plan, or sent it back", () => {
    expect(signedHere(mustRead(text("")))).toBeUndefined();
    expect(signedHere(mustRead(text(signed.replace(hash, "0".repeat(64)))))).toBeUndefined();
    expect(signedHere(mustRead(text(signed.replace("approve,", "rework,"))))).toBeUndefined();
  });
  it("is the plan itself, or the plan without its progress", () => {
    const plan = mustRead(text(signed));
    expect(signedHere(plan)).toBe(plan);
    const begun = mustRead(text(...progress));
    expect(begun.tasks[0]?.started).toBe("2027-01-05");
    expect(signedHere(begun)?.tasks[0]?.started).toBeUndefined();
    expect(signedHere(begun)?.statusDate).toBeUndefined();
  });
});

describe("the standing of a plan of which no signed version was kept", () => {
  const chanceOf = async (of: string) => {
    const { plan } = readPlan(of);
    if (plan === undefined) throw new Error("no plan");
    const { standing } = await computeStanding({ text: of, plan, options: {} });
    return { chance: standing?.triggers.triggers[0]?.chance, date: standing?.forecast.committed.date };
  };
  it("is measured against what was asked for until somebody signs", async () => {
    const { chance, date } = await chanceOf(text(""));
    expect(chance).toMatchObject({ from: "plan", asked: "2027-01-05", onceSigned: date });
  });
  it("is measured against what was signed from then on, with progress or without", async () => {
    const { chance, date } = await chanceOf(text(signed));
    expect(chance).toMatchObject({ from: "signed", asked: date });
    expect((await chanceOf(text(...progress))).chance).toMatchObject({ from: "signed", asked: date });
  });
});
