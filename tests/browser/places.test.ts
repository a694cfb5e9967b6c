import type { Locator, Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

const permit = "Building permit decided: high, in working days";

const plain = (text: string | null) => (text ?? "").replace(/\s+/g, " ").trim();
const boxOf = (one: Locator) => one.evaluate((element) => element.getBoundingClientRect().toJSON());

/** Brings something to the middle of the window, whatever the sections above it still grow by. */
async function toMiddle(one: Locator): Promise<void> {
  for (let turn = 0; turn < 2; turn++) {
    await one.evaluate((element) => element.scrollIntoView({ block: "center", behavior: "instant" }));
    await one.page().waitForTimeout(400);
  }
}

/** It is painted where it stands: nothing lies over its corners or its middle. */
const uncovered = (one: Locator) =>
  one.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    const places: [number, number][] = [
      [left + 2, top + 2],
      [right - 2, bottom - 2],
      [(left + right) / 2, (top + bottom) / 2],
    ];
    return places.every(([x, y]) => {
      const found = document.elementFromPoint(x, y);
      return found !== null && (element.contains(found) || found.contains(element));
    });
  });

// Common practice, no source, where none is named: a reader sees at once where they are and what a place means.
describe("where things stand", () => {
  const served = servedPage();
  let notebook: Notebook;
  let page: Page;
  const at = async (width: number): Promise<void> => {
    await page.setViewportSize({ width, height: width < 600 ? 844 : 900 });
    await settled(page);
  };
  beforeAll(async () => {
    notebook = await served.open();
    page = notebook.page;
  });

  it("the line that stays says what the answer was, wherever it has room, and covers nothing", async () => {
    const before = plain(await page.locator(".sentence .date").textContent()).replace(/^\w+ /, "");
    const [day, month, year] = before.split(" ");
    await cell(page, permit).fill("60");
    await page.keyboard.press("Enter");
    await settled(page);
    await page.evaluate(() => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    });
    for (const width of [1280, 768, 390, 320]) {
      await at(width);
      await toMiddle(page.locator("#register tbody tr").nth(4));
      const was = page.locator("leeway-bar .was");
      await page.locator("leeway-bar .bar-why").waitFor();
      const says = await was.textContent();
      expect(await was.isVisible(), `at ${width} px`).toBe(true);
      expect(plain(says), `at ${width} px`).toContain(`was ${day} ${month?.slice(0, 3)} ${year}`);
      expect(plain(says)).toMatch(/, EUR [\d,]+$/);
      expect(await was.locator(".was-sum").isVisible()).toBe(width > 320);
      const [own, bar] = [await boxOf(was), await boxOf(page.locator("leeway-bar"))];
      expect(own.top >= bar.top && own.bottom <= bar.bottom, `inside the bar at ${width} px`).toBe(true);
      expect(await was.evaluate((element) => element.scrollWidth - element.clientWidth)).toBeLessThan(1);
      expect(own.right).toBeLessThanOrEqual((await boxOf(page.locator(".bar-why"))).left);
      expect(await uncovered(was), `uncovered at ${width} px`).toBe(true);
      // WCAG 2.2, 1.4.10 (reflow) and 2.5.8 (24 px): date and sum are read whole beside what can be pressed.
      const line = page.locator("leeway-bar .bar-answer");
      const cut = await line.evaluate((element) => element.scrollWidth - element.clientWidth);
      expect(cut, `cut at ${width} px`).toBeLessThan(1);
      const [whole, sum] = [await boxOf(line), await boxOf(page.locator("leeway-bar .sum"))];
      expect(sum.right).toBeLessThanOrEqual(whole.right);
      expect(sum.top).toBeCloseTo((await boxOf(page.locator("leeway-bar .date"))).top, 0);
      for (const press of await page.locator("leeway-bar :is(.bar-why, button)").all()) {
        expect(await uncovered(press), `${await press.textContent()} at ${width} px`).toBe(true);
        const { height, width: broad } = await boxOf(press);
        expect(Math.min(height, broad)).toBeGreaterThanOrEqual(24);
        expect((await boxOf(press)).left).toBeGreaterThanOrEqual(
          (await press.evaluate((one) => one.matches(".bar-why"))) ? own.right : sum.right,
        );
      }
      expect(bar.height).toBeCloseTo(42.5, 0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    }
    expect(await violations(page, "leeway-bar")).toEqual([]);
  });

  it.each(["#register", "#work"])("the heads of %s stay under the line that stays", async (section) => {
    await at(1280);
    const rows = page.locator(`${section} tbody tr[data-item]`);
    await toMiddle(rows.nth((await rows.count()) - 2));
    const [heads, bar] = [
      await boxOf(page.locator(`${section} thead`)),
      await boxOf(page.locator("leeway-bar")),
    ];
    expect(Math.abs(heads.top - bar.bottom)).toBeLessThan(3);
    expect(heads.height).toBeLessThan(80);
    for (const head of await page.locator(`${section} thead :is(.number, .finish, .status)`).all())
      expect(await uncovered(head)).toBe(true);
    // With the table they go.
    const foot = await page
      .locator(`${section} table`)
      .evaluate((table) => table.getBoundingClientRect().bottom);
    await page.evaluate((by) => scrollBy({ top: by, behavior: "instant" }), foot - 20);
    expect((await boxOf(page.locator(`${section} thead`))).bottom).toBeLessThan(60);
    // In a window of a few lines they would hide what is read: WCAG 2.2, 1.4.10 asks for no more than 256 px of height.
    await page.setViewportSize({ width: 1280, height: 256 });
    expect(await page.locator(`${section} thead`).evaluate((one) => getComputedStyle(one).position)).toBe(
      "static",
    );
    await page.emulateMedia({ media: "print" });
    await at(1280);
    expect(await page.locator(`${section} thead`).evaluate((one) => getComputedStyle(one).position)).toBe(
      "static",
    );
    await page.emulateMedia({ media: "screen" });
  });

  // WCAG 2.2, 2.4.11 (Focus Not Obscured): going backwards, what has the focus comes from under what stays.
  it.each([1280, 390])("no head hides what has the focus at %i px", async (width) => {
    await at(width);
    for (const section of ["#work", "#register"]) {
      const stops = page.locator(`${section} tbody`).locator("input, select, summary, .adds-button");
      const count = await stops.count();
      for (let stop = count - 1; stop >= Math.max(0, count - 30); stop--) {
        const one = stops.nth(stop);
        await one.focus();
        const hidden = await one.evaluate((element) => {
          const { top } = element.getBoundingClientRect();
          const ends = [...document.querySelectorAll("leeway-bar, .stated > thead")]
            .filter((over) => getComputedStyle(over).position === "sticky")
            .map((over) => over.getBoundingClientRect().bottom);
          // The heads of the other table are elsewhere.
          return ends.some((end) => end > 0 && end < 200 && top < end - 1);
        });
        expect(hidden, `${section} ${await one.getAttribute("aria-label")}`).toBe(false);
      }
    }
    await page.keyboard.press("Escape");
  });

  it("an axis says what the place of a bar means on a telephone, beside the bars however far down", async () => {
    await at(390);
    for (const row of [1, 14]) {
      const one = page.locator("#work tr[data-item]").nth(row);
      await toMiddle(one);
      const axis = page.locator("#work thead .time-axis");
      const [scale, bar] = [await boxOf(axis), await boxOf(one.locator(".task-bar"))];
      expect(Math.abs(scale.left - bar.left)).toBeLessThan(1);
      expect(Math.abs(scale.right - bar.right)).toBeLessThan(1);
      expect(scale.top).toBeGreaterThanOrEqual((await boxOf(page.locator("leeway-bar"))).bottom - 2);
      expect(scale.bottom).toBeLessThan(bar.top);
      const names = axis.locator("text:visible");
      expect(await names.count()).toBeGreaterThanOrEqual(3);
      const boxes = await Promise.all((await names.all()).map(boxOf));
      // None runs into the next, none over the edge of the page.
      for (const [k, box] of boxes.entries()) {
        expect(box.right).toBeLessThan(boxes[k + 1]?.left ?? 390 - 16);
        expect(box.top).toBeGreaterThanOrEqual(scale.top - 1);
      }
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    expect(await violations(page, "#work thead")).toEqual([]);
  });

  it("the small figures of the outline are explained at every width", async () => {
    await page.locator(".outline .looks").first().waitFor({ state: "attached" });
    await at(1280);
    expect(await page.locator(".outline-note").first().isVisible()).toBe(true);
    await at(390);
    await toMiddle(page.locator("#work tr[data-item]").nth(3));
    const link = page.locator('.outline a[href="#work"][aria-current]');
    await link.waitFor();
    expect(plain(await link.locator(".looks > [aria-hidden]").textContent())).toMatch(/^\d+ worth a look$/);
    expect(await link.locator(".looks .counts").isVisible()).toBe(true);
    const box = await boxOf(link);
    expect(box.left >= 0 && box.right <= 390).toBe(true);
    expect(await violations(page, ".outline")).toEqual([]);
  });

  it.each([1160, 1000, 800, 640])(
    "the buttons of a row cover none of its words, and its details can be pressed: %i px",
    async (width) => {
      await at(width);
      for (const row of ["#task-finishes", "#task-strip-out", "#task-inspection-passed"]) {
        await toMiddle(page.locator(row));
        await page.locator(`${row} .name`).hover({ position: { x: 5, y: 10 } });
        await page.locator(`${row} .row-tools`).waitFor();
        const covered = await page.locator(`${row} .after`).evaluate((after) => {
          const tools = after.querySelector(".row-tools")?.getBoundingClientRect() ?? new DOMRect();
          return [...after.children]
            .filter((one) => !one.matches(".row-tools") && one.textContent !== "")
            .filter((one) => {
              const { left, right, top, bottom } = one.getBoundingClientRect();
              return (
                left < tools.right && tools.left < right && top < tools.bottom - 1 && tools.top < bottom - 1
              );
            })
            .map((one) => one.className);
        });
        expect(covered, row).toEqual([]);
        expect(await uncovered(page.locator(`${row} .more-turn`))).toBe(true);
      }
    },
  );

  it("what is wrong is said beside its field, and the line that stays says that it waits", async () => {
    await at(1280);
    const chance = page.locator("#register .field").first();
    await chance.fill("300");
    await chance.blur();
    const message = page.locator("#register .message").first();
    await message.waitFor();
    const [field, said] = [await boxOf(chance), await boxOf(message)];
    expect(said.top - field.bottom).toBeGreaterThanOrEqual(0);
    expect(said.top - field.bottom).toBeLessThan(24);
    for (const width of [1280, 390]) {
      await at(width);
      await toMiddle(page.locator("#register tr.waits"));
      const stale = page.locator("leeway-bar .stale-mark");
      await stale.waitFor();
      const [own, bar] = [await boxOf(stale), await boxOf(page.locator("leeway-bar"))];
      expect(own.bottom <= bar.bottom && own.right <= width - 16).toBe(true);
      expect(await uncovered(stale), `at ${width} px`).toBe(true);
      const boxed = page.locator('.outline a[href="#register"] .waiting');
      if (width === 390) expect(await boxed.locator(".counts").isVisible()).toBe(true);
      else await page.locator(".outline-note", { hasText: "In a box: entries to put right" }).waitFor();
    }
    await chance.focus();
    await page.keyboard.press("Escape");
    await settled(page);
  });

  it("an Escape does one thing, and shows it: what was typed, the curve, the place", async () => {
    for (const width of [1280, 390]) {
      await at(width);
      const chosen = cell(page, permit);
      const before = await chosen.inputValue();
      await chosen.focus();
      const curve = page.locator(".curve-cell");
      await curve.waitFor();
      const title = async () => plain(await curve.locator(".figure-title").textContent());
      await expect.poll(title).toContain(before);
      await page.keyboard.press("End");
      await page.keyboard.type("9");
      await expect.poll(title).toContain(`${before}9`);
      await page.keyboard.press("Escape");
      expect(await chosen.inputValue()).toBe(before);
      expect(await curve.isVisible()).toBe(true);
      await expect.poll(title).not.toContain(`${before}9`);
      expect(await curve.locator(".curve-keys").textContent()).toContain("Escape closes this");
      await page.keyboard.press("Escape");
      await curve.waitFor({ state: "detached" });
      expect(await chosen.evaluate((one) => one === document.activeElement)).toBe(true);
      await page.keyboard.press("Escape");
      expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toMatch(/^Work/);
    }
    expect(notebook.troubles).toEqual([]);
  });

  it("an Escape is not spent on a curve that is not seen", async () => {
    await at(1280);
    const chosen = cell(page, permit);
    await chosen.focus();
    const curve = page.locator(".curve-cell");
    await curve.waitFor();
    // Scrolled away, the row takes its curve with it.
    await page.evaluate(() => scrollTo({ top: 0, behavior: "instant" }));
    await expect.poll(() => curve.isVisible()).toBe(false);
    await page.keyboard.press("Escape");
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toMatch(/^Work/);
  });
});
