import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { contingencyLeftDays, contingencyLeftMoney, figureSvg, fundsMonths } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { sampleBudget, sampleLeft } from "../../contract/budget/sampleMoney.ts";
import { newDocument } from "../../contract/charts/newDocument.ts";
import type { Drawing } from "../../contract/charts/readable.ts";
import { lineByLine } from "../charts/lineByLine.ts";

// The charts about money as they were last looked at. After a change, look at the pictures, then write them anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/budget
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";
const document = newDocument();
const charts: [string, Drawing][] = [
  ["fundsMonths", (options) => fundsMonths(sampleBudget(), options)],
  ["contingencyLeftMoney", (options) => contingencyLeftMoney(sampleLeft(), options)],
  ["contingencyLeftDays", (options) => contingencyLeftDays(sampleLeft(), options)],
];

describe.each(charts)("%s", (name, draw) => {
  it.each([
    ["wide, light", 720, "light"],
    ["narrow, dark", 340, "dark"],
  ] as const)("is drawn as before: %s", (_, width, theme) => {
    const svg = lineByLine(figureSvg(draw({ document, width, theme })));
    const file = fileURLToPath(new URL(`${name}-${width}-${theme}.svg`, import.meta.url));
    if (writing) writeFileSync(file, svg);
    expect(svg).toBe(readFileSync(file, "utf8"));
  });
});
