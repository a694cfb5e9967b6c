import { randomBytes } from "node:crypto";
import { readFileSync, realpathSync, statSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { basename, extname, join, normalize, sep } from "node:path";
import type { BoundFile } from "./boundFile.ts";
import { admitted, bodyRefusal, largestPlan, type Refusal } from "./guard.ts";

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

/**
 * The page carries a policy of its own, which is stricter still (it knows its scripts); here it is said that nobody may
 * frame it. Workers have only what their own answer says: they may start more of the page's files and ask for nothing.
 */
const forAll = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
];
const policy = forAll.join("; ");
const pagePolicy = [
  ...forAll,
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob:",
  "connect-src 'self'",
].join("; ");

const headers = {
  "Content-Security-Policy": policy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cache-Control": "no-store",
};

export interface Served {
  address: string;
  server: Server;
}

/**
 * Serves the notebook bound to one file, on loopback, under a path with a token of its own: the page's files, and
 * `plan`, which is read (GET) and saved (PUT with If-Match). Nothing else of the disk can be reached.
 *
 * @param page  Folder of the built notebook.
 * @param port  0: any that is free.
 * Rejects with the error of listening.
 */
export function serveNotebook(page: string, file: BoundFile, name: string, port = 0): Promise<Served> {
  const token = randomBytes(16).toString("hex");
  const folder = realpathSync(page);
  return new Promise((resolve, reject) => {
    const server = createServer({ maxHeaderSize: 16_384 }, (request, response) => {
      const { port: own } = server.address() as { port: number };
      const way = admitted(request, own, token);
      if ("status" in way) return refuse(response, way);
      if (way.path === "/plan") return answerPlan(request, response, file);
      if (request.method !== "GET" && request.method !== "HEAD")
        return refuse(response, { status: 405, text: "Only GET and HEAD." });
      servePage(folder, way.path, request, response, name);
    });
    server.headersTimeout = 10_000;
    server.requestTimeout = 30_000;
    server.on("error", reject);
    server.listen(port, "127.0.0.1", () => {
      const { port: own } = server.address() as { port: number };
      resolve({ address: `http://127.0.0.1:${own}/${token}/`, server });
    });
  });
}

function refuse(response: ServerResponse, { status, text }: Refusal): void {
  response
    .writeHead(status, { ...headers, "Content-Type": "text/plain; charset=utf-8", Connection: "close" })
    .end(`${text}\n`);
}

const plain = { ...headers, "Content-Type": "text/plain; charset=utf-8" };

function answerPlan(request: IncomingMessage, response: ServerResponse, file: BoundFile): void {
  try {
    if (request.method === "PUT") savePlan(request, response, file);
    else if (request.method === "GET" || request.method === "HEAD") tellPlan(request, response, file);
    else refuse(response, { status: 405, text: "Only GET, HEAD and PUT." });
  } catch (error) {
    failed(response, error);
  }
}

function tellPlan(request: IncomingMessage, response: ServerResponse, file: BoundFile): void {
  const { text, tag } = file.read();
  const etag = `"${tag}"`;
  if (request.headers["if-none-match"] === etag) response.writeHead(304, { ...headers, ETag: etag }).end();
  else response.writeHead(200, { ...plain, ETag: etag }).end(request.method === "HEAD" ? undefined : text);
}

function savePlan(request: IncomingMessage, response: ServerResponse, file: BoundFile): void {
  const tag = /^"([0-9a-f]+)"$/.exec(request.headers["if-match"] ?? "")?.[1];
  const refusal =
    bodyRefusal(request) ??
    (tag === undefined
      ? ({ status: 400, text: "If-Match must name the reading this builds on." } as const)
      : undefined);
  if (refusal !== undefined) {
    refuse(response, refusal);
    return;
  }
  takeBody(request, response, (text) => {
    const written = file.save(text, tag ?? "");
    if (written.kind === "saved") response.writeHead(204, { ...headers, ETag: `"${written.tag}"` }).end();
    else response.writeHead(412, { ...plain, ETag: `"${written.now.tag}"` }).end(written.now.text);
  });
}

function takeBody(request: IncomingMessage, response: ServerResponse, take: (text: string) => void): void {
  const parts: Buffer[] = [];
  let size = 0;
  request.on("data", (part: Buffer) => {
    size += part.length;
    if (size > largestPlan) {
      refuse(response, { status: 413, text: `A plan has at most ${largestPlan / 1e6} MB.` });
      request.destroy();
      return;
    }
    parts.push(part);
  });
  request.on("end", () => {
    // A body that was cut off on the way is no plan.
    if (!request.complete) return;
    try {
      take(new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(Buffer.concat(parts)));
    } catch (error) {
      failed(response, error);
    }
  });
}

/** The file could not be read or written: the page says so, and keeps what it has. */
function failed(response: ServerResponse, error: unknown): void {
  const words =
    error instanceof TypeError
      ? "The file is no UTF-8 text."
      : error instanceof Error
        ? error.message
        : String(error);
  response.writeHead(500, { ...headers, "Content-Type": "text/plain; charset=utf-8" }).end(`${words}\n`);
}

function servePage(
  folder: string,
  path: string,
  request: IncomingMessage,
  response: ServerResponse,
  name: string,
): void {
  const wanted = normalize(join(folder, path.endsWith("/") ? `${path}index.html` : path));
  const found = statSync(wanted, { throwIfNoEntry: false })?.isFile() === true ? realpathSync(wanted) : "";
  if (!found.startsWith(folder + sep)) {
    refuse(response, { status: 404, text: "There is nothing here." });
    return;
  }
  const bytes = readFileSync(found);
  const isPage = basename(found) === "index.html";
  const body = isPage ? bound(bytes.toString("utf8"), name) : bytes;
  response
    .writeHead(200, {
      ...headers,
      ...(isPage ? { "Content-Security-Policy": pagePolicy } : {}),
      "Content-Type": types[extname(found)] ?? "application/octet-stream",
      "Content-Length": Buffer.byteLength(body),
    })
    .end(request.method === "HEAD" ? undefined : body);
}

/** The page, told that it is bound to a file of this name, and that it may ask this server for it. */
function bound(html: string, name: string): string {
  const escaped = name.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
  return html
    .replace(/connect-src (&#39;|')none\1/, "connect-src $1self$1")
    .replace("<title>", () => `<meta name="leeway-plan" content="${escaped}" />\n    <title>`);
}
