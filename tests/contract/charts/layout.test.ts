import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { everyChart } from "./everyChart.ts";
import { hardForecasts } from "./hardForecasts.ts";
import { newDocument } from "./newDocument.ts";
import { expectReadable } from "./readable.ts";
import { sampleForecast } from "./sampleForecast.ts";

const forecasts = Object.entries({ sample: sampleForecast(), ...hardForecasts() });

const document = newDocument();

// Plot reports trouble by console.warn and a sign in the picture. Neither may happen.
const warn = vi.spyOn(console, "warn");
beforeEach(() => {
  warn.mockClear(); // not given back: what a hook returns is called as its cleanup
});
afterEach(() => {
  expect(warn).not.toHaveBeenCalled();
});

describe.each(everyChart)("%s(forecast)", (_, chart) => {
  it.each(forecasts)("is readable: %s", (_name, forecast) =>
    expectReadable((options) => chart(forecast, options), document),
  );

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
