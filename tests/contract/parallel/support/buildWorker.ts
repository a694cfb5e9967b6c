import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "vite";
import { temporaryFolder } from "../../../support/temporaryFolder.ts";

const root = fileURLToPath(new URL("../../../../", import.meta.url));

/**
 * Bundles a worker for Node, which runs no TypeScript, into a temporary folder that goes when the tests end.
 *
 * @param entry  Path of the worker from the root of the checkout.
 */
export async function buildWorker(entry: string): Promise<URL> {
  const folder = temporaryFolder();
  await build({
    configFile: false,
    root,
    logLevel: "warn",
    build: {
      ssr: entry,
      target: "node20",
      outDir: folder,
      emptyOutDir: true,
      rollupOptions: { output: { entryFileNames: "worker.mjs" } },
    },
    ssr: { noExternal: true, target: "node" },
  });
  return pathToFileURL(join(folder, "worker.mjs"));
}
