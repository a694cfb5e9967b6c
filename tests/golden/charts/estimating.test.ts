import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type ChartOptions, estimateCurve, figureSvg, opinionsBars, scorecardBars } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { newDocument } from "../../contract/charts/newDocument.ts";
import { sampleAbout, samplePooling, sampleScorecard } from "../../contract/estimating/sampleEstimates.ts";
import { lineByLine } from "./lineByLine.ts";

// As charts.test.ts, for what people said and how it came out. After a change, look at the pictures, then write anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/charts/estimating.test.ts
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";
const document = newDocument();
const range = {
  kind: "range",
  low: 5,
  likely: 9,
  high: 22,
  shape: "pert",
  bounds: "p10-p90",
  unit: "days",
} as const;
const permit = { name: "Permit decided", unitWords: "working days", of: "takes" } as const;
const charts = {
  estimateCurve: (options: ChartOptions) => estimateCurve(range, permit, options),
  opinionsBars: (options: ChartOptions) => opinionsBars(samplePooling(), sampleAbout, options),
  scorecardBars: (options: ChartOptions) => scorecardBars(sampleScorecard(), options),
};

describe.each(Object.entries(charts))("%s", (name, draw) => {
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
