// The HTML of a brief in Chromium: exactly one A4 page when printed, legible, complete, for everyone, and to itself.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { palette } from "@leeway/charts";
import { briefHtml, preBriefHtml } from "@leeway/charts/brief";
import { preBriefOf } from "@leeway/core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { briefed, examplePlan, examples, planOf } from "../contract/brief/plans.ts";
import { startChromium } from "./support/chromium.ts";
import { largeBrief } from "./support/largeBrief.ts";

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
/** The type the command puts in; it ships with it (OFL). */
function font(family: string): string {
  const from = createRequire(new URL("../../apps/command/package.json", import.meta.url));
  const file = `@fontsource-variable/${family}/files/${family}-latin-wght-normal.woff2`;
  return `data:font/woff2;base64,${readFileSync(from.resolve(file)).toString("base64")}`;
}
const fonts = { serif: font("source-serif-4"), sans: font("source-sans-3") };

const pages: [name: string, html: () => string][] = [
  ...examples.map((name): [string, () => string] => [
    name,
    () => {
      const { brief, answers } = briefed(examplePlan(name), 400);
      return briefHtml(brief, answers.forecast, { fonts });
    },
  ]),
  [
    "the least plan",
    () => {
      const text = "format: 1\ntitle: T\nstart: 2027-01-04\ntasks: [{ id: a, name: A, duration: 3 }]\n";
      const { brief, answers } = briefed(planOf(text), 100);
      return briefHtml(brief, answers.forecast, { fonts });
    },
  ],
  [
    "a plan with far too much to say",
    () => {
      const { brief, answers } = largeBrief();
      return briefHtml(brief, answers.forecast, { fonts });
    },
  ],
];

/** Pages of a PDF and their size in points: page objects and media boxes (ISO 32000-1, 7.7.3), read as text. */
function pdfPages(pdf: Buffer): { count: number; boxes: number[][] } {
  const text = pdf.toString("latin1");
  const count = text.match(/\/Type\s*\/Page(?![a-zA-Z])/g)?.length ?? 0;
  const boxes = [...text.matchAll(/\/MediaBox\s*\[([^\]]+)\]/g)].map(([, box = ""]) =>
    box.trim().split(/\s+/).map(Number),
  );
  return { count, boxes };
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const tool: unknown = Reflect.get(window, "axe");
    if (typeof tool !== "object" || tool === null || !("run" in tool) || typeof tool.run !== "function") {
      throw new Error("axe-core did not load");
    }
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const result = await tool.run(document, { runOnly: tags });
    return result.violations.map(
      (one: { id: string; nodes: { html: string; failureSummary: string }[] }) =>
        `${one.id}: ${one.nodes
          .slice(0, 3)
          .map((node) => `${node.html.slice(0, 160)} ${node.failureSummary}`)
          .join(" | ")}`,
    );
  });
}

let browser: Browser;
beforeAll(async () => {
  browser = await startChromium();
});
afterAll(async () => {
  await browser?.close();
});

describe.each(pages)("the brief of %s", (_name, make) => {
  const html = make();
  const open = async (options: Parameters<Browser["newPage"]>[0] = {}) => {
    const page = await browser.newPage(options);
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.setContent(html);
    await page.evaluate(() => document.fonts.ready);
    return { page, asked };
  };

  // ISO 216: A4 is 210 by 297 mm, 595.3 by 841.9 points.
  it("prints on exactly one A4 page", async () => {
    const { page } = await open();
    const { count, boxes } = pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    expect(count).toBe(1);
    expect(boxes.length).toBeGreaterThan(0);
    for (const [, , width = 0, height = 0] of boxes) {
      expect(Math.abs(width - 595.3)).toBeLessThan(1);
      expect(Math.abs(height - 841.9)).toBeLessThan(1);
    }
    await page.close();
  });

  // That a figure leads to what it rests on: common practice, no source.
  it("leads from the figures it asks for to where they stand with limits and chance", async () => {
    const { page } = await open();
    const led = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>(".decision a")].map((link) => ({
        figure: (link.textContent ?? "").replace(/\s/g, " "),
        there: [...document.querySelectorAll(link.getAttribute("href") ?? "none")].map((place) =>
          (place.textContent ?? "").replace(/\s/g, " "),
        ),
      })),
    );
    expect(led.length).toBeGreaterThan(0);
    for (const { figure, there } of led) {
      expect(there).toHaveLength(1);
      // “Friday 19 November 2027” stands there as “Fri 19 Nov 2027”.
      expect(there[0]).toContain(figure.replace(/^([A-Z][a-z]{2})[a-z]* (\d+ \w{3})\w*/, "$1 $2"));
    }
    await page.close();
  });

  it("loses nothing on paper, in type of 8.5 points or more", async () => {
    const { page } = await open({ viewport: { width: 703, height: 1047 } });
    await page.emulateMedia({ media: "print" });
    const found = await page.evaluate(() => {
      const main = document.querySelector("main");
      const columns = document.querySelector(".columns");
      const foot = document.querySelector("footer");
      if (main === null || columns === null || foot === null) throw new Error("the page is not whole");
      const room = main.getBoundingClientRect();
      const shown = (element: Element) =>
        element.getBoundingClientRect().width > 1 && element.textContent?.trim() !== "";
      const small = [...document.querySelectorAll("main *")]
        .filter((element) => [...element.childNodes].some(({ nodeType }) => nodeType === 3) && shown(element))
        .filter((element) => element.closest("svg") === null)
        .map((element) => ({
          what: element.outerHTML.slice(0, 80),
          size: Number.parseFloat(getComputedStyle(element).fontSize) * 0.75,
        }))
        .filter(({ size }) => size < 8.49);
      return {
        small,
        over: [
          columns.scrollHeight - columns.clientHeight,
          columns.scrollWidth - columns.clientWidth,
          foot.getBoundingClientRect().bottom - room.bottom,
        ],
      };
    });
    expect(found.small).toEqual([]);
    for (const over of found.over) expect(over).toBeLessThanOrEqual(1);
    await page.close();
  });

  it("keeps the last line under a list in the column of that list, wherever the columns part", async () => {
    const { page } = await open({ viewport: { width: 703, height: 1047 } });
    await page.emulateMedia({ media: "print" });
    const parted = await page.evaluate(() => {
      const columns = document.querySelector<HTMLElement>(".columns");
      if (columns === null) throw new Error("the page is not whole");
      const room = document.createElement("div");
      columns.prepend(room);
      const found: string[] = [];
      for (let height = 0; height < 600; height += 8) {
        room.style.height = `${height}px`;
        for (const line of columns.querySelectorAll("ul + p")) {
          const item = line.previousElementSibling?.lastElementChild?.getClientRects();
          const end = item?.[item.length - 1]?.left ?? 0;
          if (Math.abs((line.getClientRects()[0]?.left ?? 0) - end) > 40)
            found.push(`${height}: ${line.textContent}`);
        }
      }
      return found;
    });
    expect(parted).toEqual([]);
    await page.close();
  });

  it("prints light whatever the screen is", async () => {
    const { page } = await open({ colorScheme: "dark" });
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const dark = palette("dark").paper;
    const rgb = (hex: string) =>
      `rgb(${[1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)).join(", ")})`;
    expect(await ground()).toBe(rgb(dark));
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await ground()).toBe("rgb(255, 255, 255)");
    await page.close();
  });

  it.each([
    [1280, "light"],
    [390, "dark"],
  ] as const)("has no violation and no sideways scroll at %i px, %s", async (width, colorScheme) => {
    const { page, asked } = await open({ viewport: { width, height: 900 }, colorScheme });
    const wide = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return scrollWidth - clientWidth;
    });
    expect(wide).toBe(0);
    expect(await violations(page)).toEqual([]);
    // Its type is within it; nothing else is asked for.
    expect(asked.filter((url) => !url.startsWith("data:"))).toEqual([]);
    await page.close();
  });
});

describe("the pre-brief of the clinic's finance director", () => {
  const plan = examplePlan("quillmarsh-clinic");
  const { brief, answers } = briefed(plan, 400);
  const html = preBriefHtml(preBriefOf(plan, brief, answers, "finance-director"), { fonts });

  it("prints on two pages at most and has no violation", async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 900 } });
    await page.setContent(html);
    await page.evaluate(() => document.fonts.ready);
    const { count } = pdfPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThanOrEqual(2);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBe(0);
    expect(await violations(page)).toEqual([]);
    await page.close();
  });
});
