import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Browser } from "playwright-core";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { forecast, readPlan } from "../../packages/core/src/index.ts";
import { startChromium } from "./support/chromium.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const examples = `${root}examples/`;
const plans = readdirSync(examples).filter((name) => name.endsWith(".plan.yaml"));

/** The whole core as one script that puts its exports on the page. */
async function coreScript(): Promise<string> {
  const built = await build({
    configFile: false,
    root,
    logLevel: "warn",
    build: {
      write: false,
      lib: { entry: "packages/core/src/index.ts", formats: ["iife"], name: "leewayCore" },
      target: "es2022",
    },
  });
  const [output] = Array.isArray(built) ? built : [built];
  if (output === undefined || !("output" in output)) throw new Error("the core was not built");
  return output.output[0].code;
}

const digest = (text: string) => createHash("sha256").update(text).digest("hex");

// Own expectation of the house, no outside source: the same plan, seed and iterations give the same bits on every
// engine. Node runs the sources, Chromium the bundle; with and without WebAssembly.
describe("Node and Chromium", () => {
  let browser: Browser;
  let script: string;
  beforeAll(async () => {
    script = await coreScript();
    browser = await startChromium();
  });
  afterAll(() => browser?.close());

  describe.each([
    ["WebAssembly", ""],
    ["TypeScript alone", "delete globalThis.WebAssembly;"],
  ])("with %s in Chromium", (_, before) => {
    it.each(plans)("print the same forecast of %s, tornado included, to the byte", async (name) => {
      const text = readFileSync(`${examples}${name}`, "utf8");
      const { plan } = readPlan(text);
      if (plan === undefined) throw new Error(`${name} does not read`);
      const options = { iterations: 3000, tornado: true };
      const here = JSON.stringify(forecast(plan, options).forecast);
      const page = await browser.newPage();
      const there = await page.evaluate(
        `(() => { ${before} ${script}
          const { plan } = leewayCore.readPlan(${JSON.stringify(text)});
          return JSON.stringify(leewayCore.forecast(plan, ${JSON.stringify(options)}).forecast); })()`,
      );
      await page.close();
      expect(digest(String(there))).toBe(digest(here));
      expect(there).toBe(here);
    });
  });
});
