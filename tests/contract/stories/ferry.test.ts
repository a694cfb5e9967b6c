import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readHistory, readPlan } from "@leeway/core";
import { beforeAll, describe, expect, it } from "vitest";
import { build, leeway } from "../command/leeway.ts";
import { type Told, tellStory } from "./tellStory.ts";

const folder = fileURLToPath(new URL("../../../examples/stories/ferry", import.meta.url));
const page = `${folder}/README.md`;
const written = readFileSync(page, "utf8");

// The page says only that it reads as it did when somebody last looked at it: after a change of the program, write it
// anew with LEEWAY_WRITE_GOLDEN=1 and look at it. What must hold whatever the figures are is asked below.
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";

describe("the ferry: before the summer or in September", () => {
  let told: Told;
  const outputOf = (start: string, nth = 0): string =>
    told.runs.filter(({ command }) => command.startsWith(`leeway ${start}`))[nth]?.out ?? "";
  const file = (name: string): string => readFileSync(join(told.folder, name), "utf8");

  beforeAll(async () => {
    await build();
    told = await tellStory(page, folder, { "ferry.plan.yaml": "ostrel-ferry-ticketing.plan.yaml" });
    if (writing) writeFileSync(page, told.page);
  }, 600_000);

  it("reads as it did when somebody last looked at it", () => {
    if (!writing) expect(told.page).toBe(written);
  });

  it("never names a day of the blackout, and has limits of the middle on both sides of it", () => {
    const days = [...outputOf("confidence", 0).matchAll(/^ +\d\d % [* ] +\w{3} (\d+ \w{3} 2028)/gm)].map(
      ([, day]) => new Date(`${day} UTC`).toISOString().slice(0, 10),
    );
    expect(days.length).toBeGreaterThan(5);
    expect(days).toEqual([...days].sort());
    for (const day of days) expect(day < "2028-05-15" || day > "2028-09-11").toBe(true);
    expect(outputOf("confidence", 0)).toMatch(/ 50 % .* May to \d+ Sep/);
  });

  it("accepts the objection by name, and is approved on the condition of the port authority", () => {
    const { plan } = readPlan(file("ferry.plan.yaml"));
    expect(plan?.objections.map(({ acceptedBy }) => acceptedBy)).toEqual(["managing-director"]);
    expect(outputOf("approvals")).toContain("on condition");
    expect(plan?.approvals.map(({ plan: hash }) => hash)).toEqual(Array(4).fill(plan?.approvalSha256));
  });

  it("keeps a forecast at each step, in a history whose links hold", () => {
    const { entries, breaks, torn } = readHistory(file("ferry.history.jsonl"));
    expect([breaks, torn]).toEqual([[], undefined]);
    expect(entries.map(({ statusDate }) => statusDate)).toEqual([undefined, "2027-10-29", "2028-02-11"]);
  });

  it("ends with one hump: May is as good as gone", async () => {
    const words = ["forecast", "ferry.plan.yaml", "--json"];
    const { finish } = JSON.parse((await leeway(words, { cwd: told.folder })).out);
    const likely = finish.percentiles.filter(({ p }: { p: number }) => p >= 0.2);
    expect(likely.length).toBeGreaterThan(3);
    for (const { date } of likely) expect(date > "2028-09-11").toBe(true);
  });

  it("writes the brief as one page of HTML that names no folder of this machine", () => {
    expect(file("brief.html")).toMatch(/^<!doctype html>/i);
    expect(file("brief.html")).not.toContain(told.folder);
  });
});
