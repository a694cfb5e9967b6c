import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

/** Widths, heights and places of a row in the window: above, in the middle, below. */
const windows = [1280, 800, 390].flatMap((width) =>
  ["start", "center", "end"].map((place) => ({ width, place })),
);
/** Waits until the page has taken up a new width: charts are drawn anew, and what stands below them moves. */
async function resting(page: Page): Promise<void> {
  await settled(page);
  for (let before = -1, height = 0; before !== height; ) {
    before = height;
    await page.waitForTimeout(300);
    height = await page.evaluate(() => document.documentElement.scrollHeight);
  }
}

const permit = "Building permit decided: high, in working days";

// WCAG 2.2, 2.4.11 (focus not obscured), recalled; that neighbours stay readable too: common practice, no source.
describe("what is shown while a row is worked in", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  const rows = {
    "a task": (page: Page) => cell(page, permit),
    "a risk": (page: Page) => page.locator("#register input[data-estimate$='.delay']").nth(3),
  };
  it.each([1280, 390])("is gone while its row is out of sight, and back with it: %i px", async (width) => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 844 });
    await resting(page);
    const curve = page.locator(".curve-cell");
    await page.locator("#title").focus();
    await cell(page, permit).focus();
    await curve.locator("svg").waitFor({ state: "visible" });
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    await curve.waitFor({ state: "hidden" });
    // What stands there can be clicked: nothing lies over it.
    const free = await page.locator("#title").evaluate((title) => {
      const { left, top, height } = title.getBoundingClientRect();
      return document.elementFromPoint(left + 8, top + height / 2) === title;
    });
    expect(free).toBe(true);
    await cell(page, permit).evaluate((one) => one.scrollIntoView({ block: "center", behavior: "instant" }));
    await curve.locator("svg").waitFor({ state: "visible" });
    await page.keyboard.press("Escape");
  });

  for (const [name, input] of Object.entries(rows))
    it.each(windows)(
      `lets ${name} and its neighbours be read: $width px, row at the $place`,
      async ({ width, place }) => {
        const { page } = notebook;
        await page.setViewportSize({ width, height: width === 390 ? 844 : 900 });
        await page.locator("#title").focus();
        await resting(page);
        await input(page).evaluate((one, block) => {
          one.closest("tr")?.scrollIntoView({ block, behavior: "instant" });
        }, place as ScrollLogicalPosition);
        await input(page).focus();
        await page.locator(".curve-cell svg").waitFor();
        await expect
          .poll(() =>
            page.evaluate(() => {
              const curve = document.querySelector(".curve-cell");
              const row = curve?.closest("tr");
              const bar = document.querySelector("leeway-bar");
              if (curve == null || row == null || bar === null) return ["nothing is shown"];
              const over = curve.getBoundingClientRect();
              const own = row.getBoundingClientRect();
              // A neighbour is read by its first lines: it may be taller than the window.
              const read = Math.min(56, innerHeight);
              const wrong: string[] = [];
              if (over.top < bar.getBoundingClientRect().bottom - 1) wrong.push("it covers the answer");
              if (over.bottom > innerHeight + 1) wrong.push("it ends below the window");
              if (over.top < own.bottom + read && over.bottom > own.top - read)
                wrong.push(
                  `it lies at ${over.top} to ${over.bottom}, the row at ${own.top} to ${own.bottom}`,
                );
              if (own.bottom + read > innerHeight + 1 && own.top < bar.getBoundingClientRect().bottom)
                wrong.push("the row is out of the window");
              const middle = document.elementFromPoint(
                over.left + over.width / 2,
                over.top + over.height / 2,
              );
              if (!curve.contains(middle)) wrong.push("something lies over it");
              return wrong;
            }),
          )
          .toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
    );

  const wrong = {
    "a task": { at: "#work tr#task-permit-decided .number input", part: 2, text: "soon" },
    "a task, out of order": { at: "#work tr#task-permit-decided .number input", part: 0, text: "900" },
    "a risk": { at: "#register tr[data-item='risks[1]'] .number input", part: 3, text: "soon" },
  };
  for (const [name, { at, part, text }] of Object.entries(wrong))
    it.each(windows)(
      `leaves what is wrong with ${name} in sight: $width px, row at the $place`,
      async ({ width, place }) => {
        const { page } = notebook;
        await page.setViewportSize({ width, height: width === 390 ? 844 : 900 });
        await page.locator("#title").focus();
        await resting(page);
        const field = page.locator(at).nth(part);
        await field.evaluate((one, block) => {
          one.closest("tr")?.scrollIntoView({ block, behavior: "instant" });
        }, place as ScrollLogicalPosition);
        await field.focus();
        await page.keyboard.press("Control+A");
        await page.keyboard.type(text);
        await page.keyboard.press("Enter");
        await page.locator(".message").waitFor();
        await resting(page);
        expect(
          await page.evaluate(() => {
            const next = document.activeElement?.closest("tr");
            const message = document.querySelector(".message");
            if (message === null || next == null || next.contains(message))
              return ["the focus is not in the next row"];
            const over = document.querySelector<HTMLElement>(".curve-cell");
            // Not shown it covers nothing: then what is said can be read, below the line and the head that stay.
            if (over === null || over.style.visibility === "hidden") {
              const staying = [
                document.querySelector("leeway-bar"),
                message.closest("table")?.querySelector("thead"),
              ];
              const ends = staying.map((one) => one?.getBoundingClientRect()).map((box) => box?.bottom ?? 0);
              const said = message.getBoundingClientRect();
              return said.top < Math.max(...ends) - 1 || said.bottom > innerHeight
                ? ["what is said is out of sight"]
                : [];
            }
            const { top, bottom } = over.getBoundingClientRect();
            const told = [message, ...(message.closest("tr")?.querySelectorAll("[aria-invalid]") ?? [])];
            const covered = [...told, document.activeElement].filter((one) => {
              const box = one?.getBoundingClientRect();
              return box !== undefined && box.top < bottom - 1 && box.bottom > top + 1;
            });
            return covered.map((one) => one?.textContent || one?.getAttribute("aria-label"));
          }),
        ).toEqual([]);
        await field.focus();
        await page.keyboard.press("Escape");
        await page.keyboard.press("Escape");
        await page.locator(".message").waitFor({ state: "detached" });
      },
    );

  it.each([
    { width: 1280, input: "#work tr#task-permit-decided .number input" },
    { width: 800, input: "#work tr#task-permit-decided .number input" },
    { width: 390, input: "#work tr#task-permit-decided .number input" },
    { width: 320, input: "#work tr#task-permit-decided .number input" },
    { width: 800, input: "#register input[data-estimate$='.delay']" },
    { width: 390, input: "#register input[data-estimate$='.delay']" },
    { width: 320, input: "#register input[data-estimate$='.delay']" },
    { width: 390, input: "#register .response input" },
    { width: 320, input: "#register .response input" },
    { width: 1280, input: "#register .response input" },
    ...[1280, 1000, 800, 390, 320].flatMap((width) => [
      { width, input: "#people .list-table tbody tr:nth-of-type(2) .field" },
      { width, input: "#purpose .list-table tbody tr:nth-of-type(2) .field" },
      { width, input: "#purpose .halves .list-table tbody tr:nth-of-type(2) .field" },
    ]),
  ])("covers no words with the buttons of its row: $input at $width px", async ({ width, input }) => {
    const { page } = notebook;
    await page.setViewportSize({ width, height: 844 });
    const at = page.locator(input).first();
    await at.evaluate((one) => one.scrollIntoView({ block: "center", behavior: "instant" }));
    await at.focus();
    // Those of this row: another's may still be there.
    await at.locator("xpath=ancestor::*[@data-item][1]").locator(".row-tools").waitFor();
    expect(
      await at.evaluate((one) => {
        const tools = one.closest("[data-item]")?.querySelector(".row-tools")?.getBoundingClientRect();
        const around = one.closest("section");
        if (tools === undefined || around === null) return ["no buttons"];
        const covered: string[] = [];
        if (tools.left < 0 || tools.right > innerWidth) covered.push("the edge of the window");
        const meets = (box: DOMRect) =>
          box.width > 1 &&
          box.height > 1 &&
          box.left < tools.right - 1 &&
          box.right > tools.left + 1 &&
          box.top < tools.bottom - 3 &&
          box.bottom > tools.top + 3;
        const words = document.createTreeWalker(around, NodeFilter.SHOW_TEXT);
        while (words.nextNode()) {
          const { currentNode: text } = words;
          const parent = text.parentElement;
          if (
            parent === null ||
            parent.closest(".row-tools, .curve-cell, .unseen, .stacked-unit, option") !== null
          )
            continue;
          const range = document.createRange();
          range.selectNodeContents(text);
          if ((text.textContent ?? "").trim() !== "" && [...range.getClientRects()].some(meets))
            covered.push(text.textContent ?? "");
        }
        for (const field of around.querySelectorAll(
          "input, textarea, select, .task-bar :is(.work, .range, .written)",
        ))
          if (field.closest(".curve-cell, .row-tools") === null && meets(field.getBoundingClientRect()))
            covered.push(field.getAttribute("aria-label") ?? field.getAttribute("class") ?? "a field");
        return covered;
      }),
    ).toEqual([]);
  });

  it("has nothing that keeps anybody out", async () => {
    const { page } = notebook;
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 844 });
      await page.locator("#title").focus();
      await cell(page, permit).focus();
      await page.locator(".curve-cell svg").waitFor();
      expect(await violations(page, "#work")).toEqual([]);
    }
    expect(notebook.troubles).toEqual([]);
  });
});
