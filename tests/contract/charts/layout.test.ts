import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { lineBoxes, meet, textBoxes } from "./boxes.ts";
import { everyChart } from "./everyChart.ts";
import { hardForecasts } from "./hardForecasts.ts";
import { newDocument } from "./newDocument.ts";
import { sampleForecast } from "./sampleForecast.ts";

const forecasts = Object.entries({ sample: sampleForecast(), ...hardForecasts() });

const document = newDocument();

// Plot reports trouble by console.warn and a sign in the picture. Neither may happen.
const warn = vi.spyOn(console, "warn");
beforeEach(() => warn.mockClear());
afterEach(() => expect(warn).not.toHaveBeenCalled());

describe.each(everyChart)("%s(forecast)", (_, chart) => {
  it.each(forecasts)("is readable: %s", (_name, forecast) => {
    for (const width of [320, 400, 720]) {
      const { svg, title, subtitle, summary, table } = chart(forecast, { document, width });
      const [w, h] = [Number(svg.getAttribute("width")), Number(svg.getAttribute("height"))];
      expect(w).toBe(width);
      const texts = textBoxes(svg);
      for (const path of Array.from(svg.querySelectorAll("path"))) {
        const d = path.getAttribute("d") ?? "";
        if (!/^[ML\d.,Z-]*$/.test(d)) continue; // the peg is drawn in relative steps
        for (const [, x, y] of d.matchAll(/([\d.-]+),([\d.-]+)/g)) {
          expect(Number(x)).toBeGreaterThanOrEqual(0);
          expect(Number(x)).toBeLessThanOrEqual(w);
          expect(Number(y)).toBeGreaterThanOrEqual(0);
          expect(Number(y)).toBeLessThanOrEqual(h);
        }
      }
      const outside = texts.filter(
        (box) => box.left < -0.5 || box.right > w + 0.5 || box.top < 0 || box.bottom > h,
      );
      expect(outside).toEqual([]);
      const overlaps = texts.flatMap((a, k) =>
        texts.slice(k + 1).flatMap((b) => (meet(a, b) ? [[a.what, b.what]] : [])),
      );
      expect(overlaps).toEqual([]);
      const crossed = lineBoxes(svg).flatMap((line) =>
        texts.filter((box) => meet(line, box)).map((box) => box.what),
      );
      expect(crossed).toEqual([]);

      expect(svg.outerHTML).not.toMatch(/NaN|Infinity|undefined|⚠/);
      for (const sentence of [title, subtitle, summary]) {
        expect(sentence.length).toBeGreaterThan(10);
        expect(sentence).not.toMatch(/NaN|Infinity|undefined|not known/);
      }
      for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
      expect(table.rows.flat().join("")).not.toMatch(/NaN|Infinity|undefined|not known/);
    }
  });

  it("draws nothing that depends on a style sheet, an id or the page", () => {
    const { svg } = chart(sampleForecast(), { document });
    expect(svg.querySelectorAll("style, [class], [id], [style], clipPath, script, image, a")).toHaveLength(0);
  });

  it("uses the colours of its theme and no other", () => {
    const light = chart(sampleForecast(), { document, theme: "light" }).svg.outerHTML;
    const dark = chart(sampleForecast(), { document, theme: "dark" }).svg.outerHTML;
    const colours = (text: string) => new Set(text.match(/#[0-9a-f]{6}/g));
    for (const colour of colours(light)) expect(colours(dark)).not.toContain(colour);
    expect(dark.replace(/#[0-9a-f]{6}/g, "")).toBe(light.replace(/#[0-9a-f]{6}/g, ""));
  });

  it.each([-5, 0, 319, Number.NaN, Number.POSITIVE_INFINITY, 1e9])("draws at a width of %s", (width) => {
    const { svg } = chart(sampleForecast(), { document, width });
    expect(Number(svg.getAttribute("width"))).toBeGreaterThanOrEqual(320);
    expect(Number(svg.getAttribute("width"))).toBeLessThanOrEqual(1600);
  });
});
