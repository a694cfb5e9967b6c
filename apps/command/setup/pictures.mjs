/**
 * `node apps/command/setup/pictures.mjs [FOLDER]`: the pictures of the README, taken from the built page on the clinic's plan; into
 * docs/pictures unless a folder is named. To be run when the page looks different; look at them before committing.
 */
import { mkdirSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { findChromium } from "./chromium.mjs";
import { root } from "./root.mjs";
import { serve } from "./serve.mjs";
import { setupOrExit } from "./setup.mjs";

/** Light, as wide as a small screen, one dot a pixel: small files, and letters as they are drawn. */
export const view = {
  viewport: { width: 1280, height: 800 },
  colorScheme: "light",
  reducedMotion: "reduce",
  locale: "en-GB",
};

/** What stands on each picture: a part of the page by its selector, or the top of the page. */
export const pictures = [
  { file: "answer.png", top: 800 },
  { file: "contingency.png", within: "leeway-contingency", part: 'leeway-figure[chart="sharesDays"]' },
];

/** The page has its answer, and the part wanted is drawn. */
export async function ready(page, { within, part }) {
  await page.locator(".sentence strong").first().waitFor();
  await page.locator('html:not([data-drawing]) main[data-busy="false"]').waitFor();
  if (part === undefined) return;
  // Explanations are worked out once they are in sight.
  await page.locator(within).scrollIntoViewIfNeeded();
  await page.locator(part).locator("svg").first().waitFor({ state: "visible", timeout: 120_000 });
}

async function take(page, picture, folder) {
  const path = join(folder, picture.file);
  await ready(page, picture);
  if (picture.part === undefined) {
    await page.evaluate(() => scrollTo(0, 0));
    await page.screenshot({ path, clip: { x: 0, y: 0, width: view.viewport.width, height: picture.top } });
  } else {
    // The bar that stays in sight would lie over it. The page's policy allows no style sheet from outside.
    await page.locator("leeway-bar").evaluate((bar) => bar.style.setProperty("visibility", "hidden"));
    await page.locator(picture.part).screenshot({ path });
  }
  return `${path} ${Math.round(statSync(path).size / 1000)} kB`;
}

async function main() {
  const executablePath = findChromium();
  if (executablePath === undefined) {
    process.stderr.write("Pictures are taken in Chromium, and none was found on the PATH.\n");
    process.exit(2);
  }
  await setupOrExit({ say: (text) => process.stderr.write(text), parts: ["notebook"] });
  const folder = resolve(process.argv[2] ?? join(root, "docs/pictures"));
  mkdirSync(folder, { recursive: true });
  const { address } = await serve(join(root, "apps/notebook/dist"));
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage(view);
    await page.goto(address);
    for (const picture of pictures) process.stdout.write(`${await take(page, picture, folder)}\n`);
  } finally {
    await browser.close();
  }
  process.exit(0);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
