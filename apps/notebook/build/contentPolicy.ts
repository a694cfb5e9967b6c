import type { Plugin } from "vite";

/**
 * What the built page may load: its own files and nothing else. `data:` and `blob:` images are for saving a
 * chart; no inline script, no inline style, no other host.
 */
export const contentPolicy = [
  "default-src 'self'",
  // WebAssembly is the kernel that ships inside the bundle; scripts stay limited to the page's own files.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Puts the policy at the top of the built page. Not in development, where Vite itself injects inline styles. */
export function contentPolicyPlugin(): Plugin {
  return {
    name: "content-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: contentPolicy },
        injectTo: "head-prepend",
      },
    ],
  };
}
