import { createReadStream, existsSync, readdirSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import { inject } from "vitest";

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
  /**
   * Every request that reached the server: its method and whole address, and ` for a service worker` where its header
   * says that the browser fetches the program of one (Service Workers, W3C, Update algorithm: `Service-Worker: script`).
   */
  asked: string[];
  /** Addresses of the files of the page. */
  files: string[];
  stop: () => Promise<void>;
}

/**
 * Serves the notebook that was built for this run on loopback, below a path, with no headers of its own: what
 * protects the page must be in the page.
 */
export async function serveBuiltPage(): Promise<BuiltPage> {
  const folder = inject("builtNotebook");
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const isProgram = request.headers["service-worker"] === "script";
    const whatFor = isProgram ? " for a service worker" : "";
    asked.push(`${request.method} http://${request.headers.host}${request.url}${whatFor}`);
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
  const address = `http://127.0.0.1:${at.port}/some/folder/`;
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) =>
    name.replaceAll("\\", "/"),
  );
  return {
    address,
    asked,
    files: ["", ...names].map((name) => `${address}${name}`),
    async stop() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
