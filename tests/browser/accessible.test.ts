import { palette } from "@leeway/charts";
import { describe, expect, it } from "vitest";
import { cell, drawn } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

describe("the page can be used by everyone", () => {
  const served = servedPage();

  it.each([
    [1280, "light"],
    [1280, "dark"],
    [390, "light"],
    [390, "dark"],
  ] as const)("has no violation at %i px, %s", async (width, colorScheme) => {
    const notebook = await served.open({
      viewport: { width, height: 900 },
      colorScheme,
    });
    const { page } = notebook;
    await drawn(page);
    const first = page.locator("figure details summary").first();
    await first.click();
    // An entry that waits is part of the page too.
    await cell(page, "Building permit decided: high, in working days").fill("soon");
    await page.keyboard.press("Enter");
    await page.locator(".message").waitFor();
    expect(await violations(page)).toEqual([]);
    await notebook.close();
  });

  // WCAG 2.2, 1.4.10 Reflow: 320 CSS px without scrolling in two directions. Recalled from memory.
  it.each([320, 360, 390, 820, 1440])("does not scroll sideways at %i px", async (width) => {
    const notebook = await served.open({ viewport: { width, height: 900 } });
    const { page } = notebook;
    await drawn(page);
    const wide = await page.evaluate(() => {
      const room = document.documentElement.clientWidth;
      return document.documentElement.scrollWidth > room
        ? [...document.querySelectorAll("main *")]
            .filter((element) => element.getBoundingClientRect().right > room + 1)
            .slice(0, 5)
            .map((element) => element.outerHTML.slice(0, 120))
        : [];
    });
    expect(wide).toEqual([]);
    await notebook.close();
  });

  // WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS px. Recalled from memory.
  it("gives every control 24 px", async () => {
    const notebook = await served.open({ viewport: { width: 390, height: 900 } });
    const { page } = notebook;
    await drawn(page);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll("button, a, select, textarea, summary, input")]
        .map((element) => {
          // A label widens what can be hit.
          const target = element.closest("label") ?? element;
          const { width, height } = target.getBoundingClientRect();
          return { what: element.outerHTML.slice(0, 90), width, height };
        })
        .filter(({ width, height }) => width > 0 && (width < 24 || height < 24)),
    );
    expect(small).toEqual([]);
    await notebook.close();
  });

  it("moves nothing for a reader who asks for no motion", async () => {
    const notebook = await served.open({ reducedMotion: "reduce" });
    const { page } = notebook;
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll("*")]
        .filter((element) => {
          const style = getComputedStyle(element);
          const longest = (list: string) => list.split(",").some((one) => Number.parseFloat(one) > 0);
          return longest(style.transitionDuration) || longest(style.animationDuration);
        })
        .map((element) => element.outerHTML.slice(0, 90)),
    );
    expect(moving).toEqual([]);
    await notebook.close();
  });

  it("prints as a report: the answer and its figures, without the means of editing", async () => {
    const notebook = await served.open({ colorScheme: "dark" });
    const { page } = notebook;
    await drawn(page);
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    expect(await page.locator(".sentence").isVisible()).toBe(true);
    expect(await page.locator("figure svg").first().isVisible()).toBe(true);
    expect(await page.locator(".stamp").isVisible()).toBe(true);
    for (const hidden of ["leeway-outline", "leeway-bar", "#plan-text", ".save"]) {
      expect(await page.locator(hidden).first().isVisible()).toBe(false);
    }
    // Charts carry their colours: on paper they are drawn in the light ones (packages/charts/src/palette.ts).
    expect(await page.locator("figure svg").first().getAttribute("fill")).toBe(palette("light").ink);
    const paper = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(paper).toBe("rgb(255, 255, 255)");
    await notebook.close();
  });
});
