import { beforeAll, describe, expect, it } from "vitest";
import { cell, drawn, type Notebook } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const high = (task: string): string => `${task}: high, in working days`;

// What an edit costs before its answer is seen. That the answer goes first is our own rule, no source.
describe("an edit and its answer", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  it.each([1280, 390])("moves nothing below the lines of the answer at %i px", async (width) => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 900 });
    const permit = cell(page, high("Building permit decided"));
    // From here on there is something that the answer was before.
    await permit.fill(String(91 + (width % 7)));
    await permit.press("Enter");
    await page.locator(".aside-line s").first().waitFor();
    await drawn(page);
    await page.evaluate(() => {
      const seen: number[][] = [];
      Reflect.set(window, "heightsSeen", seen);
      const lines = [...document.querySelectorAll<HTMLElement>("#answer .sentence, #answer .aside-line")];
      const look = (): void => {
        seen.push(lines.map((line) => line.offsetHeight));
        requestAnimationFrame(look);
      };
      look();
    });
    // A few words in the place of many, and back: what is read off the curve, and given up.
    await page.getByRole("slider", { name: "on the curve of finishes" }).focus();
    await page.keyboard.press("ArrowLeft");
    await page.locator(".aside-line", { hasText: "Read off the curve" }).waitFor();
    await page.keyboard.press("Escape");
    await page.locator(".aside-line s").first().waitFor();
    await permit.fill(String(101 + (width % 7)));
    await permit.press("Enter");
    await drawn(page);
    const seen = await page.evaluate<number[][]>("window.heightsSeen");
    expect(seen.length).toBeGreaterThan(3);
    // As high as before, or higher where more is to be said; never lower.
    seen.reduce((before, now) => {
      now.forEach((height, at) => void expect(height).toBeGreaterThanOrEqual(before[at] ?? 0));
      return now;
    });
    // On paper no room is kept.
    await page.emulateMedia({ media: "print" });
    const least = await page.evaluate(() =>
      [...document.querySelectorAll("#answer .sentence, #answer .aside-line")].map(
        (line) => getComputedStyle(line).minHeight,
      ),
    );
    await page.emulateMedia({ media: null });
    expect(least).toEqual(["0px", "0px"]);
    expect(notebook.troubles).toEqual([]);
  });

  it("comes before the curve of the estimate that is gone to", async () => {
    const { page } = notebook;
    await page.setViewportSize({ width: 1280, height: 900 });
    const permit = cell(page, high("Building permit decided"));
    await permit.focus();
    await page.locator("tr .curve-cell .figure-title").waitFor();
    const curveOf = (): Promise<string | null> => page.locator(".curve-cell .curve-of").textContent();
    const from = await curveOf();
    await permit.fill("117");
    // In one go with the key: what is there when it has been dealt with.
    const stays = await permit.evaluate((input) => {
      input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
      const row = document.querySelector(".curve-cell")?.closest("tr");
      return [row === input.closest("tr"), document.activeElement !== input];
    });
    expect(stays).toEqual([true, true]);
    await expect.poll(curveOf).not.toBe(from);
    const row = await page
      .locator("tr:has(.curve-cell)")
      .evaluate((one) => one.contains(document.activeElement));
    expect(row).toBe(true);
    // Gone elsewhere it is not waited for.
    await page.getByRole("button", { name: "Undo" }).focus();
    expect(await page.locator(".curve-cell").count()).toBe(0);
    expect(notebook.troubles).toEqual([]);
  });
});
