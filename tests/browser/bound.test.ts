import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { build, builtCommand, examplePlan } from "../contract/command/leeway.ts";
import { temporaryFolder } from "../support/temporaryFolder.ts";
import { startChromium } from "./support/chromium.ts";
import { cell, openNotebook, settled } from "./support/notebook.ts";

const permit = "Building permit decided: high, in working days";
const text = readFileSync(examplePlan, "utf8");

// The page bound to a file: what is typed is on disk within a second, what others write shows on the page, and neither
// overwrites the other silently. The project's own rules, common practice, no source.
describe("leeway open, the page", () => {
  let browser: Browser;
  let server: ChildProcess;
  let address = "";
  const file = join(temporaryFolder({ "clinic.plan.yaml": text }), "clinic.plan.yaml");
  beforeAll(async () => {
    await build();
    browser = await startChromium();
    server = spawn(process.execPath, [builtCommand, "open", file]);
    address = await new Promise((resolve, reject) => {
      let said = "";
      server.stdout?.on("data", (part) => {
        said += String(part);
        const found = /http:\S+/.exec(said)?.[0];
        if (found !== undefined) resolve(found);
      });
      server.on("exit", () => reject(new Error(`It ended: ${said}`)));
    });
  });
  afterAll(async () => {
    server?.kill();
    await browser?.close();
  });

  it("saves an edit to the file, comments kept, and follows what another program writes", async () => {
    const { page, troubles, requests, close } = await openNotebook(browser, address);
    await cell(page, permit).focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("60");
    await page.keyboard.press("Enter");
    await page.locator("#safety", { hasText: "Saved to the file" }).waitFor();
    await expect.poll(() => readFileSync(file, "utf8"), { timeout: 10_000 }).toContain("[20, 25, 60]");
    expect(readFileSync(file, "utf8").split("\n").length).toBe(text.split("\n").length);

    writeFileSync(file, text.replace("[20, 25, 45]", "[20, 25, 50]"));
    await page.locator(".file-told", { hasText: "Another program changed the file" }).waitFor();
    await settled(page);
    expect(await cell(page, permit).inputValue()).toBe("50");
    expect(troubles).toEqual([]);
    expect(requests.every((request) => request.startsWith(address))).toBe(true);
    await close();
  });

  it("asks when both changed it, and writes nothing until told", async () => {
    const { page, close } = await openNotebook(browser, address);
    // The reader types while the look at the file is still to come.
    await page.route("**/plan", (route) =>
      route.request().method() === "GET" ? route.abort() : route.continue(),
    );
    writeFileSync(file, text.replace("[20, 25, 45]", "[20, 25, 71]"));
    await cell(page, permit).focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("72");
    await page.keyboard.press("Enter");
    await page.locator("[role=alert]", { hasText: "saved elsewhere" }).waitFor();
    expect(readFileSync(file, "utf8")).toContain("[20, 25, 71]");
    await page.getByRole("button", { name: "Go on with this one" }).click();
    await page.locator("#safety", { hasText: "Saved to the file" }).waitFor();
    await expect.poll(() => readFileSync(file, "utf8"), { timeout: 10_000 }).toContain("[20, 25, 72]");
    await page.locator(".versions", { hasText: "set aside" }).waitFor();
    await close();
  });

  it("says so when nobody serves the file any more, and takes up again", async () => {
    const { page, close } = await openNotebook(browser, address);
    await page.context().setOffline(true);
    await cell(page, permit).focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("80");
    await page.keyboard.press("Enter");
    await page.locator("[role=alert]", { hasText: "could not be saved" }).waitFor();
    expect(readFileSync(file, "utf8")).not.toContain("[20, 25, 80]");
    await page.context().setOffline(false);
    await cell(page, permit).focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("81");
    await page.keyboard.press("Enter");
    await expect.poll(() => readFileSync(file, "utf8"), { timeout: 10_000 }).toContain("[20, 25, 81]");
    await close();
  });
});
