import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { fillPlan } from "./support/fillPlan.ts";
import { settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { smallPlan } from "./support/smallPlan.ts";

/** A machine that is busy takes its time. */
const slow = { timeout: 60_000 };

// That it is somewhere: WCAG 2.2, 2.4.3 (focus order) and 2.4.7. Where it goes to: common practice, no source.
describe("a button that leaves while it has the focus", () => {
  const served = servedPage();
  const long = (iterations: number) => smallPlan.replace("iterations: 2048", `iterations: ${iterations}`);
  const has = (page: Page) =>
    expect.poll(
      () =>
        page.evaluate(() =>
          document.activeElement === document.body
            ? "nothing"
            : (document.activeElement?.textContent ?? "").replace(/\s+/g, " ").trim(),
        ),
      slow,
    );

  it("hands it to what takes its place, and at last to what is left of the bar", async () => {
    const { page, close } = await served.open();
    await page.locator("#plan-text").fill(long(400_000));
    const stop = page.getByRole("button", { name: "Stop", exact: true });
    await stop.focus(slow);
    await page.keyboard.press("Enter");
    await has(page).toBe("Compute");
    await page.keyboard.press("Enter");
    await has(page).toBe("Stop");
    await settled(page);
    await has(page).toBe("Undo");
    const text = page.locator("#plan-text");
    await page.keyboard.press("Enter");
    await expect.poll(() => text.inputValue(), slow).not.toBe(long(400_000));
    // Nothing more to undo: it stays where it is.
    await page.locator(".bar-actions button[aria-disabled]", { hasText: "Undo" }).waitFor(slow);
    const left = await text.inputValue();
    for (let i = 0; i < 3; i++) await page.keyboard.press("Enter");
    await has(page).toBe("Undo");
    expect(await text.inputValue()).toBe(left);
    await close();
  });

  it("hands it to the heading when the work of a section is done", async () => {
    const { page, close } = await served.open();
    await fillPlan(page, long(100_000));
    // As soon as it is there: the work takes less than a second.
    await page.evaluate(() => {
      const section = document.querySelector("#hand-over");
      new MutationObserver((_, watch) => {
        const stop = section?.querySelector<HTMLElement>(".asking button");
        if (stop?.textContent?.startsWith("Stop") !== true) return;
        watch.disconnect();
        stop.focus();
        document.body.dataset.held = stop.textContent.trim();
      }).observe(document.body, { subtree: true, childList: true });
      section?.scrollIntoView();
    });
    await page.locator("body[data-held^='Stop: Writing']").waitFor(slow);
    await page.locator("#hand-over .asking", { hasText: "futures, seed" }).waitFor(slow);
    await has(page).toBe("Hand over");
    await close();
  });
});
