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
 * The page carries a policy of its own, stricter still; here it is said that nobody may frame it. Workers have only what
 * their own answer says: they may start more of the page's files and ask for nothing. The offline copy fetches those.
 */
const FOR_ALL = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");
const PAGE_POLICY = `${FOR_ALL}; style-src 'self'; font-src 'self'; img-src 'self' blob:; connect-src 'none'`;
const COPY_POLICY = `${FOR_ALL}; connect-src 'self'`;

const HEADERS = {
  "Content-Security-Policy": FOR_ALL,
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
  const type = TYPES[extname(file.path).toLowerCase()] ?? "application/octet-stream";
  const policy = type.startsWith("text/html")
    ? PAGE_POLICY
    : file.path.endsWith("offline.js")
      ? COPY_POLICY
      : FOR_ALL;
  response.writeHead(200, {
    ...HEADERS,
    "Content-Security-Policy": policy,
    "Content-Type": type,
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
