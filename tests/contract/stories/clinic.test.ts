import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readHistory, readPlan } from "@leeway/core";
import { beforeAll, describe, expect, it } from "vitest";
import { build, leeway } from "../command/leeway.ts";
import { type Told, tellStory } from "./tellStory.ts";

const folder = fileURLToPath(new URL("../../../examples/stories/clinic", import.meta.url));
const page = `${folder}/README.md`;
const written = readFileSync(page, "utf8");

// The page says only that it reads as it did when somebody last looked at it: after a change of the program, write it
// anew with LEEWAY_WRITE_GOLDEN=1 and look at it. What must hold whatever the figures are is asked below.
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";

describe("the clinic, from an empty page to the first patient", () => {
  let told: Told;
  const outputOf = (start: string, nth = 0): string =>
    told.runs.filter(({ command }) => command.startsWith(`leeway ${start}`))[nth]?.out ?? "";
  const file = (name: string): string => readFileSync(join(told.folder, name), "utf8");

  beforeAll(async () => {
    await build();
    told = await tellStory(page, folder);
    if (writing) writeFileSync(page, told.page);
  }, 600_000);

  it("reads as it did when somebody last looked at it", () => {
    if (!writing) expect(told.page).toBe(written);
  });

  it("has findings at first, and only notes and accepted ones when it is put before the board", () => {
    expect(outputOf("check", 0)).toMatch(/1 warning/);
    expect(outputOf("check", 1)).toMatch(/no errors, no warnings/);
  });

  it("is approved by all four, for the plan as it was in January, and again in July after it was changed", () => {
    expect(outputOf("approvals", 0)).toContain("Approved by all as the plan is now");
    expect(outputOf("approvals", 1)).toContain("these approvals no longer cover it");
    expect(outputOf("approvals", 2)).toContain("Approved by all as the plan is now");
    const { plan } = readPlan(file("clinic.plan.yaml"));
    expect(plan?.approvals.map(({ plan: hash }) => hash)).toEqual(Array(4).fill(plan?.approvalSha256));
    expect(plan?.changes).toHaveLength(1);
    expect(plan?.changes[0]?.approvedBy).toBe("board-chair");
  });

  it("keeps a forecast at each step, in a history whose links hold", () => {
    const { entries, breaks, torn } = readHistory(file("clinic.history.jsonl"));
    expect([breaks, torn]).toEqual([[], undefined]);
    expect(entries.map(({ statusDate }) => statusDate)).toEqual([
      undefined,
      "2027-03-31",
      "2027-06-30",
      "2027-09-30",
      "2027-10-28",
    ]);
  });

  it("comes back to the board when the agreed triggers trip, and not before", () => {
    expect(outputOf("record", 0)).toContain("none has tripped");
    expect(outputOf("record", 1)).toMatch(/2 have tripped/);
  });

  it("ends on the day the doors opened, at what was spent, with nothing uncertain left", async () => {
    const { out } = await leeway(["forecast", "clinic.plan.yaml", "--json"], { cwd: told.folder });
    const forecast = JSON.parse(out);
    expect(forecast.finish.sd).toBe(0);
    expect(forecast.cost.sd).toBe(0);
    expect(forecast.committed.date).toBe("2027-10-28");
    expect(forecast.contingency).toEqual({ workingDays: 0, calendarDays: 0, money: 0 });
  });

  it("keeps the copies that were signed and recorded", () => {
    const versions = told.runs.filter(({ command }) => /^leeway (sign|record)/.test(command));
    expect(versions.length).toBeGreaterThan(10);
    expect(() => file("clinic.versions")).toThrow(/EISDIR/);
  });
});
