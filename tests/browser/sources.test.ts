import { readFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { examplePlan } from "../contract/command/leeway.ts";
import { drawn, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { violations } from "./support/violations.ts";

const panel = (page: Page) => page.locator(".source-panel");
const inputs = (page: Page): Promise<Record<string, string>> =>
  panel(page)
    .locator("dl > div")
    .evaluateAll((rows) =>
      Object.fromEntries(
        rows.map((row) => [
          row.querySelector("dt")?.textContent,
          row.querySelector("dd")?.textContent?.replace(/\s/g, " "),
        ]),
      ),
    );

// What the panel says is checked against the library itself, run here on the same document; the panel's keys are the
// WAI-ARIA practice for a dialog that is not modal (recalled from memory): focus goes in, Escape closes, focus returns.
describe("where a number comes from", () => {
  const served = servedPage();
  const { plan } = readPlan(readFileSync(examplePlan, "utf8"));
  if (plan === undefined) throw new Error("The example cannot be read.");
  const known = forecast(plan).forecast;
  if (known === undefined) throw new Error("The example has no forecast.");

  it("opens at the committed date, says rank, limits, seed, futures and hash, and gives the focus back", async () => {
    const { page, troubles, close } = await served.open();
    const button = page.locator(".sentence .date button");
    await button.focus();
    await page.keyboard.press("Enter");
    await panel(page).waitFor();
    expect(await button.getAttribute("aria-expanded")).toBe("true");
    expect(await panel(page).evaluate((element) => element.contains(document.activeElement))).toBe(true);
    const said = await inputs(page);
    // The 0.8 percentile of 10,000 is the 8,000th: plan format 1, "Answers".
    expect(said.Rank).toBe("8,000 of 10,000");
    expect(said.Seed).toBe(known.seed);
    expect(said["Plan, SHA-256"]).toBe(known.plan.sha256);
    expect(said["95 % limits"]).toContain("19 Nov 2027 to 22 Nov 2027");
    expect([known.committed.lowDate, known.committed.highDate]).toEqual(["2027-11-19", "2027-11-22"]);
    expect(await panel(page).locator("code").first().textContent()).toMatch(/^leeway forecast \S+ --json$/);

    await page.keyboard.press("Escape");
    await panel(page).waitFor({ state: "hidden" });
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await button.getAttribute("aria-expanded")).toBe("false");
    expect(troubles).toEqual([]);
    await close();
  });

  it("has a panel for every figure of the answer, and each names a place in the command's JSON that holds it", async () => {
    const { page, close } = await served.open();
    const buttons = page.locator("leeway-answer button.source");
    const places: string[] = [];
    for (let k = 0; k < (await buttons.count()); k++) {
      await buttons.nth(k).click();
      await panel(page).waitFor();
      const figure = (await buttons.nth(k).textContent()) ?? "";
      expect(await panel(page).locator("h2").textContent()).toContain(figure);
      places.push((await panel(page).locator("code").nth(1).textContent()) ?? "");
      const counted = (await inputs(page)).Counted;
      if (counted !== undefined) {
        const [some = 0, all = 1] = counted.split(" of ").map((part) => Number(part.replace(",", "")));
        expect(some / all).toBeCloseTo(Number(at(known, places.at(-1) ?? "")), 4);
      }
      await page.getByRole("button", { name: "Close" }).click();
      await panel(page).waitFor({ state: "hidden" });
    }
    expect(places.length).toBeGreaterThanOrEqual(10);
    for (const place of places) {
      const value = at(known, place);
      if (place.endsWith("date")) expect(value, place).toMatch(/^\d{4}-\d\d-\d\d$/);
      else expect(typeof value, place).toBe("number");
    }
    await close();
  });

  it.each([1280, 320])("stays within the window at %i px, without a violation", async (width) => {
    const { page, close } = await served.open({ viewport: { width, height: 800 } });
    await drawn(page);
    await page.locator(".chances button").last().click();
    await panel(page).waitFor();
    const box = await panel(page).boundingBox();
    if (box === null) throw new Error("No panel.");
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(width);
    expect(await violations(page)).toEqual([]);
    await settled(page);
    await close();
  });
});

/** What stands at `committed.date` of an answer. */
function at(answer: unknown, place: string): unknown {
  return place
    .split(".")
    .reduce(
      (part, key) => (typeof part === "object" && part !== null ? Reflect.get(part, key) : undefined),
      answer,
    );
}
