import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const usual = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/google-chrome",
];

/** Starts an installed Chromium: the one LEEWAY_CHROMIUM names, else one in its usual place. */
export async function startChromium(): Promise<Browser> {
  const named = process.env.LEEWAY_CHROMIUM;
  const executablePath = named ?? usual.find((path) => existsSync(path));
  if (executablePath === undefined) {
    throw new Error(
      `No Chromium found. Install it, or name one in LEEWAY_CHROMIUM. Looked at: ${usual.join(", ")}`,
    );
  }
  return chromium.launch({
    executablePath,
    args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"],
  });
}
