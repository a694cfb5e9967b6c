import { createHash } from "node:crypto";
import type { Plugin } from "vite";

/** Fonts of scripts the page itself never sets; fetched, and then kept, only when a plan uses them. */
const onDemand = /-(cyrillic|greek|vietnamese)(-ext)?-.*\.woff2$/;

/**
 * Emits `offline.js`, a service worker that keeps the page's own files, so that the page opens and computes
 * without a network once it has been opened. The page itself comes from the network while there is one, so that
 * a new build, or another page at the same address, is never hidden by the copy; files named after their content
 * come from the copy. It never asks another host. A new build replaces the old copy whole.
 */
export function offlinePlugin(): Plugin {
  return {
    name: "offline-copy",
    apply: "build",
    enforce: "post",
    generateBundle(_options, bundle) {
      const files = Object.keys(bundle)
        .filter((name) => !onDemand.test(name) && !name.endsWith(".map"))
        .sort();
      const page = bundle["index.html"];
      const stamp = createHash("sha256")
        .update(files.join("\n"))
        .update(page?.type === "asset" ? String(page.source) : "")
        .digest("hex")
        .slice(0, 12);
      const kept = ["./", "./mark.svg", ...files.map((name) => `./${name}`)];
      this.emitFile({
        type: "asset",
        fileName: "offline.js",
        source: serviceWorker(`leeway-${stamp}`, kept),
      });
    },
  };
}

function serviceWorker(cache: string, files: string[]): string {
  return `const cacheName = ${JSON.stringify(cache)};
const files = ${JSON.stringify(files)};
self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(cacheName).then((cache) => cache.addAll(files)).then(() => self.skipWaiting()));
});
self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches.keys()
      .then((names) => Promise.all(names.filter((n) => n.startsWith("leeway-") && n !== cacheName).map((n) => caches.delete(n))))
      .then(() => self.clients.claim()),
  );
});
self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== self.location.origin) return;
  if (event.request.mode === "navigate") {
    event.respondWith(
      fetch(event.request).catch(async () => {
        const cache = await caches.open(cacheName);
        return (await cache.match(event.request, { ignoreSearch: true })) ?? (await cache.match("./")) ?? Response.error();
      }),
    );
    return;
  }
  event.respondWith(
    caches.open(cacheName).then(async (cache) => {
      const kept = await cache.match(event.request, { ignoreSearch: true });
      if (kept !== undefined) return kept;
      const answer = await fetch(event.request);
      if (answer.ok && url.pathname.endsWith(".woff2")) await cache.put(event.request, answer.clone());
      return answer;
    }),
  );
});
`;
}
