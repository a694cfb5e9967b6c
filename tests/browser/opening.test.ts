import { readFileSync } from "node:fs";
import { forecast, readPlan } from "@leeway/core";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const plan = readFileSync(new URL("../../examples/quillmarsh-clinic.plan.yaml", import.meta.url), "utf8");

const figures = /opening-answer-[^/]*\.js$/;

/** Text and place of all that both the page as built and the page itself show. */
function shown(page: Page) {
  return page.evaluate(() =>
    [
      ...document.querySelectorAll(
        "#title, .sentence, .reason, .adds-most, .chances, .file-state, .outline a",
      ),
    ].map((element) => {
      const { x, y, width, height } = element.getBoundingClientRect();
      const text = (element.textContent ?? "").replace(/\s+/g, " ").trim();
      return { text, box: [x, y, width, height].map(Math.round) };
    }),
  );
}

/** Keeps the page's own script from arriving; the function lets it through. */
async function held(page: Page): Promise<() => void> {
  let go = (): void => {};
  const gone = new Promise<void>((resolve) => {
    go = resolve;
  });
  await page.route("**/assets/main-*.js", async (route) => {
    await gone;
    await route.continue();
  });
  return go;
}

describe("the answer that comes with the page", () => {
  const served = servedPage();

  for (const width of [1280, 390]) {
    it(`is read before the page's script is there, and stands where the page shows the same, ${width} wide`, async () => {
      const page = await served.browser.newPage({ viewport: { width, height: 900 } });
      const go = await held(page);
      const asked: string[] = [];
      page.on("request", (request) => asked.push(request.url()));
      await page.goto(served.built.address, { waitUntil: "commit" });
      await page.locator(".opening .sentence strong").first().waitFor();
      // Its figures are on their way by then, before the page's script asks for them.
      await expect.poll(() => asked.some((address) => figures.test(address))).toBe(true);
      await page.evaluate(() => document.fonts.ready);
      const before = await shown(page);
      expect(before.length).toBeGreaterThan(20);
      expect(before.some(({ text }) => /\d{4}, and 80 % cost no more than EUR/.test(text))).toBe(true);
      go();
      await page.locator(".opening").waitFor({ state: "detached" });
      // As it is first drawn: nothing jumps under the reader's eyes.
      expect(await shown(page)).toEqual(before);
      await settled(page);
      expect(await page.locator(".sentence").count()).toBe(1);
      await page.close();
    });
  }

  // Same plan, same seed, same answer: what was computed at the build is what the engine gives now.
  it("is the library's own answer to the plan, figure by figure", async () => {
    const read = readPlan(plan);
    if (read.plan === undefined) throw new Error("The example cannot be read.");
    const expected = forecast(read.plan).forecast;
    const page = await served.browser.newPage({ serviceWorkers: "block" });
    await page.goto(served.built.address);
    await page.locator(".opening").waitFor({ state: "detached" });
    const given = await page.locator("leeway-answer").evaluate((element) => {
      const state: { answer?: { stage: string; forecast: unknown } } = Reflect.get(element, "state");
      return JSON.stringify([state.answer?.stage, state.answer?.forecast]);
    });
    expect(JSON.parse(given)).toEqual(["full", JSON.parse(JSON.stringify(expected))]);
    await page.close();
  });

  it("does not appear to who has a plan here", async () => {
    const page = await served.browser.newPage({ serviceWorkers: "block" });
    await page.goto(served.built.address);
    await settled(page);
    await cell(page, "Building permit decided: high, in working days").fill("120");
    await page.keyboard.press("Enter");
    // Not the words of the example, which say the same of what is going to be changed.
    await page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
    const go = await held(page);
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    let seen = false;
    await page.exposeFunction("seen", () => {
      seen = true;
    });
    await page.addInitScript(() => {
      new MutationObserver(() => {
        if (document.querySelector(".opening") !== null) void Reflect.get(window, "seen")();
      }).observe(document, { childList: true, subtree: true });
    });
    await page.reload({ waitUntil: "commit" });
    await page.locator("template#opening").waitFor({ state: "attached" });
    await page.waitForTimeout(500);
    expect(await page.locator(".opening").count()).toBe(0);
    go();
    await settled(page);
    expect(seen).toBe(false);
    expect(await page.locator(".sentence").count()).toBe(1);
    // Nor are its figures fetched, for which there is no use then: a browser would warn of that.
    expect(asked.some((address) => /\/assets\/main-/.test(address))).toBe(true);
    expect(asked.filter((address) => figures.test(address))).toEqual([]);
    await page.close();
  });

  it("does not appear where the page is bound to a file", async () => {
    const page = await served.browser.newPage({ serviceWorkers: "block" });
    await page.route(served.built.address, async (route) => {
      const answer = await route.fetch();
      const html = (await answer.text()).replace(
        "<title>",
        '<meta name="leeway-plan" content="mine.yaml"><title>',
      );
      await route.fulfill({ response: answer, body: html });
    });
    await held(page);
    await page.goto(served.built.address, { waitUntil: "commit" });
    await page.locator("template#opening").waitFor({ state: "attached" });
    await page.waitForTimeout(500);
    expect(await page.locator(".opening").count()).toBe(0);
    await page.close();
  });
});
