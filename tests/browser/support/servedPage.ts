import type { Browser, BrowserContextOptions } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { type BuiltPage, serveBuiltPage } from "./builtPage.ts";
import { startChromium } from "./chromium.ts";
import { type Notebook, openNotebook } from "./notebook.ts";

/** A browser and the built page, there while the tests run. */
export interface ServedPage {
  readonly browser: Browser;
  readonly built: BuiltPage;
  /** Opens the page as `openNotebook` does. */
  open: (options?: BrowserContextOptions, init?: () => void) => Promise<Notebook>;
}

/** Starts Chromium and serves the built page before the tests of a `describe` or file, and ends both after them. */
export function servedPage(): ServedPage {
  let browser: Browser | undefined;
  let built: BuiltPage | undefined;
  beforeAll(async () => {
    [browser, built] = await Promise.all([startChromium(), serveBuiltPage()]);
  });
  afterAll(async () => {
    await browser?.close();
    await built?.stop();
  });
  const there = <T>(thing: T | undefined): T => {
    if (thing === undefined) throw new Error("The page is there in hooks and tests only.");
    return thing;
  };
  return {
    get browser() {
      return there(browser);
    },
    get built() {
      return there(built);
    },
    open: (options, init) => openNotebook(there(browser), there(built).address, options, init),
  };
}
