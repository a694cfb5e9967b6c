// What belongs to a chart besides its drawing, so that none is forgotten. Common practice, no source.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { root } from "../examples/places.ts";

const sources = `${root}packages/charts/src/`;
const charts = readdirSync(sources)
  .filter((file) => file.endsWith(".ts") && /\): Figure \{/.test(readFileSync(sources + file, "utf8")))
  .map((file) => file.slice(0, -".ts".length));

it("finds the charts", () => {
  expect(charts).toContain("finishCurve");
  expect(charts.length).toBeGreaterThan(20);
});

it("every chart is compared with drawings kept under tests/golden", () => {
  const kept = readdirSync(`${root}tests/golden`, { recursive: true }).map(String);
  const name = (path: string) => path.split(/[\\/]/).at(-1) ?? "";
  const drawn = new Set(kept.map(name));
  const missing = charts.filter(
    (chart) => !drawn.has(`${chart}-720-light.svg`) || !drawn.has(`${chart}-340-dark.svg`),
  );
  expect(missing, "add them in tests/contract/charts/everyChart.ts").toEqual([]);
});

it.each(["packages/charts/README.md", "packages/charts/src/index.ts"])("every chart stands in %s", (page) => {
  const text = readFileSync(root + page, "utf8");
  expect(charts.filter((chart) => !new RegExp(`\\b${chart}\\b`).test(text))).toEqual([]);
});
