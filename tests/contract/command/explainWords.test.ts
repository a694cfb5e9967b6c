/**
 * What `explain`, `reach` and `paths` say in cases that the examples do not show. Expected words are worked out from
 * the plans as written here; common practice, no source.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { explainText } from "../../../apps/command/src/text/explainText.ts";
import { pathsText } from "../../../apps/command/src/text/pathsText.ts";
import { reachText } from "../../../apps/command/src/text/reachText.ts";
import {
  drivingPaths,
  explain,
  forecast,
  planFromData,
  reach,
  readPlan,
} from "../../../packages/core/src/index.ts";

const page = { width: 80, strong: (text: string) => text };

function planOf(document: object) {
  const { plan, problems } = planFromData({ format: 1, title: "T", start: "2027-03-01", ...document });
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return plan;
}

function explained(document: object, options: { confidence?: number; iterations?: number } = {}) {
  const { explanation } = explain(planOf(document), { iterations: 2000, ...options });
  if (explanation === undefined) throw new Error("no answer");
  return { explanation, text: explainText(explanation, page, "PLAN").replace(/\s+/g, " ") };
}

const task = { id: "work", name: "Work", duration: [10, 20, 30], cost: [9000, 10_500, 13_000] };

describe("explain, in words", () => {
  it("writes the sums that an item is held at as it writes all sums", () => {
    const { explanation, text } = explained({ estimates: { bounds: "p10-p90" }, tasks: task });
    expect(explanation.tornado?.map(({ kind }) => kind)).toContain("task-cost");
    expect(text).toContain("Work EUR 9,000 0 EUR 13,000 0");
  });

  it("says of a plan that is finished that nothing is uncertain, and shows no tables of zeros", () => {
    const people = { id: "lena", name: "Lena", rate: 100 };
    const done = { started: "2027-03-01", finished: "2027-03-05", people: "lena" };
    const { text } = explained({
      statusDate: "2027-03-08",
      people,
      tasks: { id: "work", name: "Work", duration: [2, 3, 9], ...done },
    });
    // Five days of one person at 100 a day.
    expect(text).toContain("Every future ends on Friday 5 March 2027 and costs EUR 500");
    expect(text).toContain("Nothing in the plan is uncertain");
    expect(text).not.toContain("The whole");
    expect(text).not.toContain("One at a time");
  });

  it("names the cause of a difference, not what pulls the other way, where the commitment is early", () => {
    // "late" only ever takes longer than its likely 5 days; at 5 % the 10 to 30 days of "work" come out far below 20.
    const late = { id: "late", name: "Late", duration: [5, 5, 8], after: "work" };
    const { explanation, text } = explained({ tasks: [task, late] }, { confidence: 0.05 });
    const [largest] = explanation.shares;
    expect(largest?.name).toBe("Late");
    expect(largest?.workingDays).toBeGreaterThan(0);
    expect(explanation.contingency.workingDays).toBeLessThan(0);
    expect(text).toMatch(/The largest cause of the time is “Work”: −/);
  });

  it("does not call more than all of it a part of it", () => {
    // "early" usually beats its likely 20 days, so the share of "work" is larger than the whole.
    const early = { id: "early", name: "Early", duration: [5, 20, 20], after: "work" };
    const { explanation, text } = explained({ tasks: [task, early] });
    const work = explanation.shares.find(({ id }) => id === "work");
    expect(work?.workingDays).toBeGreaterThan(explanation.contingency.workingDays);
    expect(text).toMatch(/The largest cause of the time is “Work”: [\d.]+ working days?[.;]/);
  });

  it("calls people by another name where the plan as written already waits for them", () => {
    // Both tasks want the one person, so the plan as written takes 20 + 20 days and not 20.
    const both = [task, { ...task, id: "more", name: "More" }].map((each) => ({ ...each, people: "p" }));
    const { explanation } = explained({ tasks: both, people: { id: "p", name: "P" } });
    const people = explanation.shares.find(({ kind }) => kind === "people");
    expect(people?.name).toBe("More waiting for people");
    expect(explanation.walk.find(({ kind }) => kind === "people")?.step).toBe("More waiting for people");
    const apart = explained({ tasks: { ...task, people: "p" }, people: { id: "p", name: "P" } }).explanation;
    expect(apart.shares.find(({ kind }) => kind === "people")?.name).toBe("Limited people");
  });

  it("says of few futures that they are few", () => {
    const one = explained({ tasks: task }, { iterations: 1 }).text;
    expect(one).toContain("seed leeway, 1 future, latin-hypercube design");
    expect(one).toContain("Only 1 future: another seed may give quite other figures.");
    expect(explained({ tasks: task }, { iterations: 999 }).text).toContain("Only 999 futures:");
    expect(explained({ tasks: task }, { iterations: 1000 }).text).not.toContain("Only");
  });
});

describe("what is too minor for a row of its own", () => {
  it("is not one of the five that add most on average", () => {
    // A risk of 15 % adds nothing at 80 % when it is alone, and is one of the largest with the others.
    const path = new URL("../../../examples/brackenford-food-bank.plan.yaml", import.meta.url);
    const { plan } = readPlan(readFileSync(path, "utf8"));
    if (plan === undefined) throw new Error("no plan");
    const { explanation } = explain(plan, { iterations: 1000 });
    const drivers = forecast(plan, { iterations: 1000 }).forecast?.drivers ?? [];
    const largest = [...drivers].sort((a, b) => b.days - a.days).slice(0, 5);
    expect(largest.map(({ kind }) => kind)).toContain("risk");
    const rows = explanation?.shares.filter(({ gathers }) => gathers === undefined) ?? [];
    const named = rows.flatMap(({ id, members }) => [id, ...(members ?? [])]);
    expect(named).toEqual(expect.arrayContaining(largest.map(({ id }) => id)));
    const others = explanation?.shares.find(({ id }) => id === "other-risks")?.gathers ?? [];
    expect(others.length).toBeGreaterThan(1);
    const text = explanation === undefined ? "" : explainText(explanation, page, "PLAN").replace(/\s+/g, " ");
    expect(text).toContain(`${others.length} other risks, by id: ${others.join(", ")}.`);
  });
});

describe("reach and paths, in words", () => {
  it("have words for one option", () => {
    const risk = {
      id: "rain",
      name: "Rain",
      probability: 0.3,
      impacts: { tasks: "work", delay: 5 },
      responses: { id: "tent", action: "Tent", cost: 10, probability: 0.1 },
    };
    const plan = planOf({ tasks: task, risks: risk, commitment: { finishBy: "2027-03-20" } });
    const answer = reach(plan, { iterations: 1000 }).reach;
    if (answer === undefined) throw new Error("no answer");
    expect(reachText(answer, page, "PLAN")).toContain("The one option was tried.");
  });

  it("say of a date before the start that it is one", () => {
    const answer = reach(planOf({ tasks: task }), { iterations: 100, finishBy: "2027-02-26" }).reach;
    if (answer === undefined) throw new Error("no answer");
    const text = reachText(answer, page, "PLAN").replace(/\s+/g, " ");
    expect(text).toContain("There was nothing to try.");
    expect(text).toContain(
      "To finish by Friday 26 February 2027, 8 times in 10: nothing can, the plan starts on Monday 1 March 2027.",
    );
  });

  it("have words for one future", () => {
    const { paths } = drivingPaths(planOf({ tasks: task }), { iterations: 1 });
    if (paths === undefined) throw new Error("no answer");
    expect(pathsText(paths, page, "PLAN", {}, false)).toContain("One future has no range");
  });
});
