import { createReadStream, realpathSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize, sep } from "node:path";

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".yaml": "text/yaml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".wasm": "application/wasm",
};

/**
 * The page talks to nobody but this server. Charts set style attributes, hence 'unsafe-inline' for styles
 * alone; data: and blob: are for pictures and files the page makes itself.
 */
export const CONTENT_POLICY = [
  "default-src 'self'",
  // WebAssembly is the kernel that ships inside the bundle; scripts stay limited to the page's own files.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

const HEADERS = {
  "Content-Security-Policy": CONTENT_POLICY,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cache-Control": "no-cache",
};

function refuse(response, status, text) {
  response.writeHead(status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" }).end(`${text}\n`);
}

/** The file under `folder` a request path means; undefined when there is none or it lies outside. */
function fileFor(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  if (path.includes("\0")) return undefined;
  if (path.endsWith("/")) path += "index.html";
  const wanted = normalize(join(folder, path));
  const stat = statSync(wanted, { throwIfNoEntry: false });
  if (!stat?.isFile()) return undefined;
  // Resolved last: neither `..` nor a symbolic link leads out.
  const real = realpathSync(wanted);
  return real.startsWith(realpathSync(folder) + sep) ? { path: real, size: stat.size } : undefined;
}

function answer(folder, request, response) {
  // A page elsewhere that points its own name at this machine still sends that name.
  const host = (request.headers.host ?? "").replace(/:\d+$/, "");
  if (host !== "127.0.0.1" && host !== "localhost")
    return refuse(response, 403, "This server answers on loopback only.");
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(response, 405, "Only GET and HEAD.");
  const file = fileFor(folder, request.url ?? "/");
  if (file === undefined) return refuse(response, 404, "There is nothing here.");
  response.writeHead(200, {
    ...HEADERS,
    "Content-Type": TYPES[extname(file.path).toLowerCase()] ?? "application/octet-stream",
    "Content-Length": file.size,
  });
  if (request.method === "HEAD") return response.end();
  createReadStream(file.path)
    .on("error", () => response.destroy())
    .pipe(response);
}

/**
 * Serves a folder on loopback, on the first free port from `from` up.
 *
 * @param {string} folder
 * @param {number} from
 * @returns {Promise<{ address: string, server: import("node:http").Server }>}
 * Rejects when no port of the next hundred is free.
 */
export function serve(folder, from = 4180) {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => answer(folder, request, response));
    let port = from;
    server.on("error", (error) => {
      if (error.code !== "EADDRINUSE" || port >= from + 99) return reject(error);
      port++;
      server.listen(port, "127.0.0.1");
    });
    server.on("listening", () => resolve({ address: `http://127.0.0.1:${port}/`, server }));
    server.listen(port, "127.0.0.1");
  });
}
