import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { examplePlan } from "../contract/command/leeway.ts";
import { answerDate, cell, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const permit = "Building permit decided: high, in working days";

async function enter(page: Page, label: string, text: string): Promise<void> {
  await cell(page, label).focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await settled(page);
}

const kept = (page: Page) => page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
const shed = `format: 1
title: Shed roof
start: 2027-02-01
tasks: # what there is to do
  - { id: strip, name: Strip the old roof, duration: [2, 3, 6] }
`;

// Nothing a reader typed may be lost, and no tab may overwrite another silently: the project's own rules, common
// practice, no source.
describe("keeping a plan", () => {
  const served = servedPage();

  it("keeps an edit by itself, and opens on it after a reload, its answer computed anew", async () => {
    const { page, troubles, close } = await served.open();
    await enter(page, permit, "120");
    const date = await answerDate(page);
    const text = await page.locator("#plan-text").inputValue();
    await kept(page);
    await page.reload();
    await settled(page);
    expect(await page.locator("#plan-text").inputValue()).toBe(text);
    expect(await answerDate(page)).toBe(date);
    // Going away gives up what was still on its way, such as a worker that no one had waited for.
    expect(troubles.filter((one) => !one.endsWith("net::ERR_ABORTED"))).toEqual([]);
    await close();
  });

  it("has what was typed a second before the page went away", async () => {
    const { page, close } = await served.open();
    await enter(page, permit, "99");
    await page.waitForTimeout(1000);
    const context = page.context();
    // The tab goes without a word, as when its process is killed.
    await page.close({ runBeforeUnload: false });
    const again = await context.newPage();
    await again.goto(served.built.address);
    await settled(again);
    expect(await again.locator("#plan-text").inputValue()).toContain("99]");
    await close();
  });

  it("opens a file, keeps its comments, and saves it under its name", async () => {
    const { page, close } = await served.open();
    // As in a browser that hands no files to pages.
    await page.evaluate(() => {
      for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) Reflect.deleteProperty(window, name);
    });
    const choosing = page.waitForEvent("filechooser");
    await page.keyboard.press("Control+O");
    await (await choosing).setFiles({
      name: "shed.plan.yaml",
      mimeType: "application/yaml",
      buffer: Buffer.from(shed),
    });
    await page.locator("h1", { hasText: "Shed roof" }).waitFor();
    await settled(page);
    await enter(page, "Strip the old roof: high, in working days", "8");
    await page.locator("#safety", { hasText: "Not saved to its file yet" }).waitFor();
    const downloading = page.waitForEvent("download");
    await page.keyboard.press("Control+S");
    const download = await downloading;
    expect(download.suggestedFilename()).toBe("shed.plan.yaml");
    expect(readFileSync(await download.path(), "utf8")).toBe(shed.replace("6]", "8]"));
    await page.locator("#safety:not(:has-text('Not saved'))").waitFor();
    await close();
  });

  it("says why a file cannot be opened, and goes on with the plan it has", async () => {
    const { page, close } = await served.open();
    await page.evaluate(() => Reflect.deleteProperty(window, "showOpenFilePicker"));
    const choosing = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Open …" }).click();
    await (await choosing).setFiles({
      name: "latin.yaml",
      mimeType: "text/plain",
      buffer: Buffer.from([0x74, 0xe9, 0x0a]),
    });
    await page.locator(".file-told", { hasText: "latin.yaml is no UTF-8 text" }).waitFor();
    expect(await page.locator("#plan-text").inputValue()).toBe(readFileSync(examplePlan, "utf8"));
    await close();
  });

  it("follows another tab where nothing was changed, and asks where both were", async () => {
    const one = await served.open();
    await enter(one.page, permit, "60");
    await kept(one.page);
    const other = await one.page.context().newPage();
    await other.goto(served.built.address);
    await settled(other);
    await enter(other, permit, "70");
    await kept(other);
    await one.page.locator(".file-told", { hasText: "changed in another tab" }).waitFor();
    await expect.poll(() => one.page.locator("#plan-text").inputValue()).toContain("70]");

    // Both change it at once: this tab hears of the other's before it has kept its own.
    await one.page.evaluate(() => {
      // Its own saving is slow, as on a busy disk.
      const open = IDBDatabase.prototype.transaction;
      IDBDatabase.prototype.transaction = function (...words: Parameters<typeof open>) {
        if (words[1] === "readwrite") throw new DOMException("busy", "InvalidStateError");
        return open.apply(this, words);
      };
      Reflect.set(window, "restoreSaving", () => {
        IDBDatabase.prototype.transaction = open;
      });
    });
    await enter(one.page, permit, "81");
    await one.page.locator("#safety", { hasText: "Not kept" }).waitFor();
    await enter(other, permit, "82");
    await kept(other);
    await one.page.locator("[role=alert]", { hasText: "saved elsewhere" }).waitFor();
    expect(await one.page.locator("#plan-text").inputValue()).toContain("81]");
    await one.page.evaluate(() => Reflect.get(window, "restoreSaving")());
    await one.page.getByRole("button", { name: "Go on with this one" }).click();
    await kept(one.page);
    await other.locator(".file-told", { hasText: "changed in another tab" }).waitFor();
    await expect.poll(() => other.locator("#plan-text").inputValue(), { timeout: 30_000 }).toContain("81]");
    // What the other tab had is among the versions.
    await one.page.locator(".versions", { hasText: "of another tab, set aside" }).waitFor();
    await one.close();
  });

  it("says so when the browser has no room, and what to do", async () => {
    const { page, close } = await served.open();
    await page.evaluate(() => {
      for (const name of ["put", "add"] as const)
        IDBObjectStore.prototype[name] = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
    });
    await enter(page, permit, "60");
    await page.locator("[role=alert]", { hasText: "no room left" }).waitFor();
    expect(await page.locator("#plan-text").inputValue()).toContain("60]");
    await close();
  });

  it("pins a version, tells what moved since, and goes back to it", async () => {
    const { page, troubles, close } = await served.open();
    await page.getByLabel("Name this version").fill("As agreed on Monday");
    await page.getByRole("button", { name: "Pin it" }).click();
    await page.locator(".versions", { hasText: "As agreed on Monday" }).waitFor();
    await enter(page, permit, "120");
    await page.locator("#changes").scrollIntoViewIfNeeded();
    await page
      .locator("#changes .finding", { hasText: /moved from Fri\s19\sNov\s2027 to .* later/ })
      .waitFor({ timeout: 90_000 });
    await page.locator("#changes leeway-figure figure").first().waitFor();
    await page.getByRole("button", { name: /Go back to it.*As agreed/ }).click();
    await settled(page);
    expect(await page.locator("#plan-text").inputValue()).toBe(readFileSync(examplePlan, "utf8"));
    await page.keyboard.press("Control+Z");
    await settled(page);
    expect(await page.locator("#plan-text").inputValue()).toContain("120]");
    expect(troubles).toEqual([]);
    await close();
  });
});
