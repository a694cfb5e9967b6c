import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";
import { violations } from "./support/violations.ts";

/** The same with money that comes in, so that there is a date by which it has paid back. */
const plan = smallPlan.replace(
  "tasks:",
  `appraisal: { years: 6, discountRate: 0.03 }
benefits:
  - { id: berths, name: Berths let, kind: revenue, amount: [300, 400, 600], per: month, starts: tiles }
tasks:`,
);

/** Comes into sight of what is worked out only there. */
async function seen(page: Page, section: string, wanted: string): Promise<void> {
  const room = page.locator(`#${section}`);
  await expect
    .poll(
      async () => {
        await room.evaluate((one) => one.scrollIntoView({ behavior: "instant" }));
        await page.waitForTimeout(300);
        return room.locator(wanted).first().isVisible();
      },
      { timeout: 90_000 },
    )
    .toBe(true);
}

// Common practice, no source: a date is read in one go, a value carries its name, and what is cut looks cut.
describe("the page on a phone", () => {
  const served = servedPage();
  let notebook: Notebook;
  let page: Page;
  beforeAll(async () => {
    notebook = await served.open();
    page = notebook.page;
    await fillPlan(page, plan);
  });

  it("breaks no date over two lines, wherever a line ends", async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await seen(page, "contingency", ".finding");
    await seen(page, "purpose", ".worth .finding");
    await seen(page, "responses", "figure");
    await seen(page, "level", "figure");
    await seen(page, "money", "figure");
    await seen(page, "reach", ".finding");
    await seen(page, "one-future", "figure");
    const said = new Set<string>();
    const broken = new Set<string>();
    for (let width = 320; width <= 430; width += 10) {
      await page.setViewportSize({ width, height: 844 });
      await settled(page);
      const found = await page.evaluate(() => {
        const dates =
          /\d{1,2}\s(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*(?:\s\d{4})?|(?:Oct|Feb|Mar|Apr)\s\d{4}/g;
        const all: string[] = [];
        const off: string[] = [];
        const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
          const around = text.parentElement;
          if (around === null || around.closest("svg, .prose, textarea, script, style, template") !== null)
            continue;
          for (const { 0: date, index } of (text.textContent ?? "").matchAll(dates)) {
            const range = document.createRange();
            range.setStart(text, index);
            range.setEnd(text, index + date.length);
            const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
            if (lines.size > 0) all.push(`${around.closest("section")?.id}: ${date}`);
            if (lines.size > 1) off.push(`${around.closest("section")?.id}: ${date}`);
          }
        }
        return { all, off };
      });
      for (const one of found.all) said.add(one.split(":")[0] ?? "");
      for (const one of found.off) broken.add(`${one.replaceAll("\u00a0", " ")} at ${width} px`);
    }
    expect([...broken]).toEqual([]);
    expect([...said]).toEqual(expect.arrayContaining(["contingency", "purpose", "commitment", "reach"]));
  });

  it("names each value of the register beside it", async () => {
    await page.setViewportSize({ width: 390, height: 844 });
    await settled(page);
    const row = page.locator("#register #entry-rain");
    expect(await row.locator(".cell-label:visible").allTextContents()).toEqual([
      "Chance it happens, %",
      "Low",
      "Likely",
      "High",
      "State",
      "Adds, on average",
    ]);
    const far = await row.evaluate((one) =>
      [...one.querySelectorAll("td.number, td.status")].flatMap((found) => {
        const label = found.querySelector(".cell-label")?.getBoundingClientRect();
        const field = found.querySelector(".field, select")?.getBoundingClientRect();
        if (label === undefined || field === undefined) return ["no label or no field"];
        const above = field.top - label.bottom;
        const beside = field.left - label.right;
        return (above >= -1 && above < 8) || (beside >= -1 && beside < 16)
          ? []
          : [`${above} and ${beside} px`];
      }),
    );
    expect(far).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await violations(page, "#register")).toEqual([]);
  });

  it.each(["light", "dark"] as const)(
    "shades the edge at which a table of money is cut: %s",
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width: 390, height: 844 });
      await seen(page, "money", ".money-scroll");
      const over = await page
        .locator(".money-scroll")
        .evaluateAll((all) => all.map((one) => one.scrollWidth - one.clientWidth));
      const most = Math.max(...over);
      const scroll = page.locator(".money-scroll").nth(over.indexOf(most));
      expect(most).toBeGreaterThan(60);
      await scroll.evaluate((one) => one.scrollIntoView({ block: "center", behavior: "instant" }));
      /** How far a pixel at each edge, where no words stand, is from the paper between them. */
      const edges = async (): Promise<boolean[]> => {
        const picture = (await scroll.screenshot()).toString("base64");
        return page.evaluate(async (base64) => {
          const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
          const image = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
          const canvas = new OffscreenCanvas(image.width, image.height);
          const context = canvas.getContext("2d", { willReadFrequently: true });
          if (context === null) throw new Error("no canvas");
          context.drawImage(image, 0, 0);
          const at = (x: number) => [...context.getImageData(x, 4, 1, 1).data];
          const paper = at(Math.round(image.width / 2));
          return [4, image.width - 5].map((x) =>
            at(x).some((value, k) => Math.abs(value - (paper[k] ?? 0)) > 12),
          );
        }, picture);
      };
      expect(await edges()).toEqual([false, true]);
      await scroll.evaluate((one, left) => one.scrollBy({ left, behavior: "instant" }), most / 2);
      expect(await edges()).toEqual([true, true]);
      await scroll.evaluate((one) => one.scrollTo({ left: one.scrollWidth, behavior: "instant" }));
      expect(await edges()).toEqual([true, false]);
      await scroll.evaluate((one) => one.scrollTo({ left: 0, behavior: "instant" }));
      expect(await violations(page, "#money")).toEqual([]);
    },
  );

  it("wraps the plan's text, and still goes to the line that a problem names", async () => {
    await page.emulateMedia({ colorScheme: "light" });
    await page.setViewportSize({ width: 390, height: 844 });
    const area = page.locator("#plan-text");
    const long = Array.from(
      { length: 60 },
      (_, at) => `# ${at} ${"a long line of words ".repeat(at < 30 ? 12 : 1)}`,
    );
    const lines = [...plan.trimEnd().split("\n"), ...long, "nonsense: 1", ...long];
    await area.fill(`${lines.join("\n")}\n`);
    await area.blur();
    await page.locator(".problems .error").first().waitFor();
    expect(await area.evaluate((one) => one.scrollWidth <= one.clientWidth)).toBe(true);
    await page.locator(".line-button").first().click();
    // Above the line stand five more, so its place is read from the caret's: the height of all that is before it.
    const shown = await area.evaluate((one: HTMLTextAreaElement) => {
      const twin = document.createElement("div");
      const style = getComputedStyle(one);
      twin.style.cssText = `position: absolute; visibility: hidden; white-space: pre-wrap; overflow-wrap: break-word; font: ${style.font}; width: ${one.clientWidth - 16}px`;
      twin.textContent = one.value.slice(0, one.selectionStart);
      document.body.append(twin);
      const top = twin.offsetHeight - one.scrollTop;
      twin.remove();
      return {
        line: one.value.slice(one.selectionStart, one.selectionEnd),
        inside: top > 0 && top < one.clientHeight,
      };
    });
    expect(shown).toEqual({ line: "nonsense: 1", inside: true });
    expect(notebook.troubles).toEqual([]);
  });
});
