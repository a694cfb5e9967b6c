import { spawn } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { build, builtCommand, smallPlan } from "../contract/command/leeway.ts";
import { temporaryFolder } from "../support/temporaryFolder.ts";
import { cell, drawn, openNotebook } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";
import { tries } from "./support/tries.ts";
import { walk } from "./support/walk.ts";

// Content Security Policy Level 3 and Trusted Types (W3C): what the directives forbid. Recalled from memory.
describe("the page talks to nobody", () => {
  const served = servedPage();

  it("asks for nothing once it is loaded, in every chapter of the job", async () => {
    const { page, troubles, requests, close } = await served.open();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const before = served.built.asked.length;
    const files = await walk(page);
    expect(files.length).toBeGreaterThan(10);
    // Nothing reached the server but the browser's own look whether the program of the page's copy is still the same,
    // which its header tells; and what went to that copy named nothing but the page's files.
    const look = `GET ${served.built.address}offline.js for a service worker`;
    expect(served.built.asked.slice(before).filter((one) => one !== look)).toEqual([]);
    const own = new Set(served.built.files);
    expect(requests.filter((address) => !own.has(address) && !/^blob:http:\/\/127/.test(address))).toEqual(
      [],
    );
    expect(troubles).toEqual([]);
    await close();
  }, 400_000);

  // Service Workers (W3C): after a page was navigated to, the browser looks by itself (Soft Update).
  it("is looked after by the browser alone: it fetches the program of the copy again, and says what for", async () => {
    const { page, close } = await served.open();
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    // The page itself can do nothing about service workers any more: it is not who asks.
    await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
    const before = served.built.asked.length;
    await page.reload();
    const programs = () => served.built.asked.slice(before).filter((one) => one.includes("offline.js"));
    await expect.poll(programs, { timeout: 120_000 }).not.toEqual([]);
    expect(new Set(programs())).toEqual(
      new Set([`GET ${served.built.address}offline.js for a service worker`]),
    );
    await close();
  });

  it("asks for nothing but its own workers' files where there is no service worker", async () => {
    const start = served.built.asked.length;
    const { page, close } = await served.open({}, () => {
      Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
    });
    const round = async (high: string): Promise<void> => {
      await cell(page, "Building permit decided: high, in working days").fill(high);
      await page.keyboard.press("Enter");
      await drawn(page);
      await page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
      for (const id of ["futures", "level", "money", "reach", "one-future", "hand-over"])
        await page.locator(`#${id}`).evaluate((one) => one.scrollIntoView());
      await page.getByRole("button", { name: "Undo", exact: true }).click();
      await drawn(page);
    };
    await round("90");
    await page.waitForLoadState("networkidle");
    const before = served.built.asked.length;
    await round("95");
    await round("99");
    // A worker that was ended is started anew, from its file; a server that lets files be cached would not hear of it.
    const workers = served.built.files
      .filter((file) => /\/\w+Worker-[\w-]+\.js$/.test(file))
      .map((file) => `GET ${file}`);
    expect(served.built.asked.slice(before).filter((one) => !workers.includes(one))).toEqual([]);
    expect(served.built.asked.slice(start).filter((one) => one.includes("offline.js"))).toEqual([]);
    expect(await page.evaluate(() => "serviceWorker" in navigator)).toBe(false);
    await close();
  });

  it("could not send anything if it wanted to, nor make a script or markup of a text", async () => {
    const { page, troubles, close } = await served.open();
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval';/);
    expect(policy).not.toMatch(/'unsafe-(inline|eval|hashes)'|\*|https?:|data:/);
    const before = served.built.asked.length;
    const outcome = await page.evaluate(tries, served.built.address);
    expect(Object.entries(outcome).filter(([, what]) => what !== "refused")).toEqual([]);
    expect(Object.keys(outcome).length).toBeGreaterThan(12);
    expect(served.built.asked.slice(before).filter((one) => one.includes("leak"))).toEqual([]);
    expect(troubles.some((one) => one.includes("Content Security Policy"))).toBe(true);
    await close();
  });

  it("may ask for its plan, and still for nothing else, where `leeway open` serves it", async () => {
    await build();
    const file = join(temporaryFolder({ "shed.plan.yaml": smallPlan }), "shed.plan.yaml");
    const server = spawn(process.execPath, [builtCommand, "open", file]);
    try {
      const address = await new Promise<string>((resolve, reject) => {
        server.stdout.on("data", (part) => {
          const found = /http:\S+/.exec(String(part))?.[0];
          if (found !== undefined) resolve(found);
        });
        server.on("exit", () => reject(new Error("It ended.")));
      });
      const { page, troubles, close } = await openNotebook(served.browser, address);
      expect(troubles).toEqual([]);
      const { own, ...others } = await page.evaluate(tries, address);
      expect(own).toBe("allowed");
      expect(Object.entries(others).filter(([, what]) => what !== "refused")).toEqual([]);
      // A worker has the policy its own file came with: it could not send anything either.
      const worker = page.workers()[0];
      expect(
        await worker?.evaluate(
          (plan) =>
            fetch(plan).then(
              () => "allowed",
              () => "refused",
            ),
          `${address}plan`,
        ),
      ).toBe("refused");
      await close();
    } finally {
      server.kill();
    }
  });
});
