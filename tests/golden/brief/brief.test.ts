import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { briefSheet, preBriefSheet, sheetMarkdown } from "@leeway/charts/brief";
import { preBriefOf } from "@leeway/core";
import { describe, expect, it } from "vitest";
import { briefed, fullPlan, planOf } from "../../contract/brief/plans.ts";

// These files say only that a brief reads as it did when someone last read it; whether its figures are right is tested in
// tests/contract/brief. After a change, read them, then write them anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/brief
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";

describe("the brief of a small plan", () => {
  const plan = planOf(fullPlan);
  const { brief, answers } = briefed(plan, 400);
  it.each([
    ["shed.brief", sheetMarkdown(briefSheet(brief))],
    ["shed.bo", sheetMarkdown(preBriefSheet(preBriefOf(plan, brief, answers, "bo")))],
  ])("reads as before: %s", (name, text) => {
    const file = fileURLToPath(new URL(`${name}.txt`, import.meta.url));
    if (writing) writeFileSync(file, text);
    expect(existsSync(file)).toBe(true);
    expect(text).toBe(readFileSync(file, "utf8"));
  });
});
