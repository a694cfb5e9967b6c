import { readFileSync } from "node:fs";
import { type Brief, type BriefAnswers, brief, type Plan, readPlan } from "@leeway/core";

/** Reads a plan that must be free of errors. */
export function planOf(text: string): Plan {
  const { plan, problems } = readPlan(text);
  if (plan === undefined) throw new Error(JSON.stringify(problems, null, 1));
  return plan;
}

export function examplePlan(name: string): Plan {
  const file = new URL(`../../../examples/${name}.plan.yaml`, import.meta.url);
  return planOf(readFileSync(file, "utf8"));
}

export const examples = ["quillmarsh-clinic", "brackenford-food-bank", "ostrel-ferry-ticketing"] as const;

export const today = "2027-01-20";

/** The brief of a plan that can be briefed, with what it was put together from. */
export function briefed(plan: Plan, iterations: number): { brief: Brief; answers: BriefAnswers } {
  const { brief: found, answers, problems } = brief(plan, { today, iterations });
  if (found === undefined || answers === undefined) throw new Error(JSON.stringify(problems, null, 1));
  return { brief: found, answers };
}

/** A small plan that says everything a brief asks for. Invented. */
export const fullPlan = `format: 1
title: Shed roof
currency: EUR
start: 2027-02-01
iterations: 400
commitment:
  finishOf: done
  confidence: 0.8
  finishBy: 2027-02-19
  budget: 2600
  reserve: 300
  holder: ada
  funds: [{ from: 2027-02-01, amount: 2600 }]
decision:
  ask: Have the shed closed before the spring rain
  by: 2027-01-25
  recommend: Approve, and hire the tarpaulin
  doNothing: The tools rust.
  alternatives: [{ name: A tarpaulin alone, text: It lasts one winter. }]
lateness: { perWeek: 700, once: 350 }
appraisal: { years: 3, discountRate: 0.02 }
purpose:
  goals: [{ id: dry, statement: The tools stay dry }]
  scope:
    in: [{ id: roof, name: The roof }, { id: gutter, name: A gutter, optional: true, lost: The path stays wet }]
    out: [The floor]
  constraints: [No work on Sundays]
benefits:
  - { id: tools, name: Tools kept, amount: 120, per: month }
  - { id: peace, name: Peace of mind, quantity: 2, unit: quiet nights, per: week }
people:
  - { id: ada, name: Ada Finch, role: Carpenter }
stakeholders:
  - { id: bo, name: Bo Reed, role: Treasurer, interest: The common purse, stance: neutral, approvesUpTo: 2000 }
  - { id: cy, name: Cy Marsh, role: Safety officer, interest: Nobody falls off the roof, stance: supports }
approvals:
  - { who: bo, decision: pending, note: Looks for what is left over. }
  - { who: cy, decision: approve-subject-to, date: 2027-01-18, conditions: A harness is worn }
objections:
  - { id: dear, who: bo, date: 2027-01-15, text: It is too dear, state: open }
  - { id: late, who: cy, date: 2027-01-14, text: It is too late, answer: It is not, state: answered }
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, 6], cost: 400, estimatedBy: ada, basis: Did one in 2024 }
  - { id: felt, name: Lay the felt, after: strip, duration: [4, 5, 9], cost: [1500, 1800, 3000], scope: roof }
  - { id: gutter-up, name: Hang the gutter, after: felt, duration: [1, 1, 3], cost: 90, scope: gutter }
  - { id: done, name: Roof closed, milestone: true, after: [felt, gutter-up] }
assumptions:
  - id: dry-wood
    statement: The rafters are dry
    chanceWrong: 0.2
    owner: ada
    reviewBy: 2027-02-02
    signpost: A knife goes in
    impacts: { tasks: felt, delay: [1, 2, 4], cost: 300 }
risks:
  - id: rain
    name: A week of rain
    probability: 0.3
    impacts: { tasks: felt, delay: [2, 3, 5] }
    responses:
      - { id: tarpaulin, action: Hire a tarpaulin, cost: 5, probability: 0.01, owner: ada, due: 2027-02-01 }
`;
