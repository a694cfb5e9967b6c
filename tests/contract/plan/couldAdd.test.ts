// What `couldAdd` does and does not do (the project's published format): nothing until it is taken in; then
// `capacity` is that much greater, from its day on, and the money is spent once.

import { applyScenario, forecast, type Plan } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { mustRead } from "./plans.ts";

/** Two tasks of five days each that one crew works on, whole: in a row with one crew, side by side with two. */
const PLAN = (couldAdd: string, more = "") => `format: 1
title: Two halls
start: 2027-03-01
calendar: every-day
people:
  - { id: crew, name: Crew, rate: 100${couldAdd}${more} }
tasks:
  - { id: a, name: A, duration: 5, people: crew }
  - { id: b, name: B, duration: 5, people: crew }
`;
const WITH = ", couldAdd: { capacity: 1, cost: 700 }";
const finishAndCost = (plan: Plan, ids: string[] = []) => {
  const result = forecast(plan, { iterations: 10, with: ids });
  expect(result.problems).toEqual([]);
  return [result.forecast?.asWritten.day, result.forecast?.asWritten.cost];
};

describe("couldAdd", () => {
  it("changes no figure until it is taken in", () => {
    const without = forecast(mustRead(PLAN("")), { iterations: 10 }).forecast;
    const beside = forecast(mustRead(PLAN(WITH)), { iterations: 10 }).forecast;
    expect({ ...beside, plan: undefined }).toEqual({ ...without, plan: undefined });
  });

  it("taken in, lets both tasks run side by side and is paid once", () => {
    expect(finishAndCost(mustRead(PLAN(WITH)))).toEqual([10, 1000]);
    expect(finishAndCost(mustRead(PLAN(WITH)), ["crew"])).toEqual([5, 1700]);
  });

  it("is as good as a greater `capacity` written in the plan", () => {
    const written = forecast(mustRead(PLAN("", ", capacity: 2")), { iterations: 10 }).forecast;
    const added = forecast(mustRead(PLAN(WITH)), { iterations: 10, with: ["crew"] }).forecast;
    expect(added?.tasks.map(({ start, finish }) => [start, finish])).toEqual(
      written?.tasks.map(({ start, finish }) => [start, finish]),
    );
  });

  it("counts from its day on", () => {
    // The second crew comes on day 3, so b runs from day 3 to day 8.
    const plan = mustRead(PLAN(", couldAdd: { capacity: 1, from: 2027-03-04 }"));
    expect(finishAndCost(plan, ["crew"])).toEqual([8, 1000]);
  });

  it("leaves absences before its day as they were, and takes the same part of the whole after it", () => {
    // Capacity 2, half of it away on days 0 and 1: one crew's worth is left until the third comes on day 1.
    const away = ", capacity: 2, away: { from: 2027-03-01, to: 2027-03-02, share: 0.5 }";
    const plan = mustRead(PLAN(`${away}, couldAdd: { capacity: 1, from: 2027-03-02 }`));
    const { plan: taken } = applyScenario(plan, { with: ["crew"] });
    const present = (day: string) =>
      (taken.people[0]?.away ?? [])
        .filter(({ from, to }) => from <= day && day <= to)
        .reduce((free, { share }) => free - share * 3, 3);
    expect(present("2027-03-01")).toBeCloseTo(1, 12);
    expect(present("2027-03-02")).toBeCloseTo(1.5, 12);
    expect(present("2027-03-03")).toBeCloseTo(3, 12);
  });

  it("is a day off still when the person is wholly away", () => {
    const away = ", away: { from: 2027-03-01, to: 2027-03-02 }";
    expect(finishAndCost(mustRead(PLAN(`${away}${WITH}`)), ["crew"])).toEqual([7, 1700]);
  });

  it("asked of somebody who could not add any, is a problem that names who could", () => {
    const { problems } = applyScenario(mustRead(PLAN(WITH)), { with: ["a"] });
    expect(problems.map(({ code, path, remedy }) => [code, path, remedy])).toEqual([
      ["unknown-id", "--with", "Name one of: crew."],
    ]);
  });
});

describe("applyScenario(plan, { with }) of a group", () => {
  const text = `${PLAN("")}risks:
  - id: north
    name: Wind from the north
    probability: 0.3
    group: wind
    impacts: { tasks: a, delay: 2 }
    responses: [{ id: wall, action: A wall, probability: 0.5 }, { id: hedge, action: A hedge, probability: 0.1 }]
  - { id: south, name: Wind from the south, probability: 0.4, group: wind, impacts: { tasks: b, delay: 2 } }
`;
  it("refuses a response that raises a slot of the group's draw", () => {
    const plan = mustRead(text);
    expect(applyScenario(plan, { with: ["wall"] }).problems.map(({ code }) => code)).toEqual([
      "group-raised",
    ]);
    expect(applyScenario(plan, { with: ["hedge"] }).problems).toEqual([]);
    // Together they leave 0.3 * 0.5/0.3 * 0.1/0.3 = 0.167, which is lower than before.
    expect(applyScenario(plan, { with: ["wall", "hedge"] }).problems).toEqual([]);
  });
});
