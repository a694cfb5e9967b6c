import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { driftDates, driftSums, figureSvg } from "@leeway/charts";
import { afterAll, describe, expect, it, vi } from "vitest";
import { newDocument } from "../../contract/charts/newDocument.ts";
import { expectReadable } from "../../contract/charts/readable.ts";
import { hardDrifts, sampleDrift } from "../../contract/live/sampleDrift.ts";
import { lineByLine } from "../charts/lineByLine.ts";

// As tests/golden/charts, for the charts of a history. After a change, look at the pictures, then write them anew:
//   LEEWAY_WRITE_GOLDEN=1 npx vitest run --project unit tests/golden/live
const writing = process.env.LEEWAY_WRITE_GOLDEN === "1";
const document = newDocument();
const warn = vi.spyOn(console, "warn");
afterAll(() => expect(warn).not.toHaveBeenCalled());

describe.each([
  ["driftDates", driftDates],
  ["driftSums", driftSums],
] as const)("%s(drift)", (name, chart) => {
  it.each([
    ["wide, light", 720, "light"],
    ["narrow, dark", 340, "dark"],
  ] as const)("is drawn as before: %s", (_, width, theme) => {
    const svg = lineByLine(figureSvg(chart(sampleDrift(), { document, width, theme })));
    const file = fileURLToPath(new URL(`${name}-${width}-${theme}.svg`, import.meta.url));
    if (writing) writeFileSync(file, svg);
    expect(svg).toBe(readFileSync(file, "utf8"));
  });
  it.each(Object.entries({ sample: sampleDrift(), ...hardDrifts() }))("is readable: %s", (_, drift) =>
    expectReadable((options) => chart(drift, options), document),
  );
});
