import { figureSvg } from "@leeway/charts";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { newDocument } from "../newDocument.ts";
import { expectReadable } from "../readable.ts";
import { explainCharts } from "./explainCharts.ts";

const document = newDocument();

// A drawing library reports trouble by console.warn; it may never happen.
const warn = vi.spyOn(console, "warn");
const error = vi.spyOn(console, "error");
beforeEach(() => {
  warn.mockClear();
  error.mockClear();
});
afterEach(() => {
  expect(warn).not.toHaveBeenCalled();
  expect(error).not.toHaveBeenCalled();
});

describe.each(explainCharts)("$name(result)", ({ sample, hard }) => {
  it.each([["sample", sample] as const, ...hard])("is readable: %s", (_, draw) =>
    expectReadable(draw, document),
  );

  it("draws nothing that depends on a style sheet, an id or the page", () => {
    const { svg } = sample({ document });
    expect(svg.querySelectorAll("style, [class], [id], [style], clipPath, script, image, a")).toHaveLength(0);
  });
  it("uses the colours of its theme and no other", () => {
    const light = sample({ document, theme: "light" }).svg.outerHTML;
    const dark = sample({ document, theme: "dark" }).svg.outerHTML;
    const colours = (text: string) => new Set(text.match(/#[0-9a-f]{6}/g));
    for (const colour of colours(light)) expect(colours(dark)).not.toContain(colour);
    expect(dark.replace(/#[0-9a-f]{6}/g, "")).toBe(light.replace(/#[0-9a-f]{6}/g, ""));
  });
  it.each([-5, Number.NaN, 1e9])("draws at a width of %s", (width) => {
    const drawn = Number(sample({ document, width }).svg.getAttribute("width"));
    expect(drawn).toBeGreaterThanOrEqual(320);
    expect(drawn).toBeLessThanOrEqual(1600);
  });
  it("is well-formed XML whatever the names are, and makes no element out of one", () => {
    const view: unknown = document.defaultView;
    const { DOMParser } = view as { DOMParser: typeof globalThis.DOMParser }; // jsdom's window has one
    for (const [, draw] of hard) {
      const file = new DOMParser().parseFromString(figureSvg(draw({ document })), "image/svg+xml");
      expect(file.querySelector("parsererror")).toBeNull();
      const names = new Set(Array.from(file.querySelectorAll("*"), (element) => element.localName));
      const known = ["svg", "g", "path", "rect", "line", "circle", "text", "title", "desc"];
      expect([...names].filter((name) => !known.includes(name))).toEqual([]);
    }
  });
});
