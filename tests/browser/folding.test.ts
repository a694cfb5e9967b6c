import { beforeAll, describe, expect, it } from "vitest";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

// The disclosure pattern of the WAI-ARIA Authoring Practices (a button with aria-expanded; Enter and Space), and
// `hidden="until-found"` with `beforematch` of the HTML standard. Recalled from memory.
describe("sections fold", () => {
  const served = servedPage();
  let notebook: Notebook;
  beforeAll(async () => {
    notebook = await served.open();
  });

  const heading = (name: string) => notebook.page.getByRole("button", { name, exact: true });
  const folded = (id: string) => notebook.page.locator(`#${id}-body`).getAttribute("hidden");

  it("by the keyboard, and stay so for this reader", async () => {
    const { page } = notebook;
    const before = (await page.locator("#work").boundingBox())?.height ?? 0;
    await heading("Work").focus();
    await page.keyboard.press("Enter");
    expect(await heading("Work").getAttribute("aria-expanded")).toBe("false");
    expect(await folded("work")).toBe("until-found");
    expect((await page.locator("#work").boundingBox())?.height).toBeLessThan(Math.min(140, before));
    await heading("Register").focus();
    await page.keyboard.press("Space");
    expect(await folded("register")).toBe("until-found");
    // Nothing in a folded section is a stop of the Tab key.
    await heading("Work").focus();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest("#work-body"))).toBeNull();

    await page.reload();
    await settled(page);
    expect([await folded("work"), await folded("register")]).toEqual(["until-found", "until-found"]);
    expect([await folded("purpose"), await folded("futures")]).toEqual([null, null]);
    expect(await violations(page, "#work")).toEqual([]);
    await page.setViewportSize({ width: 390, height: 900 });
    expect(await violations(page, "#work")).toEqual([]);
    await page.setViewportSize({ width: 1280, height: 900 });
  });

  it("nothing is folded on paper", async () => {
    const { page } = notebook;
    const name = page.locator("#work tbody tr").first();
    expect(await name.evaluate((row) => row.checkVisibility({ contentVisibilityAuto: true }))).toBe(false);
    await page.emulateMedia({ media: "print" });
    expect(await name.evaluate((row) => row.checkVisibility({ contentVisibilityAuto: true }))).toBe(true);
    expect((await page.locator("#work").boundingBox())?.height).toBeGreaterThan(300);
    await page.emulateMedia({ media: "screen" });
  });

  it("a link into a folded section unfolds it, before the page scrolls there", async () => {
    const { page } = notebook;
    await page.getByRole("navigation", { name: "Sections" }).getByRole("link", { name: /^Work/ }).click();
    expect(await folded("work")).toBeNull();
    expect(await heading("Work").getAttribute("aria-expanded")).toBe("true");
    await expect
      .poll(async () => Math.abs((await page.locator("#work").boundingBox())?.y ?? 999))
      .toBeLessThan(120);

    // As a finding leads to its row.
    await heading("Work").click();
    expect(await folded("work")).toBe("until-found");
    const id = await page.locator("#work tbody tr[id^=task-]").nth(5).getAttribute("id");
    await page.evaluate((hash) => {
      location.hash = hash ?? "";
    }, id);
    await expect.poll(() => folded("work")).toBeNull();
    await page.reload();
    await settled(page);
    expect(await folded("work")).toBeNull();
    expect(await folded("register")).toBe("until-found");
  });

  it("the browser's search reaches what is folded", async () => {
    const { page } = notebook;
    const risk = (await page.locator("#register .entry-name").first().textContent()) ?? "";
    // What a search does, by the standard: a text fragment finds through hidden="until-found" as the search box does.
    const shown = page.evaluate(
      () =>
        new Promise((resolve) =>
          document.addEventListener("beforematch", () => resolve(true), { once: true, capture: true }),
        ),
    );
    await page.evaluate((text) => {
      const found = document.createElement("a");
      found.href = `#:~:text=${encodeURIComponent(text)}`;
      document.body.append(found);
      found.click();
      found.remove();
    }, risk);
    const reached = await Promise.race([
      shown,
      new Promise((resolve) => setTimeout(() => resolve(false), 3000)),
    ]);
    if (reached === true) expect(await folded("register")).toBeNull();
    else {
      // A browser without it: the event it would send is answered all the same.
      await page.locator("#register-body").evaluate((body) => body.dispatchEvent(new Event("beforematch")));
      expect(await folded("register")).toBeNull();
    }
  });

  it("an entry that waits in a folded section is still counted in the outline", async () => {
    const { page } = notebook;
    await cell(page, "Building permit decided: high, in working days").fill("soon");
    await page.keyboard.press("Enter");
    await heading("Work").click();
    await expect
      .poll(() =>
        page
          .getByRole("navigation")
          .getByRole("link", { name: /Work.*1 to put right/ })
          .count(),
      )
      .toBe(1);
  });
});
