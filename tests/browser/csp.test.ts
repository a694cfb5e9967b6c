import { spawn } from "node:child_process";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { build, builtCommand, scratch, smallPlan } from "../contract/command/leeway.ts";
import { type BuiltPage, serveBuiltPage } from "./support/builtPage.ts";
import { startChromium } from "./support/chromium.ts";
import { openNotebook } from "./support/notebook.ts";
import { tries } from "./support/tries.ts";
import { walk } from "./support/walk.ts";

// Content Security Policy Level 3 and Trusted Types (W3C): what the directives forbid. Recalled from memory.
describe("the page talks to nobody", () => {
  let browser: Browser;
  let built: BuiltPage;
  beforeAll(async () => {
    [browser, built] = await Promise.all([startChromium(), serveBuiltPage()]);
  });
  afterAll(async () => {
    await browser?.close();
    await built?.stop();
  });

  it("asks for nothing once it is loaded, in every chapter of the job", async () => {
    const { page, troubles, requests, close } = await openNotebook(browser, built.address);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    const before = built.asked.length;
    const files = await walk(page);
    expect(files.length).toBeGreaterThan(10);
    // Nothing reached the server, and what went to the page's own copy of its files named nothing but them. A browser
    // may look by itself whether the program of that copy is still the same (Service Workers, W3C: soft update; recalled).
    expect(built.asked.slice(before).filter((one) => !/^GET \S*\/offline\.js$/.test(one))).toEqual([]);
    const own = new Set(built.files);
    expect(requests.filter((address) => !own.has(address) && !/^blob:http:\/\/127/.test(address))).toEqual(
      [],
    );
    expect(troubles).toEqual([]);
    await close();
  }, 400_000);

  it("could not send anything if it wanted to, nor make a script or markup of a text", async () => {
    const { page, troubles, close } = await openNotebook(browser, built.address);
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute("content");
    expect(policy).toMatch(/^default-src 'none'; script-src 'self' 'wasm-unsafe-eval';/);
    expect(policy).not.toMatch(/'unsafe-(inline|eval|hashes)'|\*|https?:|data:/);
    const before = built.asked.length;
    const outcome = await page.evaluate(tries, built.address);
    expect(Object.entries(outcome).filter(([, what]) => what !== "refused")).toEqual([]);
    expect(Object.keys(outcome).length).toBeGreaterThan(12);
    expect(built.asked.slice(before).filter((one) => one.includes("leak"))).toEqual([]);
    expect(troubles.some((one) => one.includes("Content Security Policy"))).toBe(true);
    await close();
  });

  it("may ask for its plan, and still for nothing else, where `leeway open` serves it", async () => {
    await build();
    const file = join(scratch({ "shed.plan.yaml": smallPlan }), "shed.plan.yaml");
    const server = spawn(process.execPath, [builtCommand, "open", file]);
    try {
      const address = await new Promise<string>((resolve, reject) => {
        server.stdout.on("data", (part) => {
          const found = /http:\S+/.exec(String(part))?.[0];
          if (found !== undefined) resolve(found);
        });
        server.on("exit", () => reject(new Error("It ended.")));
      });
      const { page, troubles, close } = await openNotebook(browser, address);
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
