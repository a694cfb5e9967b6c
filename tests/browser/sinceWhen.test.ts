import type { Locator } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 120_000 };

// What was a mistake of a reader's: "was 8 Dec" beside a "Why" that told of all changes since another plan.
describe("what moved, and since when", () => {
  const served = servedPage();

  it("is the last change where the answer says so, and all of this plan, never of another, elsewhere", async () => {
    const { page, troubles, close } = await served.open();
    await fillPlan(page, smallPlan);
    for (const [task, high] of [
      ["Pour the floor", "16"],
      ["Lay the tiles", "19"],
    ]) {
      await cell(page, `${task}: high, in working days`).fill(String(high));
      await page.keyboard.press("Enter");
      await expect.poll(() => page.locator("#plan-text").inputValue(), slow).toContain(`, ${high}]`);
      await settled(page);
    }
    const changes = page.locator("#changes");
    const figure = changes.locator("figure").first();
    await page.locator(".aside-line a", { hasText: "Why it moved" }).press("Enter");
    await changes.locator(".changes-since", { hasText: "What your last change moved." }).waitFor(slow);
    await figure.filter({ hasText: /Lay the tiles/ }).waitFor(slow);
    await expect.poll(() => changes.locator(".settling").count(), slow).toBe(0);
    // What the answer says it was is what Changes says it moved from.
    const plain = async (of: Locator) => ((await of.textContent()) ?? "").replace(/\s/g, " ");
    const [was] = /\d+ \w+/.exec(await plain(page.locator(".aside-line s").first())) ?? [];
    expect(was).toMatch(/Mar$/);
    expect(await plain(changes.locator(".finding"))).toContain(was);
    expect(await figure.textContent()).not.toContain("Pour the floor");

    await changes.getByRole("button", { name: "All changes" }).press("Enter");
    await changes.locator(".changes-since", { hasText: "since this plan was opened" }).waitFor(slow);
    await figure.filter({ hasText: /Pour the floor/ }).waitFor(slow);
    expect(await figure.textContent()).toContain("Lay the tiles");
    // The page was opened on another plan, with which this one has nothing to do.
    expect(await changes.textContent()).not.toContain("Chairs delivered");

    await changes.getByRole("button", { name: "The last change alone" }).press("Enter");
    await changes.locator(".changes-since", { hasText: "What your last change moved." }).waitFor(slow);
    expect(troubles).toEqual([]);
    await close();
  });
});
