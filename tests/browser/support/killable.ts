import { spawn } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium } from "playwright-core";
import { chromiumPath } from "./chromium.ts";

export interface Killable {
  browser: Browser;
  /** Ends every process of it at once, as when the machine is switched off: nothing of it gets a word in. */
  kill: () => Promise<void>;
}

/** Starts Chromium on a profile that outlives it. */
export async function startKillable(profile: string): Promise<Killable> {
  // What the last one was killed over.
  for (const name of ["DevToolsActivePort", "SingletonLock", "SingletonCookie", "SingletonSocket"])
    rmSync(join(profile, name), { force: true });
  const child = spawn(
    chromiumPath(),
    [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--remote-debugging-port=0",
      `--user-data-dir=${profile}`,
      "about:blank",
    ],
    // Killed, it leaves what it has in the temporary folder; so that goes with the profile.
    { detached: true, stdio: "ignore", env: { ...process.env, TMPDIR: profile } },
  );
  const ended = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  const kill = async (): Promise<void> => {
    if (child.pid !== undefined && child.exitCode === null && child.signalCode === null)
      process.kill(-child.pid, "SIGKILL");
    await ended;
  };
  const file = join(profile, "DevToolsActivePort");
  const [port] = await new Promise<string[]>((resolve, reject) => {
    const from = Date.now();
    const look = (): void => {
      const lines = existsSync(file) ? readFileSync(file, "utf8").split("\n") : [];
      if (lines.length > 1) resolve(lines);
      else if (Date.now() - from > 60_000) reject(new Error("Chromium did not start."));
      else setTimeout(look, 20);
    };
    look();
  });
  return { browser: await chromium.connectOverCDP(`http://127.0.0.1:${port}`), kill };
}
