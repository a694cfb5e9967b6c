import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { runShown } from "./run.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** Path of an installed Chromium or Chrome; undefined when there is none. */
export function findChromium() {
  const dirs = ["/usr/bin", ...(process.env.PATH ?? "").split(delimiter)];
  for (const dir of dirs) {
    for (const name of NAMES) if (existsSync(join(dir, name))) return join(dir, name);
  }
  return undefined;
}

/**
 * The browser the page's tests need: found, or installed where we may.
 *
 * @returns {Promise<string | undefined>} its path; undefined after saying what to run
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found !== undefined) return found;
  const canInstall = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (canInstall) {
    process.stdout.write("Installing Chromium for the tests of the page ...\n");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    const updated = await runShown("apt-get", ["-q", "update"], env);
    if (updated === 0) await runShown("apt-get", ["-q", "install", "-y", "chromium"], env);
    const installed = findChromium();
    if (installed !== undefined) return installed;
  }
  process.stderr.write(
    "The tests of the page need Chromium. Run `sudo apt-get update && sudo apt-get install -y chromium`" +
      " (elsewhere: install Chromium or Chrome so that one of these is on the PATH: " +
      `${NAMES.join(", ")}), then \`npm test\` again.\n`,
  );
  return undefined;
}
