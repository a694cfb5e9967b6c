// Bounds the time of reading (the project's own budget, no source): 3,000 tasks of JSON well under a second.

import { readPlan } from "@leeway/core";
import { describe, expect, it } from "vitest";

function bigPlan(n: number): string {
  const tasks = Array.from({ length: n }, (_, i) => ({
    id: `t${i}`,
    name: `Task ${i}`,
    duration: [1 + (i % 7), 3 + (i % 7), 9 + (i % 7)],
    after: i < 2 ? [] : [`t${i - 1}`, { task: `t${i - 2}`, link: "start-to-start", lag: 2 }],
    people: ["ada", { id: "ben", share: 0.5 }],
    cost: { low: 100, likely: 200, high: 500, shape: "triangular" },
  }));
  const people = [
    { id: "ada", name: "Ada" },
    { id: "ben", name: "Ben" },
  ];
  return JSON.stringify({ format: 1, title: "Big", start: "2027-01-04", people, tasks });
}

/** Processor time, so that a busy machine does not count; the best of five. */
function seconds(text: string): number {
  const times = Array.from({ length: 5 }, () => {
    const begin = process.cpuUsage();
    expect(readPlan(text).plan?.tasks.length).toBeGreaterThan(0);
    const { user, system } = process.cpuUsage(begin);
    return (user + system) / 1e6;
  });
  return Math.min(...times);
}

describe("readPlan(JSON)", () => {
  it("reads 3,000 tasks in well under a second and 300 well below 100 ms", () => {
    expect(seconds(bigPlan(300))).toBeLessThan(0.1);
    expect(seconds(bigPlan(3000))).toBeLessThan(0.7);
  });
});
