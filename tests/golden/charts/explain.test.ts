import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { figureSvg } from "@leeway/charts";
import { afterAll, describe, expect, it, vi } from "vitest";
import { explainCharts } from "../../contract/charts/explain/explainCharts.ts";
import { newDocument } from "../../contract/charts/newDocument.ts";
import { lineByLine } from "./lineByLine.ts";

// As charts.test.ts, for the charts of explanations: drawn from the samples of tests/contract/charts/explain. After a
// change, look at the pictures, then write them anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/charts
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";
const document = newDocument();
const warn = vi.spyOn(console, "warn");
const error = vi.spyOn(console, "error");
afterAll(() => {
  expect(warn).not.toHaveBeenCalled();
  expect(error).not.toHaveBeenCalled();
});

describe.each(explainCharts)("$name", ({ name, sample }) => {
  it.each([
    ["wide, light", 720, "light"],
    ["narrow, dark", 340, "dark"],
  ] as const)("is drawn as before: %s", (_, width, theme) => {
    const svg = lineByLine(figureSvg(sample({ document, width, theme })));
    const file = fileURLToPath(new URL(`${name}-${width}-${theme}.svg`, import.meta.url));
    if (writing) writeFileSync(file, svg);
    expect(svg).toBe(readFileSync(file, "utf8"));
  });
});
