import { execFileSync } from "node:child_process";
import { createReadStream, existsSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

export interface BuiltPage {
  /** Below a folder, so that the page is shown to work from any path. */
  address: string;
  stop: () => Promise<void>;
}

/**
 * Builds the notebook from its sources and serves it on loopback, below a path, with no headers of its own:
 * what protects the page must be in the page.
 */
export async function serveBuiltPage(): Promise<BuiltPage> {
  const folder = mkdtempSync(join(tmpdir(), "leeway-page-"));
  // Its own process, in production mode: the test runner sets NODE_ENV, and the build would follow it.
  execFileSync(
    process.execPath,
    [
      join(root, "node_modules/vite/bin/vite.js"),
      "build",
      "apps/notebook",
      "--outDir",
      folder,
      "--emptyOutDir",
    ],
    { cwd: root, env: { ...process.env, NODE_ENV: "production" }, stdio: "pipe" },
  );
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const inside = normalize(path.replace(/^\/some\/folder\//, "/"));
    const file = join(folder, inside === "/" ? "index.html" : inside);
    if (!path.startsWith("/some/folder/") || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "Content-Type": types[extname(file)] ?? "application/octet-stream" });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const at = server.address();
  if (at === null || typeof at === "string") throw new Error("The server has no port.");
  return {
    address: `http://127.0.0.1:${at.port}/some/folder/`,
    async stop() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
