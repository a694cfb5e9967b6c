import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { figureSvg } from "@leeway/charts";
import { afterAll, describe, expect, it, vi } from "vitest";
import { everyChart } from "../../contract/charts/everyChart.ts";
import { newDocument } from "../../contract/charts/newDocument.ts";
import { sampleForecast } from "../../contract/charts/sampleForecast.ts";
import { lineByLine } from "./lineByLine.ts";

// These files say only that a drawing is as it was when someone last looked at it; whether it is right is tested
// in tests/contract/charts. After a change, look at the pictures, then write them anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/charts
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";
const document = newDocument();
const warn = vi.spyOn(console, "warn");
afterAll(() => expect(warn).not.toHaveBeenCalled());

describe.each(everyChart)("%s", (name, chart) => {
  it.each([
    ["wide, light", 720, "light"],
    ["narrow, dark", 340, "dark"],
  ] as const)("is drawn as before: %s", (_, width, theme) => {
    const svg = lineByLine(figureSvg(chart(sampleForecast(), { document, width, theme })));
    const file = fileURLToPath(new URL(`${name}-${width}-${theme}.svg`, import.meta.url));
    if (writing) writeFileSync(file, svg);
    expect(existsSync(file)).toBe(true);
    expect(svg).toBe(readFileSync(file, "utf8"));
  });
});
