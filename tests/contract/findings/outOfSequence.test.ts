import { planFindings, readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";

/** A task that waits for another, with what is recorded of both. */
function found(before: string, after: string, link = "{ task: one }"): [string, string][] {
  const { plan, problems } = readPlan(`format: 1
title: Shed
start: 2027-02-01
statusDate: 2027-02-12
tasks:
  - { id: one, name: One, duration: [2, 3, 6], ${before} }
  - { id: two, name: Two, duration: [2, 3, 6], after: [${link}], ${after} }
`);
  if (plan === undefined) throw new Error(JSON.stringify(problems));
  return planFindings(plan)
    .filter(({ code }) => code === "out-of-sequence")
    .map(({ path, message }): [string, string] => [path, message]);
}

// Progress against the logic of the network is named so in GAO-16-89G, best practice 9 (from memory); which days
// contradict which link follows from the four kinds of link: common practice, no source.
describe("progress out of sequence", () => {
  it("is found at the task that has not happened yet", () => {
    const [[path, says] = []] = found(
      "started: 2027-02-01, remaining: 2",
      "started: 2027-02-04, remaining: 3",
    );
    expect(path).toBe("tasks[0]");
    expect(says).toContain("Two started on 2027-02-04, and “One”, which it waits for, has not finished.");
    const [[, notBegun] = []] = found(
      "cost: 1",
      "started: 2027-02-04, remaining: 3",
      "{ task: one, link: start-to-start }",
    );
    expect(notBegun).toContain("has not started");
  });

  it("is found at the link where both days are known; a start can follow a finish on the next day", () => {
    const one = "started: 2027-02-01, finished: 2027-02-04";
    expect(found(one, "started: 2027-02-05, remaining: 3")).toEqual([]);
    const [[path, says] = []] = found(one, "started: 2027-02-04, remaining: 3");
    expect(path).toBe("tasks[1].after[0]");
    expect(says).toContain(
      "Two started on 2027-02-04, and “One”, which it waits for, finished on 2027-02-04.",
    );
    const ends = "{ task: one, link: finish-to-finish }";
    expect(found(one, "started: 2027-02-01, finished: 2027-02-04", ends)).toEqual([]);
    expect(found(one, "started: 2027-02-01, finished: 2027-02-03", ends)).toHaveLength(1);
  });

  it("is none where the link begins early, or the task before may not be needed", () => {
    const begun = "started: 2027-02-04, remaining: 3";
    expect(found("cost: 1", begun, "{ task: one, lag: -2 }")).toEqual([]);
    expect(found("cost: 1, chance: 0.5", begun)).toEqual([]);
    expect(found("cost: 1", "cost: 1")).toEqual([]);
  });
});
