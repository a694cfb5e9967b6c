import { createRequire } from "node:module";
import { figureSvg, renderFigure } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { escapeXml } from "../../../packages/charts/src/figure/serialise.ts";
import { everyChart } from "./everyChart.ts";
import { explainCharts } from "./explain/explainCharts.ts";
import { hardForecasts } from "./hardForecasts.ts";
import { newDocument } from "./newDocument.ts";
import { sampleForecast } from "./sampleForecast.ts";

const hostile = hardForecasts()["markup for names"] ?? sampleForecast();

/** A strict XML parser that is not ours: jsdom's, which answers a fault with a `parsererror` document. */
function parse(text: string): Document {
  const view: unknown = newDocument().defaultView;
  const { DOMParser } = view as { DOMParser: typeof globalThis.DOMParser }; // jsdom's window has one
  return new DOMParser().parseFromString(text, "image/svg+xml");
}

describe.each(everyChart)("figureSvg(%s)", (_, chart) => {
  const figure = chart(hostile, { document: newDocument(), width: 720 });
  const text = figureSvg(figure);

  it("is well-formed XML, and names from the plan make no markup", () => {
    const file = parse(text);
    expect(file.querySelector("parsererror")).toBeNull();
    expect(file.documentElement.namespaceURI).toBe("http://www.w3.org/2000/svg");
    const names = new Set(Array.from(file.querySelectorAll("*"), (element) => element.localName));
    const known = ["svg", "g", "path", "rect", "line", "circle", "text", "title", "desc"];
    expect([...names].filter((name) => !known.includes(name))).toEqual([]);
    for (const element of Array.from(file.querySelectorAll("*")))
      for (const { name, value } of Array.from(element.attributes)) {
        expect(name).not.toMatch(/^on|href|style/i);
        expect(value).not.toMatch(/url\(|javascript:/i);
      }
  });
  // XML 1.0, fifth edition, section 2.2 (recalled): these characters may not stand in a document at all.
  it("holds no character XML forbids", () =>
    expect(text).toMatch(/^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u));
  // WAI-ARIA 1.2 (recalled): an img takes its name and description from the elements its attributes point at.
  it("names itself by its finding and describes itself by its summary", () => {
    const root = parse(text).documentElement;
    expect(root.getAttribute("role")).toBe("img");
    const part = (name: string) => root.querySelector(`#${root.getAttribute(name)}`)?.textContent;
    expect(part("aria-labelledby")).toBe(figure.title.replaceAll("\ud800", "\ufffd"));
    expect(part("aria-describedby")).toBe(figure.summary.replaceAll("\ud800", "\ufffd"));
  });
  it("shows the finding in the picture, on its own ground", () => {
    const file = parse(figureSvg(chart(sampleForecast(), { document: newDocument(), width: 720 })));
    const shown = Array.from(file.querySelectorAll("text"), (each) => each.textContent)
      .join(" ")
      .replaceAll("\u00a0", " ");
    expect(shown.startsWith(chart(sampleForecast(), { document: newDocument() }).title)).toBe(true);
    const ground = file.querySelector("rect");
    expect(ground?.getAttribute("width")).toBe(file.documentElement.getAttribute("width"));
    expect(ground?.getAttribute("height")).toBe(file.documentElement.getAttribute("height"));
  });
  it("gives the same bytes again, and on another page", () => {
    expect(figureSvg(figure)).toBe(text);
    expect(figureSvg(chart(hostile, { document: newDocument(), width: 720 }))).toBe(text);
  });
  it("ends every family of fonts in a generic one", () => {
    const families = Array.from(text.matchAll(/font-family="([^"]+)"/g), (match) => match[1] ?? "");
    expect(families.length).toBeGreaterThanOrEqual(2);
    for (const family of families) expect(family).toMatch(/, (sans-)?serif$/);
  });
});

describe("escapeXml(text)", () => {
  it("escapes what XML marks up with and replaces what it forbids", () =>
    expect(escapeXml(`<a b='c' d="e">&\u0000\ud800😀`)).toBe(
      "&lt;a b=&#39;c&#39; d=&quot;e&quot;&gt;&amp;\ufffd\ufffd😀",
    ));
});

describe.each(everyChart)("renderFigure(%s)", (_, chart) => {
  const document = newDocument();
  const figures = [hostile, hostile].map((forecast) => renderFigure(chart(forecast, { document }), document));
  document.body.append(...figures);

  it("is an image with a name and a description that exist once on the page", () => {
    for (const root of figures) {
      const svg = root.querySelector("svg");
      expect(svg?.getAttribute("role")).toBe("img");
      for (const name of ["aria-labelledby", "aria-describedby"]) {
        const target = document.querySelectorAll(`#${svg?.getAttribute(name)}`);
        expect(target).toHaveLength(1);
        expect(root.contains(target[0] ?? null)).toBe(true);
      }
    }
  });
  it("carries the figures as a table with headed rows and columns", () => {
    const figure = chart(sampleForecast(), { document });
    const root = renderFigure(figure, document);
    expect(root.querySelector("details > summary")?.textContent).toBe("As a table");
    expect(root.querySelectorAll("thead th[scope=col]")).toHaveLength(figure.table.columns.length);
    expect(root.querySelectorAll("tbody tr")).toHaveLength(figure.table.rows.length);
    expect(root.querySelectorAll("tbody tr > th[scope=row]")).toHaveLength(figure.table.rows.length);
    const cells = Array.from(root.querySelectorAll("tbody tr"), (row) =>
      Array.from(row.children, (cell) => cell.textContent),
    );
    expect(cells).toEqual(figure.table.rows);
  });
  it("makes no element out of a name", () =>
    expect(document.querySelectorAll("script, img, iframe, [onload], [onerror]")).toHaveLength(0));
});

// axe-core, a checker of WCAG that is not ours; colours and page-wide rules need a real page and are left to the
// browser tests.
describe("renderFigure(figure) under axe-core", () => {
  it("has no fault axe-core finds", async () => {
    const document = newDocument();
    const main = document.createElement("main");
    document.body.append(main);
    document.title = "Figures";
    for (const [, chart] of everyChart)
      main.append(renderFigure(chart(sampleForecast(), { document }), document));
    for (const { sample } of explainCharts) main.append(renderFigure(sample({ document }), document));
    const require = createRequire(import.meta.url);
    const source: unknown = require("axe-core");
    const { source: script } = source as { source: string }; // axe-core offers its own text to be run in a page
    const { JSDOM } = require("jsdom") as {
      JSDOM: new (html: string, options: object) => { window: { eval: (code: string) => unknown } };
    }; // without types of its own
    const page = new JSDOM(`<!doctype html><html lang="en">${document.documentElement.innerHTML}</html>`, {
      runScripts: "outside-only",
      pretendToBeVisual: true,
    });
    page.window.eval(script);
    const rules =
      '{ rules: { "color-contrast": { enabled: false }, "page-has-heading-one": { enabled: false }, "heading-order": { enabled: false } } }';
    const result = (await page.window.eval(`axe.run(document, ${rules})`)) as {
      violations: { id: string; nodes: { html: string }[] }[];
      passes: { id: string }[];
    };
    expect(result.violations.map((each) => [each.id, each.nodes[0]?.html])).toEqual([]);
    expect(result.passes.map((each) => each.id)).toContain("svg-img-alt");
  });
});
