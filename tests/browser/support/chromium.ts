import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const usual = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/google-chrome",
];

/** An installed Chromium: the one LEEWAY_CHROMIUM names, else one in its usual place. */
export function chromiumPath(): string {
  const path = process.env.LEEWAY_CHROMIUM ?? usual.find((one) => existsSync(one));
  if (path === undefined)
    throw new Error(
      `No Chromium found. Install it, or name one in LEEWAY_CHROMIUM. Looked at: ${usual.join(", ")}`,
    );
  return path;
}

/** Starts an installed Chromium. */
export async function startChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath(),
    args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"],
  });
}
