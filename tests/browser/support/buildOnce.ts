import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { TestProject } from "vitest/node";

const root = fileURLToPath(new URL("../../..", import.meta.url));

declare module "vitest" {
  interface ProvidedContext {
    /** Folder of the notebook as built for this run of the tests. */
    builtNotebook: string;
  }
}

/** Builds the notebook from its sources, once for all the tests of the page. */
export default function buildOnce(project: TestProject): () => void {
  const folder = mkdtempSync(join(tmpdir(), "leeway-page-"));
  const remove = () => rmSync(folder, { recursive: true, force: true });
  // Its own process, in production mode: the test runner sets NODE_ENV, and the build would follow it.
  const vite = join(root, "node_modules/vite/bin/vite.js");
  try {
    execFileSync(process.execPath, [vite, "build", "apps/notebook", "--outDir", folder, "--emptyOutDir"], {
      cwd: root,
      env: { ...process.env, NODE_ENV: "production" },
      stdio: "pipe",
    });
  } catch (error) {
    remove();
    throw error;
  }
  project.provide("builtNotebook", folder);
  return remove;
}
